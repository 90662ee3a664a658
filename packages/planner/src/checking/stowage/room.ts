import type {
  StowBag,
  StowBerth,
  StowPiece,
  StowPocket,
  StowProblem,
} from '@waymend/core/stowing/stow-problem';
import type { Lain, LookedUp } from './lain.ts';
import { grouped, total } from './lain.ts';

/**
 * Room, length and mass (M14), read from docs/model.md: whatever the plan laid fits; whatever was put by hand may break a
 * limit, and then nothing else may lie there beyond it.
 */

/** Whether a thing goes into a pocket, or the room of a bag, that is empty. */
export function goesInto(piece: StowPiece, bag: StowBag, pocket: StowPocket | null): boolean {
  const { length, width, thickness } = piece.size;
  // Cloth takes single things up to 2 kg.
  if ((bag.kind === 'roll' || bag.kind === 'pouch') && piece.grams > 2_000) return false;
  if (bag.limit !== null && piece.grams > bag.limit) return false;
  if (piece.millilitres > holds(bag)) return false;
  if (pocket === null) {
    // Slots are all there is of a roll that has any.
    if (bag.kind === 'roll' && bag.pockets.length > 0) return false;
    return sidesFit([length, width, thickness], [bag.length, bag.width, bag.height]);
  }
  if (pocket.limit !== null && piece.grams > pocket.limit) return false;
  const reach = pocket.openEnded ? Math.floor((pocket.length * 3) / 2) : pocket.length;
  if (pocket.depth === null) return length <= reach && width + thickness <= pocket.width;
  return (
    piece.millilitres <= bay(pocket) &&
    sidesFit([length, width, thickness], [reach, pocket.width, pocket.depth])
  );
}

function sidesFit(thing: readonly number[], inside: readonly (number | null)[]): boolean {
  const room = inside.map((side) => side ?? Number.MAX_VALUE).sort((a, b) => a - b);
  const sides = [...thing].sort((a, b) => a - b);
  return sides.every((side, n) => side <= (room[n] ?? 0));
}

function bay({ width, length, depth }: StowPocket): number {
  return Math.floor((width * length * (depth ?? 0)) / 1000);
}

export function holds({ millilitres, length, width, height }: StowBag): number {
  if (millilitres !== null) return millilitres;
  return length === null || width === null || height === null
    ? Number.MAX_VALUE
    : Math.floor((length * width * height) / 1000);
}

/** What a bag takes of its berth's room: a box its whole inside, where that is known. */
function takesRoom(bag: StowBag, inside: readonly Lain[]): number {
  const whole = holds(bag);
  if ((bag.kind === 'box' || bag.kind === 'case') && whole < Number.MAX_VALUE) return whole;
  return total(inside, ({ piece }) => piece.millilitres);
}

/** Sentences for every limit that something other than what lies there by hand passes. */
export function roomFaults(problem: StowProblem, { lain, berthOf }: LookedUp): readonly string[] {
  const faults: string[] = [];
  const sum = (what: string, of: readonly Lain[], size: (it: Lain) => number, limit: number | null): void => {
    const byHand = total(
      of.filter(({ piece }) => piece.byHand !== undefined),
      size,
    );
    if (limit !== null && total(of, size) > Math.max(limit, byHand))
      faults.push(`${what} is over its limit.`);
  };
  for (const { piece, bag, pocket } of lain)
    if (bag !== null && piece.byHand?.kind !== 'bag' && !goesInto(piece, bag, pocket))
      faults.push(`${piece.id} does not go into ${pocket?.id ?? bag.id}.`);
  for (const inside of grouped(
    lain,
    ({ bag, pocket }) => pocket && bag && `${bag.id} / ${pocket.id}`,
  ).values()) {
    const pocket = inside[0]?.pocket;
    if (pocket === null || pocket === undefined) continue;
    if (pocket.depth === null)
      sum(
        `Width of ${pocket.id}`,
        inside,
        ({ piece }) => piece.size.width + piece.size.thickness,
        pocket.width,
      );
    else sum(`Room of ${pocket.id}`, inside, ({ piece }) => piece.millilitres, bay(pocket));
    sum(`Mass in ${pocket.id}`, inside, ({ piece }) => piece.grams, pocket.limit);
  }
  const byBag = grouped(lain, ({ bag }) => bag?.id ?? null);
  for (const [id, inside] of byBag) {
    const bag = inside[0]?.bag;
    if (bag === null || bag === undefined) continue;
    sum(`Room of ${id}`, inside, ({ piece }) => piece.millilitres, holds(bag));
    sum(`Mass in ${id}`, inside, ({ piece }) => piece.grams, bag.limit);
  }
  for (const berth of problem.berths) faults.push(...berthFaults(berth, lain, byBag, berthOf));
  return faults;
}

/** A berth holds loose things and bags, each bag with its own mass. */
function berthFaults(
  berth: StowBerth,
  lain: readonly Lain[],
  byBag: ReadonlyMap<string, readonly Lain[]>,
  berthOf: LookedUp['berthOf'],
): readonly string[] {
  let grams = total(
    lain.filter((it) => it.bag === null && it.berth === berth),
    ({ piece }) => piece.grams,
  );
  let room = total(
    lain.filter((it) => it.bag === null && it.berth === berth),
    ({ piece }) => piece.millilitres,
  );
  let handGrams = 0;
  let handRoom = 0;
  for (const { piece, berth: at } of lain)
    if (at === berth && piece.byHand?.kind === 'berth') {
      handGrams += piece.grams;
      handRoom += piece.millilitres;
    }
  for (const [id, inside] of byBag) {
    const bag = inside[0]?.bag;
    if (bag === null || bag === undefined || berthOf.get(id) !== berth) continue;
    grams += bag.grams + total(inside, ({ piece }) => piece.grams);
    room += takesRoom(bag, inside);
    const put = inside.filter(({ piece }) => piece.byHand?.kind === 'bag');
    if (put.length === 0) continue;
    handGrams += bag.grams + total(put, ({ piece }) => piece.grams);
    handRoom += takesRoom(bag, put);
  }
  const out: string[] = [];
  if (berth.room !== null && grams > Math.max(berth.room, handGrams))
    out.push(`Berth ${berth.id} carries too much.`);
  if (berth.millilitres !== null && room > Math.max(berth.millilitres, handRoom))
    out.push(`Berth ${berth.id} is too full.`);
  return out;
}
