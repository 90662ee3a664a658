import type { CatalogueLine, CatalogueSet, CatalogueView } from '@waymend/planner/views/catalogue-view';
import { useEffect, useState } from 'react';
import { useStores } from '../../../shell/stores.tsx';
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

/** It never changes while the page is open, so each reader is asked once. */
const KEPT = new WeakMap<
  PlannerClient,
  { catalogue: Catalogue | null; readonly coming: Promise<Catalogue> }
>();

function fetched(reader: PlannerClient) {
  const before = KEPT.get(reader);
  if (before !== undefined) return before;
  const coming = reader.once({ kind: 'belongings/catalogue' }).then((reply) => {
    if (reply.kind !== 'belongings/catalogue') {
      KEPT.delete(reader);
      throw new Error(reply.kind === 'broken' ? reply.cause : 'the catalogue did not come');
    }
    kept.catalogue = catalogueOf(reply.view);
    return kept.catalogue;
  });
  const kept: { catalogue: Catalogue | null; readonly coming: Promise<Catalogue> } = {
    catalogue: null,
    coming,
  };
  KEPT.set(reader, kept);
  return kept;
}

/** The shipped catalogue; null for the moment until the reader has handed it over. */
export function useCatalogue(): Catalogue | null {
  const { reader } = useStores();
  const [catalogue, setCatalogue] = useState(() => fetched(reader).catalogue);
  useEffect(() => {
    let wanted = true;
    void fetched(reader).coming.then((found) => wanted && setCatalogue(found));
    return () => {
      wanted = false;
    };
  }, [reader]);
  return catalogue;
}
