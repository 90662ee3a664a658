import { useMemo } from 'react';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import type { Row } from './rows.ts';
import { RowMaker } from './rows.ts';
import type { Standings } from './standing.ts';
import { standingsOf } from './standing.ts';
import type { Catalogue } from './use-catalogue.ts';
import { useCatalogue } from './use-catalogue.ts';

const MAKERS = new WeakMap<Catalogue, RowMaker>();

export interface Rows {
  readonly rows: readonly Row[];
  readonly standings: Standings;
  /** The plan is of the record as it stands. */
  readonly fresh: boolean;
  /** Mass of the kit that the plan takes along; null without a plan. */
  readonly kitGrams: number | null;
}

/** The garage's belongings as rows, with what the plan of the open trip says of each; null until the catalogue has come. */
export function useRows(): Rows | null {
  const catalogue = useCatalogue();
  const { garage } = useRecord();
  const { answer, fresh } = usePlan();
  const { belongings, bags, berths } = garage;
  const rows = useMemo(() => {
    if (catalogue === null) return null;
    const maker = MAKERS.get(catalogue) ?? new RowMaker(catalogue.byId);
    MAKERS.set(catalogue, maker);
    return maker.rows({ belongings, bags, berths });
  }, [catalogue, belongings, bags, berths]);
  const standings = useMemo(() => standingsOf(answer), [answer]);
  return useMemo(
    () => (rows === null ? null : { rows, standings, fresh, kitGrams: answer?.kit.massGrams ?? null }),
    [rows, standings, fresh, answer],
  );
}
