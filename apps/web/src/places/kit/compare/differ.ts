import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';

/** What a comparison needs of a kit; small enough to be kept. */
export interface KitCopy {
  readonly name: string;
  readonly trip: string;
  readonly vehicle: string;
  /** Chance of driving home unaided, 0..1. */
  readonly unaided: number;
  readonly proven: boolean;
  readonly grams: number;
  readonly pieces: number;
  readonly spentCents: number;
  readonly gaps: number;
  readonly grossLeftKg: number | null;
  readonly items: readonly {
    readonly id: string;
    readonly name: string;
    readonly grams: number;
    readonly copies: number;
  }[];
}

export function copyOf(answer: PlanAnswer, name: string): KitCopy {
  return {
    name,
    trip: answer.trip.name,
    vehicle: answer.trip.vehicle,
    unaided: answer.unaided.kit,
    proven: answer.status === 'proven',
    grams: answer.kit.massGrams,
    pieces: answer.kit.items.reduce((n, item) => n + item.copies, 0),
    spentCents: answer.shop.spentCents,
    gaps: answer.gaps.length,
    grossLeftKg: answer.load.gross.marginKg,
    items: answer.kit.items.map(({ id, name: title, grams, copies }) => ({ id, name: title, grams, copies })),
  };
}

export interface Difference {
  /** Only in the first, only in the second: with what one has more copies of than the other; heaviest first. */
  readonly first: KitCopy['items'];
  readonly second: KitCopy['items'];
  /** Belongings that both bring in the same number. */
  readonly both: number;
}

export function differ(a: KitCopy, b: KitCopy): Difference {
  return {
    first: more(a, b),
    second: more(b, a),
    both: a.items.filter((item) => b.items.some(({ id, copies }) => id === item.id && copies === item.copies))
      .length,
  };
}

function more(a: KitCopy, b: KitCopy): KitCopy['items'] {
  const other = new Map(b.items.map((item) => [item.id, item.copies]));
  return a.items
    .flatMap((item) => {
      const copies = item.copies - (other.get(item.id) ?? 0);
      return copies > 0 ? [{ ...item, copies, grams: Math.round((item.grams / item.copies) * copies) }] : [];
    })
    .sort((x, y) => y.grams - x.grams || (x.id < y.id ? -1 : 1));
}
