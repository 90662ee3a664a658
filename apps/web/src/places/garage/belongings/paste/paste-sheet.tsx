import { useMemo, useState, useSyncExternalStore } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { Dialog } from '../../../../look/dialog.tsx';
import { TextField } from '../../../../look/field.tsx';
import { LinkButton } from '../../../../look/link-button.tsx';
import { Sentence } from '../../../../look/parts.tsx';
import { useFormat } from '../../../../format/use-format.ts';
import { useRecord, useStores } from '../../../../shell/stores.tsx';
import { SubHead } from '../sub-head.tsx';
import type { Catalogue } from '../use-catalogue.ts';
import { useCatalogue } from '../use-catalogue.ts';
import { BLANK, draftStore } from './draft.ts';
import { FileDrop } from './file-drop.tsx';
import { LineList } from './line-list.tsx';
import type { Decision, SetMaker } from './paper-lines.ts';
import { paperLines } from './paper-lines.ts';
import { tallyOf } from './tally.ts';
import { TallySentence } from './tally-sentence.tsx';
import { useAdd } from './use-add.ts';
import { useReading } from './use-reading.ts';
import './paste-sheet.css';

/** A sheet of paper: what is typed on the left or above is understood on the right or below, line by line, while one types. */
export function PasteSheet() {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const { garage } = useRecord();
  const { shelf } = useStores();
  draftStore.openFor(shelf.openKey);
  const draft = useSyncExternalStore(draftStore.subscribe, draftStore.get);
  const words = useMemo(() => ({ ...garage.words, ...draft.taught }), [garage.words, draft.taught]);
  const live = useReading(draft.text, words);
  const [trouble, setTrouble] = useState<string | null>(null);
  const { reading, suggested } = draft.file ?? live;
  const lines = useMemo(
    () =>
      reading === null || catalogue === null
        ? []
        : paperLines(reading, suggested, draft.decisions, setMaker(catalogue)),
    [reading, suggested, draft.decisions, catalogue],
  );
  const tally = useMemo(() => tallyOf(lines), [lines]);
  const adding = useAdd(tally);
  const decide = (key: string, decision: Decision | null): void => {
    const decisions = new Map(draft.decisions);
    if (decision === null) decisions.delete(key);
    else decisions.set(key, decision);
    draftStore.set({ decisions });
  };
  const stale = draft.file === null && live.stale;
  const refusal = trouble ?? (draft.file === null ? live.refusal : null);
  return (
    <FileDrop words={words} onTrouble={setTrouble}>
      {(chooser) => (
        <div className="paste">
          <SubHead title={t('belongings.pasteTitle')} how={t('belongings.pasteHow')}>
            {chooser}
            <LinkButton to="/garage/belongings">{t('belongings.back')}</LinkButton>
          </SubHead>
          {refusal !== null && (
            <p className="paste-trouble" role="alert">
              {refusal}. {t('belongings.nothingChanged')}
            </p>
          )}
          <div className="paste-columns">
            <div className="paste-paper">
              {draft.file === null ? (
                <TextField
                  label={t('belongings.paper')}
                  hint={t('belongings.paperHint')}
                  value={draft.text}
                  lines={12}
                  mono
                  onChange={(text) => {
                    setTrouble(null);
                    adding.forget();
                    draftStore.set({ text });
                  }}
                />
              ) : (
                <div className="paste-file">
                  <Sentence strong>
                    {t('belongings.fromFile', { name: draft.file.name, count: lines.length })}
                  </Sentence>
                  <Button onPress={() => draftStore.set({ ...BLANK, text: draft.text })}>
                    {t('belongings.fileAway')}
                  </Button>
                </div>
              )}
            </div>
            <div className="paste-read">
              <TallySentence tally={tally} stale={stale} empty={lines.length === 0} />
              <LineList lines={lines} onDecide={decide} taught={draft.taught} />
            </div>
          </div>
          <div className="dock">
            {/* Beside the button, where the eye is when it has been pressed. */}
            {adding.done !== null && (
              <p className="dock-said" role="status">
                {adding.done}
              </p>
            )}
            <Button
              main
              isDisabled={tally.adds === 0 || stale || adding.busy}
              onPress={() => void adding.add('ask')}
            >
              {t('belongings.addThese', { count: tally.adds, number: format.count(tally.adds) })}
            </Button>
          </div>
          <Dialog
            title={t('belongings.againTitle', { count: adding.repeated.length })}
            isOpen={adding.repeated.length > 0}
            onClose={adding.forget}
          >
            <Sentence>{t('belongings.againHow')}</Sentence>
            <ul className="paste-again">
              {adding.repeated.slice(0, 8).map((match, i) => (
                <li key={`${match.line} ${i}`}>{match.text}</li>
              ))}
              {adding.repeated.length > 8 && (
                <li className="quiet">{t('belongings.againMore', { count: adding.repeated.length - 8 })}</li>
              )}
            </ul>
            <div className="acts">
              <Button main onPress={() => void adding.add('others')}>
                {tally.adds === adding.repeated.length
                  ? t('belongings.againNone')
                  : t('belongings.againOthers', { count: tally.adds - adding.repeated.length })}
              </Button>
              <Button onPress={() => void adding.add('all')}>
                {t('belongings.againAll', { count: tally.adds })}
              </Button>
            </div>
          </Dialog>
        </div>
      )}
    </FileDrop>
  );
}

function setMaker(catalogue: Catalogue): SetMaker {
  return (id) => {
    const set = catalogue.setById.get(id);
    return set === undefined
      ? null
      : { setId: id, title: set.title, caseGrams: set.caseGrams, contents: set.contents };
  };
}
