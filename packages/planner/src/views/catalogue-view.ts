import type { BoxedSet } from '@waymend/catalogue/boxed-sets';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import type { Basis } from '@waymend/catalogue/shape/basis';
import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import { PRICE_BANDS, priceCents } from '@waymend/catalogue/prices';
import type { Purpose } from './function-groups.ts';
import { FUNCTION_GROUPS, purposes } from './function-groups.ts';

/** One thing of the catalogue as a list shows it. Grams, millimetres, whole euro cents. */
export interface CatalogueLine {
  readonly id: string;
  readonly kind: CatalogueBelonging['kind'];
  readonly name: string;
  readonly size: string | null;
  readonly grams: number;
  readonly lengthMm: number;
  /** Guide price of one, and the ends of the band it is the middle of (null: open above). */
  readonly cents: number;
  readonly fromCents: number;
  readonly toCents: number | null;
  /** What mass and lengths stand on, in words. */
  readonly basis: string;
  readonly purposes: readonly string[];
  /** When a spare earns its place. */
  readonly when: string | null;
  /** It is used up: what of, and how many jobs' worth or litres one holds. */
  readonly stock: number | null;
}

export interface CatalogueSet {
  readonly id: string;
  readonly title: string;
  readonly cents: number;
  readonly caseGrams: number;
  readonly contents: readonly { readonly is: string; readonly copies: number }[];
  readonly pieces: number;
  /** Case and contents. */
  readonly grams: number;
  /** What the box does not hold although its owner may think so. */
  readonly note: string;
}

/** The catalogue for leafing through and for naming what a garage holds. */
export interface CatalogueView {
  readonly lines: readonly CatalogueLine[];
  readonly sets: readonly CatalogueSet[];
  /** Every purpose that some line has, group by group. */
  readonly purposes: readonly Purpose[];
}

export function catalogueView(
  belongings: readonly CatalogueBelonging[],
  sets: readonly BoxedSet[] = BOXED_SETS,
): CatalogueView {
  const found = new Map<string, Purpose>();
  const lines = belongings.map((entry): CatalogueLine => {
    const its = purposes(entry);
    for (const one of its) found.set(one.id, one);
    const [fromCents, toCents] = PRICE_BANDS[entry.price];
    return {
      id: entry.id,
      kind: entry.kind,
      name: entry.name,
      size: entry.size ?? null,
      grams: entry.grams,
      lengthMm: entry.lengthMm,
      cents: priceCents(entry),
      fromCents,
      toCents,
      basis: basisWords(entry.basis),
      purposes: its.map(({ id }) => id),
      when: entry.when ?? null,
      stock: entry.stock?.[0]?.units ?? null,
    };
  });
  const grams = new Map(belongings.map((entry) => [entry.id, entry.grams]));
  const all = [...found.values()];
  return {
    lines,
    sets: sets.map((set) => setLine(set, grams)),
    purposes: FUNCTION_GROUPS.flatMap((group) => all.filter((one) => one.group === group)),
  };
}

function setLine(set: BoxedSet, grams: ReadonlyMap<string, number>): CatalogueSet {
  const { id, title, cents, caseGrams, note } = set;
  return {
    id,
    title,
    cents,
    caseGrams,
    contents: set.contents.map(({ is, copies }) => ({ is, copies })),
    pieces: set.contents.reduce((sum, { copies, pieces }) => sum + copies * (pieces ?? 1), 0),
    grams: set.contents.reduce((sum, { is, copies }) => sum + copies * (grams.get(is) ?? 0), caseGrams),
    note,
  };
}

function basisWords(basis: Basis): string {
  switch (basis.kind) {
    case 'source':
      return `read in ${basis.cite}`;
    case 'computed':
      return `computed from ${basis.from}`;
    case 'common-practice':
      return 'common practice of the trade';
    case 'estimate':
      return basis.why;
    case 'recalled':
      return `recalled: ${basis.of}, not re-read`;
  }
}
