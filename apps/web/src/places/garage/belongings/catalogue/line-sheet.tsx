import type { CatalogueLine } from '@waymend/planner/views/catalogue-view';
import type { Purpose } from '@waymend/planner/views/function-groups';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { Button } from '../../../../look/button.tsx';
import { Dialog } from '../../../../look/dialog.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import { BARE, addAll } from '../add-all.ts';
import type { Owned } from './owned.ts';

export interface LineSheetProps {
  readonly line: CatalogueLine;
  readonly purposes: readonly Purpose[];
  readonly owned: ReadonlyMap<string, Owned>;
  readonly onClose: () => void;
}

/** One thing of the catalogue: what it does, what it weighs and on what that stands, and having or wanting it. */
export function LineSheet({ line, purposes, owned, onClose }: LineSheetProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { edit } = useRecord();
  const [done, setDone] = useState<string | null>(null);
  const { have = 0, wanted = 0 } = owned.get(line.id) ?? {};
  const add = (forSale: boolean): void => {
    const what = t(forSale ? 'belongings.stepWanted' : 'belongings.stepAdded');
    const thing = forSale
      ? { ...BARE, is: line.id, forSale, price: line.cents / 100 }
      : { ...BARE, is: line.id };
    void edit(t('belongings.step', { what, name: line.name }), (garage) =>
      addAll(garage, { [line.id.toLowerCase()]: thing }),
    );
    setDone(t(forSale ? 'belongings.wantedDone' : 'belongings.haveDone'));
  };
  const does = line.purposes.flatMap((id) => purposes.find((one) => one.id === id)?.words ?? []);
  return (
    <Dialog title={line.size === null ? line.name : `${line.name}, ${line.size}`} isOpen onClose={onClose}>
      <dl className="facts">
        <div>
          <dt>{t('belongings.does')}</dt>
          <dd>{does.join(', ')}</dd>
        </div>
        <div>
          <dt>{t('belongings.mass')}</dt>
          <dd>
            <span className="assumed">{format.mass(line.grams)}</span>
            <span className="small quiet facts-basis">{line.basis}</span>
          </dd>
        </div>
        <div>
          <dt>{t('belongings.length')}</dt>
          <dd className="assumed">{format.length(line.lengthMm)}</dd>
        </div>
        <div>
          <dt>{t('belongings.guidePrice')}</dt>
          <dd>
            {t('belongings.about', { price: format.money(line.cents) })}
            <span className="small quiet facts-basis">{t('belongings.guideBasis')}</span>
          </dd>
        </div>
        {line.when !== null && (
          <div>
            <dt>{t('belongings.when')}</dt>
            <dd>{line.when}</dd>
          </div>
        )}
        <div>
          <dt>{t('belongings.yours')}</dt>
          <dd>
            {have === 0 ? t('belongings.haveNone') : t('belongings.youHave', { count: have })}
            {wanted > 0 ? `, ${t('belongings.onList')}` : ''}
          </dd>
        </div>
      </dl>
      <div className="acts">
        <Button onPress={() => add(false)}>
          {t(have > 0 ? 'belongings.haveAnother' : 'belongings.haveIt')}
        </Button>
        <Button onPress={() => add(true)}>{t('belongings.wantIt')}</Button>
      </div>
      <p className="facts-done" role="status">
        {done}
      </p>
    </Dialog>
  );
}
