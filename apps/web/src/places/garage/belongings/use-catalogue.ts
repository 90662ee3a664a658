import type { CatalogueLine, CatalogueSet, CatalogueView } from '@waymend/planner/views/catalogue-view';
import { useEffect, useState } from 'react';
import { useSettings, useStores } from '../../../shell/stores.tsx';
import type { PlannerClient } from '../../../worker/client.ts';

/** The catalogue as the screens use it: to name things and to leaf through. */
export interface Catalogue extends CatalogueView {
  readonly byId: ReadonlyMap<string, CatalogueLine>;
  readonly setById: ReadonlyMap<string, CatalogueSet>;
}

export function catalogueOf(view: CatalogueView): Catalogue {
  return {
    ...view,
    byId: new Map(view.lines.map((line) => [line.id, line])),
    setById: new Map(view.sets.map((set) => [set.id, set])),
  };
}

interface Kept {
  catalogue: Catalogue | null;
  readonly coming: Promise<Catalogue>;
}

/** It never changes while the page is open, but for whose words it is in. */
const KEPT = new WeakMap<PlannerClient, Map<string, Kept>>();

function fetched(reader: PlannerClient, wording: string): Kept {
  const all = KEPT.get(reader) ?? new Map<string, Kept>();
  KEPT.set(reader, all);
  const before = all.get(wording);
  if (before !== undefined) return before;
  const coming = reader.once({ kind: 'belongings/catalogue' }).then((reply) => {
    if (reply.kind !== 'belongings/catalogue') {
      all.delete(wording);
      throw new Error(reply.kind === 'broken' ? reply.cause : 'the catalogue did not come');
    }
    kept.catalogue = catalogueOf(reply.view);
    return kept.catalogue;
  });
  const kept: Kept = { catalogue: null, coming };
  all.set(wording, kept);
  return kept;
}

/** The shipped catalogue in this owner's words; null for the moment until the reader has handed it over. */
export function useCatalogue(): Catalogue | null {
  const { reader } = useStores();
  const { wording } = useSettings();
  const [, setCatalogue] = useState<Catalogue | null>(null);
  useEffect(() => {
    let wanted = true;
    void fetched(reader, wording).coming.then((found) => wanted && setCatalogue(found));
    return () => {
      wanted = false;
    };
  }, [reader, wording]);
  return fetched(reader, wording).catalogue;
}
