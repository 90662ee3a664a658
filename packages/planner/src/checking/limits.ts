import type { Scene } from '@waymend/core/repairing/scene';
import type { LimitFigure, Violation, ViolationId } from './report.ts';
import type { Supplied } from './supply.ts';

/** Sums of whole numbers against the limits (M6). */
export interface Sums {
  readonly grams: number;
  readonly millilitres: number;
  readonly cents: number;
  readonly limits: readonly LimitFigure[];
  readonly violations: readonly Violation[];
}

export function sums(scene: Scene, { carried, bought, bundles }: Supplied): Sums {
  const cases = bundles.filter((b) => b.carry === 'whole');
  const grams = total(carried, (p) => p.grams) + total(cases, (b) => b.caseGrams);
  const millilitres = total(carried, (p) => p.millilitres) + total(cases, (b) => b.caseMillilitres);
  // A piece without a price of its own is reported as not for sale and costs nothing here.
  const cents = total(bought, (p) => p.cents ?? 0) + total(bundles, (b) => (b.owned ? 0 : b.cents));
  const { limits } = scene;
  const caseGrams = total(cases, (b) => b.caseGrams);
  const rows: readonly Row[] = [
    { id: 'mass', violation: 'over-mass', used: grams, limit: limits.grams, unit: 'g' },
    { id: 'volume', violation: 'over-volume', used: millilitres, limit: limits.millilitres, unit: 'ml' },
    { id: 'money', violation: 'over-budget', used: cents, limit: limits.cents, unit: 'cents' },
    ...limits.berths.map((berth) => ({
      id: `berth:${berth.id}`,
      violation: 'over-berth' as const,
      used:
        total(carried, (p) => (p.berth === berth.id || (p.berth === null && berth.kit) ? p.grams : 0)) +
        (berth.kit ? caseGrams : 0),
      limit: berth.grams,
      unit: 'g',
    })),
    ...limits.loads.map((row) => ({
      id: `load:${row.id}`,
      violation: 'over-load' as const,
      used: loadOn(row, carried, caseGrams),
      limit: row.grams,
      unit: 'g',
    })),
  ];
  return {
    grams,
    millilitres,
    cents,
    limits: rows.map(({ id, used, limit }) => ({ id, used, limit })),
    violations: rows.flatMap(over),
  };
}

interface Row extends LimitFigure {
  readonly violation: ViolationId;
  readonly unit: string;
}

function over({ id, violation, used, limit, unit }: Row): readonly Violation[] {
  if (limit === null || used <= limit) return [];
  const sentence = `${id} adds up to ${used} ${unit}, over its limit of ${limit} ${unit}.`;
  return [{ id: violation, about: id, sentence, found: used, expected: limit }];
}

const SCALE = 1_000_000_000n;

/**
 * Grams on one load row, added up exactly as whole billionths and rounded up once, at the end. Cases ride where nothing is
 * said. No slack is given: a plan made from rows that round each piece up is never above this sum, because a sum of upper
 * bounds is an upper bound of the sum, and the limit is a whole number, so rounding the exact sum up cannot pass it either.
 */
function loadOn(
  row: Scene['limits']['loads'][number],
  carried: Supplied['carried'],
  caseGrams: number,
): number {
  const billionths = (factor: number) => BigInt(Math.round(factor * Number(SCALE)));
  let sum = BigInt(caseGrams) * billionths(row.elsewhere);
  for (const piece of carried) {
    const factor = piece.berth === null ? row.elsewhere : (row.factor[piece.berth] ?? row.elsewhere);
    sum += BigInt(piece.grams) * billionths(factor);
  }
  return Number(sum / SCALE) + (sum % SCALE > 0n ? 1 : 0);
}

function total<T>(list: readonly T[], of: (item: T) => number): number {
  const sum = list.reduce((whole, item) => whole + of(item), 0);
  if (!Number.isSafeInteger(sum)) throw new Error(`${sum} is not a whole number that can be added exactly`);
  return sum;
}
