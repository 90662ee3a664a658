import type { CatalogueLine } from '@waymend/planner/views/catalogue-view';
import type { Catalogue } from '../use-catalogue.ts';

/** What part of the catalogue is looked at; '' is all of it. */
export interface Leaf {
  readonly group: string;
  readonly purpose: string;
  readonly search: string;
}

/** Lines of a group or purpose; searched, likeliest first, else in the order of the catalogue. */
export function pickLines(
  catalogue: Catalogue,
  { group, purpose, search }: Leaf,
  found: readonly string[],
): readonly CatalogueLine[] {
  const wanted = new Set(
    catalogue.purposes
      .filter((one) => (group === '' || one.group === group) && (purpose === '' || one.id === purpose))
      .map(({ id }) => id),
  );
  const all = search.trim() === '' ? catalogue.lines : found.flatMap((id) => catalogue.byId.get(id) ?? []);
  return group === '' && purpose === ''
    ? all
    : all.filter(({ purposes }) => purposes.some((id) => wanted.has(id)));
}
