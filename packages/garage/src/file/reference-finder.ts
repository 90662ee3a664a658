import type { Refusal } from '@waymend/core/result';
import { type Collection, ONE_OF } from '../record/collections.ts';
import type { Garage } from '../record/schema.ts';
import { nearest } from './nearest.ts';
import type { PlaceInFile } from './place-in-file.ts';

type Path = readonly (string | number)[];

/** Asks of one reference after another whether it leads somewhere. */
export interface ReferenceFinder {
  readonly add: (id: string, path: Path, what: string) => void;
  /** `id` has to be an entity of the file; undefined is no reference at all. */
  readonly inFile: (table: Collection, id: string | undefined, path: Path, whose: string) => void;
  /** `id` has to be one of the catalogue's. */
  readonly inCatalogue: (
    ids: ReadonlySet<string>,
    kind: string,
    id: string | undefined,
    path: Path,
    whose: string,
  ) => void;
}

/** What was found wanting is in `refusals`, in the order of asking. */
export function referenceFinder(
  garage: Garage,
  at: PlaceInFile,
): ReferenceFinder & { readonly refusals: Refusal[] } {
  const refusals: Refusal[] = [];
  const add: ReferenceFinder['add'] = (id, path, what) => {
    refusals.push(at.refusal(id, path, what));
  };
  return {
    refusals,
    add,
    inFile: (table, id, path, whose) => {
      if (id === undefined || Object.hasOwn(garage[table], id)) return;
      const close = nearest(id, Object.keys(garage[table]));
      const help =
        close === null ? `add it under ${table} or change the reference` : `did you mean "${close}"?`;
      const what = `${whose} names the ${ONE_OF[table]} "${id}", which is not in the file; ${help}`;
      add('reference-dangling', path, what);
    },
    inCatalogue: (ids, kind, id, path, whose) => {
      if (id === undefined || ids.has(id)) return;
      const close = nearest(id, ids);
      const help = close === null ? 'look it up in the catalogue' : `did you mean "${close}"?`;
      const named = `${whose} names the ${kind} "${id.slice(0, 60)}"`;
      add('catalogue-unknown', path, `${named}, which the catalogue does not know; ${help}`);
    },
  };
}
