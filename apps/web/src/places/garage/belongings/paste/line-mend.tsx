import type { Garage } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { Dialog } from '../../../../look/dialog.tsx';
import { Block } from '../../../../look/parts.tsx';
import { ThingPicker } from '../thing-picker.tsx';
import type { Decision, PaperLine, Part } from './paper-lines.ts';
import { TeachWord } from './teach-word.tsx';
import { usePartWords } from './use-part-words.ts';

export interface LineMendProps {
  readonly line: PaperLine;
  readonly onDecide: (key: string, decision: Decision | null) => void;
  readonly taught: Garage['words'];
  readonly onClose: () => void;
}

/** One line laid open: for each thing on it what else it may be, as an own thing, or left out. */
export function LineMend({ line, onDecide, taught, onClose }: LineMendProps) {
  const { t } = useTranslation();
  const { one } = usePartWords();
  const [only] = line.parts;
  return (
    <Dialog title={t('belongings.mendTitle', { number: line.number })} isOpen onClose={onClose}>
      <p className="line-typed">{line.text}</p>
      <div className="mend">
        {line.parts.map((part) => (
          <Block key={part.key} title={part.match === null ? part.text : one(part.match)} level={3}>
            <PartMend
              part={part}
              isOnly={line.parts.length === 1}
              onDecide={(decision) => {
                onDecide(part.key, decision);
                if (line.parts.length === 1) onClose();
              }}
            />
          </Block>
        ))}
        {only !== undefined && only.state === 'unknown' && (
          <TeachWord text={only.text} taught={taught} onTaught={onClose} />
        )}
      </div>
    </Dialog>
  );
}

function PartMend({
  part,
  isOnly,
  onDecide,
}: {
  part: Part;
  isOnly: boolean;
  onDecide: (decision: Decision | null) => void;
}) {
  const { t } = useTranslation();
  const acts = (
    <div className="acts">
      {part.state === 'doubtful' && (
        <Button onPress={() => onDecide({ kind: 'right' })}>{t('belongings.right')}</Button>
      )}
      {part.state !== 'own' && (
        <Button onPress={() => onDecide({ kind: 'own' })}>{t('belongings.asOwn')}</Button>
      )}
      {part.state === 'struck' ? (
        <Button onPress={() => onDecide(null)}>{t('belongings.unstrike')}</Button>
      ) : (
        <Button onPress={() => onDecide({ kind: 'strike' })}>{t('belongings.strike')}</Button>
      )}
    </div>
  );
  // On a run of many sizes one search field each would bury the sizes.
  if (!isOnly) return acts;
  return (
    <>
      <ThingPicker
        label={t('belongings.entrySearch')}
        start={part.match === null ? '' : part.text}
        offer={part.alternatives}
        onChoose={(id) => onDecide({ kind: 'thing', id })}
      />
      {acts}
    </>
  );
}
