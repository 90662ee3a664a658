import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { LineMark } from './line-mark.tsx';
import type { Decision, PaperLine, Part } from './paper-lines.ts';
import { useNameOf } from './use-name-of.ts';
import { usePartWords } from './use-part-words.ts';

export interface LineRowProps {
  readonly line: PaperLine;
  readonly onDecide: (key: string, decision: Decision | null) => void;
  readonly onMend: (key: string) => void;
}

/** One line of the paper: as typed, as understood, and where there is a doubt the quickest ways out of it. */
export function LineRow({ line, onDecide, onMend }: LineRowProps) {
  const { t } = useTranslation();
  const { understood } = usePartWords();
  if (line.heading) {
    return (
      <li className="line line-heading">
        <span className="line-number small quiet">{line.number}</span>
        <span className="line-body decides">{line.text}</span>
      </li>
    );
  }
  const clear = line.parts.filter(({ state }) => state === 'understood' || state === 'own');
  const others = line.parts.filter(
    ({ state }) => state === 'doubtful' || state === 'unknown' || state === 'struck',
  );
  const firstKey = line.parts[0]?.key;
  return (
    <li className="line">
      <span className="line-number small quiet">{line.number}</span>
      <div className="line-body">
        <p className="line-typed">{line.text}</p>
        {clear.length > 0 && (
          <div className="line-part">
            <LineMark state="understood" />
            <p className="line-words">{understood(clear)}</p>
            {firstKey !== undefined && (
              <button type="button" className="line-change" onClick={() => onMend(firstKey)}>
                {t('belongings.change')}
                <span className="hidden-text"> {line.text}</span>
              </button>
            )}
          </div>
        )}
        {others.map((part) => (
          <DoubtPart key={part.key} part={part} onDecide={onDecide} onMend={onMend} />
        ))}
      </div>
    </li>
  );
}

function DoubtPart({
  part,
  onDecide,
  onMend,
}: {
  part: Part;
  onDecide: LineRowProps['onDecide'];
  onMend: LineRowProps['onMend'];
}) {
  const { t } = useTranslation();
  const { one } = usePartWords();
  const nameOf = useNameOf();
  const { key, state, match, nearest } = part;
  if (state === 'struck') {
    return (
      <div className="line-part">
        <LineMark state="struck" />
        <p className="line-words quiet">{t('belongings.struck')}</p>
        <button type="button" className="line-change" onClick={() => onDecide(key, null)}>
          {t('belongings.unstrike')}
        </button>
      </div>
    );
  }
  const others = part.alternatives
    .filter((id) => match?.kind !== 'thing' || id !== match.catalogueId)
    .slice(0, 2);
  return (
    <div className="line-part doubt">
      <LineMark state={state} />
      <div className="line-doubt">
        <p className="line-words">
          {match === null ? t('belongings.notUnderstood') : one(match)}
          {part.why !== null && <span className="quiet">: {part.why}</span>}
        </p>
        <div className="acts">
          {match !== null && (
            <Button onPress={() => onDecide(key, { kind: 'right' })}>{t('belongings.right')}</Button>
          )}
          {nearest !== null && (
            <Button onPress={() => onDecide(key, nearest)}>
              {t('belongings.didYouMean', { name: nameOf(nearest.id) })}
            </Button>
          )}
          {others.map((id) => (
            <Button key={id} onPress={() => onDecide(key, { kind: 'thing', id })}>
              {t('belongings.itIs', { name: nameOf(id) })}
            </Button>
          ))}
          <Button onPress={() => onMend(key)}>{t('belongings.somethingElse')}</Button>
          {match === null && (
            <Button onPress={() => onDecide(key, { kind: 'own' })}>{t('belongings.asOwn')}</Button>
          )}
        </div>
      </div>
    </div>
  );
}
