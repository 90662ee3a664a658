import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { CatalogueBelonging, PriceBand } from '../shape/belonging.ts';
import type { Offer } from '../shape/offer.ts';
import type { FUNCTIONS, FunctionId, Grade, SquareDrive } from '../shape/words.ts';

/** Builders that keep one belonging on one line. Masses g, lengths mm, bulk ml; bulk is room taken in a roll or box. */

export const FROM_GEOMETRY: Basis = estimate(
  'Worked out from geometry: steel at 7.85 g/cm3, usual outer diameters and lengths, cavity removed, 0.88 for chamfers; within 20 % until weighed',
);
export const FROM_WRENCH_CURVE: Basis = estimate(
  'Read off a curve for combination wrenches, g = 0.23 s^2.24 and mm = 52 + 8.6 s + 0.04 s^2 for s mm across flats, ratcheting ones a quarter heavier; within 15 % until weighed',
);
export const TYPICAL: Basis = estimate(
  'Typical of decent ordinary goods, from memory; within 25 % until weighed',
);
export const FROM_VOLUME: Basis = estimate(
  'Volume times density, with its bottle or coil; within 10 % until weighed',
);

export interface Measures {
  readonly g: number;
  readonly mm: number;
  readonly ml: number;
  readonly price: PriceBand;
}

type Extra = Pick<CatalogueBelonging, 'stock' | 'care' | 'marks' | 'when' | 'fits'> & {
  readonly basis?: Basis;
};
type Offers = readonly (Offer | readonly Offer[])[];
type OfWord<F extends FunctionId> = (typeof FUNCTIONS)[F]['of'][number];
type OfferGrade = Exclude<Grade, 'forbidden'>;

function entry(
  kind: CatalogueBelonging['kind'],
  id: string,
  name: string,
  size: string | undefined,
  measures: Measures,
  offers: Offers,
  extra: Extra,
): CatalogueBelonging {
  const { basis = TYPICAL, ...rest } = extra;
  return {
    id,
    kind,
    name,
    ...(size === undefined ? {} : { size }),
    offers: offers.flat(),
    grams: measures.g,
    lengthMm: measures.mm,
    bulkMl: measures.ml,
    price: measures.price,
    basis,
    ...rest,
  };
}

/** A tool. `size` is '' where there is nothing to say. */
export function tool(
  id: string,
  name: string,
  size: string,
  measures: Measures,
  offers: Offers,
  extra: Extra = {},
): CatalogueBelonging {
  return entry('tool', id, name, size === '' ? undefined : size, measures, offers, extra);
}

/** Something used up: fluid, tape, wire, bolts. */
export function supply(
  id: string,
  name: string,
  size: string,
  measures: Measures,
  offers: Offers,
  extra: Extra = {},
): CatalogueBelonging {
  return entry('supply', id, name, size === '' ? undefined : size, measures, offers, extra);
}

/** A part for the vehicle. */
export function spare(
  id: string,
  name: string,
  size: string,
  measures: Measures,
  offers: Offers,
  extra: Extra,
): CatalogueBelonging {
  return entry('spare', id, name, size === '' ? undefined : size, measures, offers, extra);
}

/** A six-point socket. */
export function socket(
  id: string,
  size: string,
  drive: SquareDrive,
  depth: 'shallow' | 'deep',
  measures: Measures,
  basis: Basis = FROM_GEOMETRY,
): CatalogueBelonging {
  return tool(
    id,
    `${depth} socket, six-point`,
    `${size}, ${drive} drive`,
    measures,
    [{ kind: 'socket', size, depth, points: 6, drive }],
    { basis },
  );
}

/** Ring one end, open the other, one size. */
export function combinationWrench(id: string, size: string, measures: Measures): CatalogueBelonging {
  const ends = [
    { form: 'ring', size },
    { form: 'open', size },
  ] as const;
  const wrench: Offer = { kind: 'wrench', ends, lengthMm: measures.mm };
  return tool(id, 'combination wrench', size, measures, [wrench], { basis: FROM_WRENCH_CURVE });
}

/** `does` lines of proper grade: one for each `of` word, or the plain function when none is named. */
export function proper<F extends FunctionId>(fn: F, ...of: readonly OfWord<F>[]): readonly Offer[] {
  return lines('proper', fn, of);
}

/** The same with care. */
export function withCare<F extends FunctionId>(fn: F, ...of: readonly OfWord<F>[]): readonly Offer[] {
  return lines('with-care', fn, of);
}

/** The same as a last resort. */
export function lastResort<F extends FunctionId>(fn: F, ...of: readonly OfWord<F>[]): readonly Offer[] {
  return lines('last-resort', fn, of);
}

function lines(grade: OfferGrade, fn: FunctionId, of: readonly string[]): readonly Offer[] {
  if (of.length === 0) return [{ kind: 'does', fn, grade }];
  return of.map((word) => ({ kind: 'does', fn, of: word, grade }));
}

/** A `does` line with an amount in the function's printed unit (mm, kg, N m, l/min, A, l); `from` where small amounts are beyond it. */
export function upTo<F extends FunctionId>(
  fn: F,
  amount: number,
  more: { readonly of?: OfWord<F>; readonly grade?: OfferGrade; readonly from?: number } = {},
): Offer {
  const { of, from, grade = 'proper' } = more;
  return {
    kind: 'does',
    fn,
    ...(of === undefined ? {} : { of }),
    amount,
    ...(from === undefined ? {} : { from }),
    grade,
  };
}

/** The same line for so many pieces that can be used at one moment. */
export function pieces(count: number, offers: readonly Offer[]): readonly Offer[] {
  return offers.map((offer) => (offer.kind === 'does' ? { ...offer, pieces: count } : offer));
}
