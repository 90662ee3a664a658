/** Cuts rows into sheets of so many; a sheet is never left empty. */
export function pagesOf<T>(rows: readonly T[], perSheet: number): readonly (readonly T[])[] {
  const pages: (readonly T[])[] = [];
  for (let from = 0; from < rows.length; from += perSheet) pages.push(rows.slice(from, from + perSheet));
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
