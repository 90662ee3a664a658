import type { StowBag, StowBerth, StowPiece, StowPocket, StowProblem, Stowage } from './stow-problem.ts';
import { bagMillilitres, fits, isRigid, spotsOf, takes } from './spots.ts';
import type { HandRule, SoftRule } from './stow-rules.ts';
import {
  ONE_PERSON_GRAMS,
  dislikesHeat,
  isElectric,
  isFlammable,
  isHot,
  isLithium,
  isSharp,
  isWet,
} from './stow-rules.ts';
import { layOut, wheelBerths } from './lay-out.ts';

/** One rule that a stowage breaks, and where. Ids of the problem; null where the rule is not about such a thing. */
export interface Broken {
  readonly rule: SoftRule | HandRule;
  readonly pieces: readonly string[];
  readonly bag: string | null;
  readonly pocket: string | null;
  readonly berth: string | null;
  /** Of an axle: which. */
  readonly row: string | null;
  /** What there is and what there may be, grams, ml or mm as the rule has it; null where nothing is counted. */
  readonly found: number | null;
  readonly limit: number | null;
  /** Something in it was put there by hand. */
  readonly byHand: boolean;
}

interface Lain {
  readonly piece: StowPiece;
  readonly bag: StowBag | null;
  readonly pocket: StowPocket | null;
  readonly berth: StowBerth;
}

/** Everything a stowage breaks, in the order of the rules (M14). Counted from the places alone. */
export function brokenRules(problem: StowProblem, stowage: Stowage): readonly Broken[] {
  const lain = lie(problem, stowage);
  const out: Broken[] = [];
  const say = (rule: Broken['rule'], of: readonly Lain[], more: Partial<Broken> = {}): void => {
    const [first] = of;
    out.push({
      rule,
      pieces: of.map(({ piece }) => piece.id),
      bag: first?.bag?.id ?? null,
      pocket: first?.pocket?.id ?? null,
      berth: first?.berth.id ?? null,
      row: null,
      found: null,
      limit: null,
      byHand: of.some(({ piece }) => piece.byHand !== undefined),
      ...more,
    });
  };
  for (const it of lain) {
    if (isWet(it.piece) && it.bag?.spillproof !== true) say('spill-open', [it]);
    if (dislikesHeat(it.piece) && isHot(it.berth)) say('in-heat', [it]);
  }
  const byBag = by(lain, ({ bag }) => bag?.id ?? null);
  const bySpot = by(lain, ({ bag, pocket }) => (bag === null ? null : `${bag.id} / ${pocket?.id ?? ''}`));
  const both = (
    rule: SoftRule,
    of: readonly Lain[],
    a: (p: StowPiece) => boolean,
    b: (p: StowPiece) => boolean,
  ) => {
    const mixed = of.filter(({ piece }) => a(piece) || b(piece));
    if (mixed.some(({ piece }) => a(piece)) && mixed.some(({ piece }) => b(piece))) say(rule, mixed);
  };
  for (const inside of byBag.values()) {
    both('wet-electrics', inside, isWet, isElectric);
    both('lithium-flammable', inside, isLithium, isFlammable);
    const [first] = inside;
    const grams = sum(inside, ({ piece }) => piece.grams) + (first?.bag?.grams ?? 0);
    if (grams > ONE_PERSON_GRAMS)
      say('bag-too-heavy', inside, { pocket: null, found: grams, limit: ONE_PERSON_GRAMS });
  }
  for (const inside of bySpot.values()) both('sharp-electrics', inside, isSharp, isElectric);
  out.push(...axlesOver(problem, stowage, lain));
  for (const it of lain)
    if (it.piece.firstGrab && !it.berth.atHand && it.bag?.firstGrab !== true) say('not-at-hand', [it]);
  for (const it of lain) if (!it.piece.firstGrab && it.bag?.firstGrab === true) say('in-the-way', [it]);
  apartAndLoose(problem, lain, say);
  handBroken(problem, lain, byBag, bySpot, say);
  return out;
}

type Say = (rule: Broken['rule'], of: readonly Lain[], more?: Partial<Broken>) => void;

function lie(problem: StowProblem, stowage: Stowage): readonly Lain[] {
  const pieces = new Map(problem.pieces.map((piece) => [piece.id, piece]));
  return stowage.places.flatMap((place) => {
    const piece = pieces.get(place.piece);
    const berth = problem.berths.find(({ id }) => id === place.berth);
    if (piece === undefined || berth === undefined) return [];
    const bag = problem.bags.find(({ id }) => id === place.bag) ?? null;
    const pocket = bag?.pockets.find(({ id }) => id === place.pocket) ?? null;
    return [{ piece, bag, pocket, berth }];
  });
}

function by(lain: readonly Lain[], key: (it: Lain) => string | null): ReadonlyMap<string, readonly Lain[]> {
  const out = new Map<string, Lain[]>();
  for (const it of lain) {
    const of = key(it);
    if (of !== null) out.set(of, [...(out.get(of) ?? []), it]);
  }
  return out;
}

function sum<T>(list: readonly T[], of: (item: T) => number): number {
  return list.reduce((whole, item) => whole + of(item), 0);
}

/** Grams in a berth: what lies in it, and the bags themselves. */
export function gramsByBerth(problem: StowProblem, stowage: Stowage): ReadonlyMap<string, number> {
  const out = new Map<string, number>();
  const add = (berth: string | null, grams: number): void => {
    if (berth !== null) out.set(berth, (out.get(berth) ?? 0) + grams);
  };
  const pieces = new Map(problem.pieces.map((piece) => [piece.id, piece.grams]));
  for (const { piece, berth } of stowage.places) add(berth, pieces.get(piece) ?? 0);
  for (const { bag, berth } of stowage.bags)
    add(berth, problem.bags.find(({ id }) => id === bag)?.grams ?? 0);
  return out;
}

function axlesOver(problem: StowProblem, stowage: Stowage, lain: readonly Lain[]): readonly Broken[] {
  const grams = gramsByBerth(problem, stowage);
  return problem.loads.flatMap((row): Broken[] => {
    const found = [...grams].reduce((whole, [berth, g]) => whole + g * (row.factor[berth] ?? 0), 0);
    if (found <= row.grams + 0.01) return [];
    const byHand = lain.some(({ piece }) => piece.byHand !== undefined);
    return [
      {
        rule: 'axle-over',
        pieces: [],
        bag: null,
        pocket: null,
        berth: null,
        row: row.id,
        found,
        limit: row.grams,
        byHand,
      },
    ];
  });
}

function apartAndLoose(problem: StowProblem, lain: readonly Lain[], say: Say): void {
  const layout = layOut(problem);
  const inBags = new Set(problem.pieces.flatMap(({ id }, p) => (layout.bagged[p] === 1 ? [id] : [])));
  const bagged = ({ id }: StowPiece): boolean => inBags.has(id);
  const words = new Map<string, Lain[]>();
  for (const it of lain)
    if (bagged(it.piece))
      for (const word of it.piece.groups) words.set(word, [...(words.get(word) ?? []), it]);
  for (const members of words.values()) {
    const units = [
      ...by(members, ({ bag, berth }) => (bag === null ? `loose ${berth.id}` : `bag ${bag.id}`)).values(),
    ];
    // One breach for every part beyond the largest.
    for (const part of units.sort((a, b) => b.length - a.length).slice(1))
      say('set-apart', part, { pocket: null });
  }
  for (const it of lain) if (it.bag === null && bagged(it.piece)) say('loose', [it]);
}

/** Limits that only hand-placed things may pass. */
function handBroken(
  problem: StowProblem,
  lain: readonly Lain[],
  byBag: ReadonlyMap<string, readonly Lain[]>,
  bySpot: ReadonlyMap<string, readonly Lain[]>,
  say: Say,
): void {
  const spots = spotsOf(problem);
  const spotFor = ({ bag, pocket }: Lain) =>
    spots.find((spot) => {
      const of = problem.bags[spot.bag];
      return (
        of !== undefined &&
        of.id === bag?.id &&
        (of.pockets[spot.pocket]?.id ?? null) === (pocket?.id ?? null)
      );
    });
  for (const it of lain) {
    if (it.bag === null || it.piece.byHand === undefined) continue;
    const spot = spotFor(it);
    if (spot === undefined || !fits(problem, it.piece, spot)) say('does-not-fit', [it]);
  }
  for (const inside of bySpot.values()) {
    const [first] = inside;
    const spot = first === undefined ? undefined : spotFor(first);
    if (spot === undefined) continue;
    const taken = sum(inside, ({ piece }) => takes(piece, spot));
    if (taken > spot.room) say('pocket-full', inside, { found: taken, limit: spot.room });
    const grams = sum(inside, ({ piece }) => piece.grams);
    if (grams > spot.limit) say('pocket-over-limit', inside, { found: grams, limit: spot.limit });
  }
  const berths = new Map<string, { grams: number; room: number; of: Lain[] }>();
  const ride = (it: Lain | undefined, grams: number, room: number, of: readonly Lain[]): void => {
    if (it === undefined) return;
    const berth = berths.get(it.berth.id) ?? { grams: 0, room: 0, of: [] };
    berths.set(it.berth.id, {
      grams: berth.grams + grams,
      room: berth.room + room,
      of: [...berth.of, ...of],
    });
  };
  for (const inside of byBag.values()) {
    const bag = inside[0]?.bag ?? null;
    if (bag === null) continue;
    const room = sum(inside, ({ piece }) => piece.millilitres);
    const grams = sum(inside, ({ piece }) => piece.grams);
    const holds = bagMillilitres(bag);
    if (room > holds) say('bag-full', inside, { pocket: null, found: room, limit: holds });
    if (grams > (bag.limit ?? Infinity))
      say('bag-over-limit', inside, { pocket: null, found: grams, limit: bag.limit });
    ride(inside[0], grams + bag.grams, isRigid(bag) ? holds : room, inside);
  }
  for (const it of lain) if (it.bag === null) ride(it, it.piece.grams, it.piece.millilitres, [it]);
  const kept = wheelBerths(problem);
  for (const [h, berth] of problem.berths.entries()) {
    const there = berths.get(berth.id);
    if (there === undefined) continue;
    const whole = { bag: null, pocket: null };
    if (there.grams > (berth.room ?? Infinity))
      say('berth-over-limit', there.of, { ...whole, found: there.grams, limit: berth.room });
    if (there.room > (berth.millilitres ?? Infinity))
      say('berth-full', there.of, { ...whole, found: there.room, limit: berth.millilitres });
    const others = there.of.filter(({ piece }) => piece.wheel !== true);
    if (kept.has(h) && others.length > 0) say('wheel-room', others, whole);
  }
}
