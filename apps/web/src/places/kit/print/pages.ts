/** Cuts rows of unlike height into sheets; a row that is higher than a sheet has one of its own. */
export function pagesByHeight<T>(
  rows: readonly T[],
  heightOf: (row: T) => number,
  room: number,
): readonly (readonly T[])[] {
  const pages: T[][] = [];
  let left = 0;
  for (const row of rows) {
    const height = heightOf(row);
    if (height > left || pages.length === 0) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)?.push(row);
    left -= height;
  }
  return pages;
}

/** Rows of a list under the name of their group, which takes a row of its own and is said again on a new sheet. */
export type GroupedRow<T> = { readonly group: string } | { readonly row: T };

export function groupedPages<T>(
  groups: readonly { readonly name: string; readonly rows: readonly T[] }[],
  perSheet: number,
): readonly (readonly GroupedRow<T>[])[] {
  const pages: GroupedRow<T>[][] = [[]];
  for (const { name, rows } of groups) {
    let named = false;
    for (const row of rows) {
      // A name never stands alone at the foot.
      const needed = named ? 1 : 2;
      if ((pages.at(-1)?.length ?? 0) + needed > perSheet) {
        pages.push([]);
        named = false;
      }
      const page = pages.at(-1);
      if (!named) page?.push({ group: name });
      page?.push({ row });
      named = true;
    }
  }
  return pages.filter((page) => page.length > 0);
}
