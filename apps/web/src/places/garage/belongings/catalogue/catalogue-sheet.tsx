import { useDeferredValue, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { FUNCTION_GROUP_IDS } from './group-ids.ts';
import { Choice } from '../../../../look/field.tsx';
import { LinkButton } from '../../../../look/link-button.tsx';
import { SearchField } from '../../../../look/search-field.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import { SubHead } from '../sub-head.tsx';
import { useCatalogue } from '../use-catalogue.ts';
import { useFound } from '../use-found.ts';
import { CatalogueList } from './catalogue-list.tsx';
import { SetSheet } from './set-sheet.tsx';
import { LineSheet } from './line-sheet.tsx';
import { SetList } from './set-list.tsx';
import { ownedOf } from './owned.ts';
import type { Leaf } from './pick-lines.ts';
import { pickLines } from './pick-lines.ts';
import './catalogue-sheet.css';

const SETS = 'sets';
let kept: Leaf = { group: '', purpose: '', search: '' };

/** The catalogue by what things are for, searched in any region's words; what is found is owned or wanted with one press. */
export function CatalogueSheet() {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const { belongings } = useRecord().garage;
  const [leaf, setLeaf] = useState(kept);
  const [opened, setOpened] = useState<string | null>(null);
  const search = useDeferredValue(leaf.search);
  const found = useFound(search);
  const owned = useMemo(() => ownedOf(belongings), [belongings]);
  const turn = (fields: Partial<Leaf>): void => {
    kept = { ...kept, ...fields };
    setLeaf(kept);
  };
  const lines = useMemo(
    () => (catalogue === null ? [] : pickLines(catalogue, { ...leaf, search }, found.ids)),
    [catalogue, leaf, search, found],
  );
  if (catalogue === null) {
    return (
      <>
        <h1>{t('belongings.catalogueTitle')}</h1>
        <p className="quiet">{t('belongings.opening')}</p>
      </>
    );
  }
  const purposes = catalogue.purposes.filter(({ group }) => group === leaf.group);
  const isSets = leaf.group === SETS;
  const set = opened === null ? undefined : catalogue.setById.get(opened);
  const line = opened === null ? undefined : catalogue.byId.get(opened);
  return (
    <div className="catalogue">
      <SubHead title={t('belongings.catalogueTitle')} how={t('belongings.catalogueHow')}>
        <LinkButton to="/garage/belongings">{t('belongings.back')}</LinkButton>
      </SubHead>
      <search className="sift">
        <SearchField
          label={t('belongings.search')}
          value={leaf.search}
          onChange={(to) => turn({ search: to, ...(isSets ? { group: '', purpose: '' } : {}) })}
        />
        <Choice
          label={t('belongings.group')}
          value={leaf.group}
          onChange={(group) => turn({ group, purpose: '', ...(group === SETS ? { search: '' } : {}) })}
          options={[
            { id: '', label: t('belongings.groupAll') },
            { id: SETS, label: t('belongings.groupSets') },
            ...FUNCTION_GROUP_IDS.map((id) => ({ id, label: t(`belongings.group_${id}`) })),
          ]}
        />
        <Choice
          label={t('belongings.purpose')}
          value={leaf.purpose}
          onChange={(purpose) => turn({ purpose })}
          options={[
            { id: '', label: t('belongings.purposeAll') },
            ...purposes.map(({ id, words }) => ({ id, label: words })),
          ]}
        />
        <p className="sift-count small quiet" role="status">
          {isSets
            ? t('belongings.rows', {
                count: catalogue.sets.length,
                number: format.count(catalogue.sets.length),
              })
            : t('belongings.rows', { count: lines.length, number: format.count(lines.length) })}
        </p>
      </search>
      {isSets ? (
        <SetList sets={catalogue.sets} onOpen={setOpened} />
      ) : lines.length === 0 ? (
        <p className="sentence">{t('belongings.pickNone')}</p>
      ) : (
        <CatalogueList lines={lines} owned={owned} onOpen={setOpened} />
      )}
      {line !== undefined && (
        <LineSheet line={line} purposes={catalogue.purposes} owned={owned} onClose={() => setOpened(null)} />
      )}
      {set !== undefined && <SetSheet set={set} onClose={() => setOpened(null)} />}
    </div>
  );
}
