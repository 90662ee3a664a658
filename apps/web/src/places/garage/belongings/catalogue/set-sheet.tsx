import type { Belonging } from '@waymend/garage/record/schema';
import type { CatalogueSet } from '@waymend/planner/views/catalogue-view';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { Button } from '../../../../look/button.tsx';
import { Dialog } from '../../../../look/dialog.tsx';
import { Block, Sentence } from '../../../../look/parts.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import { BARE, addAll } from '../add-all.ts';
import { useCatalogue } from '../use-catalogue.ts';

/** The set as belongings: its case, and each kind of piece inside it, opened up so that pieces are chosen one by one. */
function setAsBelongings(set: CatalogueSet, forSale: boolean): Readonly<Record<string, Belonging>> {
  const box: Belonging = {
    ...BARE,
    name: set.title,
    set: { carry: 'loose', caseGrams: set.caseGrams },
    ...(forSale ? { forSale, price: set.cents / 100 } : {}),
  };
  const pieces = set.contents.map(({ is, copies }): [string, Belonging] => [
    `${set.id}-${is.toLowerCase()}`,
    { ...BARE, is, copies, inside: set.id },
  ]);
  return { [set.id]: box, ...Object.fromEntries(pieces) };
}

export function SetSheet({ set, onClose }: { set: CatalogueSet; onClose: () => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const { edit } = useRecord();
  const [done, setDone] = useState<string | null>(null);
  const add = (forSale: boolean): void => {
    const what = t(forSale ? 'belongings.stepWanted' : 'belongings.stepAdded');
    void edit(t('belongings.step', { what, name: set.title }), (garage) =>
      addAll(garage, setAsBelongings(set, forSale)),
    );
    setDone(t(forSale ? 'belongings.wantedDone' : 'belongings.setDone'));
  };
  return (
    <Dialog title={set.title} isOpen onClose={onClose}>
      <div className="thing-sheet">
        <Sentence>
          {t('belongings.setSays', {
            pieces: set.pieces,
            mass: format.mass(set.grams),
            price: format.money(set.cents),
          })}
        </Sentence>
        <Sentence>{set.note}</Sentence>
        <div className="acts">
          <Button onPress={() => add(false)}>{t('belongings.haveSet')}</Button>
          <Button onPress={() => add(true)}>{t('belongings.wantIt')}</Button>
        </div>
        <p className="facts-done" role="status">
          {done}
        </p>
        <Block title={t('belongings.inside')} aside={t('belongings.insideAside')} level={3}>
          <ul className="thing-pieces">
            {set.contents.map(({ is, copies }) => {
              const line = catalogue?.byId.get(is);
              if (line === undefined) return null;
              return (
                <li key={is} className="thing-piece">
                  <span>{line.size === null ? line.name : `${line.name}, ${line.size}`}</span>
                  <span className="keep assumed">{format.mass(line.grams * copies)}</span>
                </li>
              );
            })}
          </ul>
        </Block>
      </div>
    </Dialog>
  );
}
