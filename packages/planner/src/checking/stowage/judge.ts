import type { StowPiece, StowProblem } from '@waymend/core/stowing/stow-problem';
import type { Lain, LookedUp } from './lain.ts';
import { grouped, total } from './lain.ts';
import { goesInto } from './room.ts';

/** How often each soft rule is broken, and what the measured levels come to; counted from the page (M14). */
export interface Judgement {
  readonly broken: ReadonlyMap<string, number>;
  readonly levels: Readonly<
    Record<'unplaced' | 'danger' | 'order' | 'reach' | 'height' | 'behind' | 'moved', number>
  >;
}

const DANGERS = [
  'spill-open',
  'wet-electrics',
  'sharp-electrics',
  'lithium-flammable',
  'in-heat',
  'bag-too-heavy',
  'axle-over',
] as const;
const ORDERS = ['not-at-hand', 'in-the-way', 'set-apart', 'loose'] as const;

/** Common practice: what one person should lift. */
const LIFT = 25_000;

export function judge(problem: StowProblem, looked: LookedUp): Judgement {
  const { lain, left } = looked;
  const counts = new Map<string, number>();
  const count = (rule: string, n: number): void => {
    counts.set(rule, (counts.get(rule) ?? 0) + n);
  };
  const marked = (piece: StowPiece, mark: StowPiece['marks'][number]): boolean => piece.marks.includes(mark);
  const wet = ({ piece }: Lain): boolean =>
    marked(piece, 'fuel') || (marked(piece, 'liquid') && !marked(piece, 'aerosol'));
  const electric = (it: Lain): boolean =>
    !wet(it) && (marked(it.piece, 'electric') || marked(it.piece, 'battery') || marked(it.piece, 'lithium'));
  const lithium = ({ piece }: Lain): boolean => marked(piece, 'lithium');
  const burns = (it: Lain): boolean =>
    !lithium(it) && (marked(it.piece, 'fuel') || marked(it.piece, 'aerosol'));
  const sharp = (it: Lain): boolean => marked(it.piece, 'sharp') && !electric(it);
  const mixed = (of: readonly Lain[], one: (it: Lain) => boolean, other: (it: Lain) => boolean): number =>
    of.some(one) && of.some(other) ? 1 : 0;

  for (const it of lain) {
    if (wet(it) && !(it.bag?.spillproof ?? false)) count('spill-open', 1);
    const hates = lithium(it) || marked(it.piece, 'aerosol') || marked(it.piece, 'fuel');
    if (hates && (it.berth.roof || it.berth.x < 0)) count('in-heat', 1);
    const near = it.berth.atHand || (it.bag?.firstGrab ?? false);
    if (it.piece.firstGrab && !near) count('not-at-hand', 1);
    if (it.bag?.firstGrab === true && !it.piece.firstGrab) count('in-the-way', 1);
    if (it.bag === null && couldBeBagged(problem, it.piece)) count('loose', 1);
  }
  for (const inside of grouped(lain, ({ bag }) => bag?.id ?? null).values()) {
    count('wet-electrics', mixed(inside, wet, electric));
    count('lithium-flammable', mixed(inside, lithium, burns));
    const mass = total(inside, ({ piece }) => piece.grams) + (inside[0]?.bag?.grams ?? 0);
    count('bag-too-heavy', mass > LIFT ? 1 : 0);
  }
  for (const inside of grouped(lain, ({ bag, pocket }) => bag && `${bag.id} / ${pocket?.id ?? ''}`).values())
    count('sharp-electrics', mixed(inside, sharp, electric));
  count('axle-over', axlesOver(problem, looked));
  for (const word of new Set(problem.pieces.flatMap((piece) => piece.groups))) {
    const members = lain.filter(({ piece }) => piece.groups.includes(word) && couldBeBagged(problem, piece));
    const parts = new Set(members.map(({ bag, berth }) => (bag === null ? `floor of ${berth.id}` : bag.id)));
    count('set-apart', Math.max(0, parts.size - 1));
  }
  const sum = (rules: readonly string[]): number =>
    rules.reduce((all, rule) => all + (counts.get(rule) ?? 0), 0);
  const floor = Math.min(0, ...problem.berths.map(({ z }) => z));
  return {
    broken: new Map([...counts].filter(([, n]) => n > 0)),
    levels: {
      unplaced: left.length,
      danger: sum(DANGERS),
      order: sum(ORDERS),
      reach: total(lain, (it) => it.piece.uses * seconds(it)),
      moved: lain.filter((it) => !stays(it)).length,
      height: total(lain, ({ piece, berth }) => piece.grams * (berth.z - floor)),
      behind: total(lain, ({ piece, berth }) => piece.grams * Math.max(0, berth.x - problem.rearAxle)),
    },
  };
}

/** A thing whose bag the record names lies in that bag, and in the pocket it names. */
function stays({ piece: { now }, bag, pocket }: Lain): boolean {
  if (now === undefined) return true;
  return bag?.id === now.bag && (now.pocket === null || pocket?.id === now.pocket);
}

/** The table of seconds in docs/model.md. */
function seconds({ bag, pocket, berth }: Lain): number {
  const walk = berth.atHand ? 5 : berth.roof ? 180 : 60;
  if (bag === null) return walk + 20;
  const inside = pocket === null ? 15 : 3;
  if (bag.firstGrab) return 5 + inside;
  const open = bag.kind === 'roll' ? 15 : bag.kind === 'pouch' ? 10 : 20;
  return walk + open + inside;
}

/** Some bag that may take it has a place it goes into. */
function couldBeBagged(problem: StowProblem, piece: StowPiece): boolean {
  if (piece.byHand?.kind === 'bag') return true;
  if (piece.wheel === true) return false;
  const berth = piece.byHand?.berth;
  return problem.bags.some((bag) => {
    const reachable = berth === undefined ? rides(problem, bag) : bag.fixedIn === berth;
    return reachable && [null, ...bag.pockets].some((pocket) => goesInto(piece, bag, pocket));
  });
}

/** Whether there is a berth for a bag other than the spare wheel's own. */
function rides(problem: StowProblem, bag: StowProblem['bags'][number]): boolean {
  const kept = (id: string): boolean => problem.berths.some((b) => b.id === id && b.wheelOnly);
  if (bag.fixedIn !== null && problem.berths.some(({ id }) => id === bag.fixedIn)) return !kept(bag.fixedIn);
  return problem.berths.some((b) => !kept(b.id) && ((!b.roof && !b.seat) || b.id === bag.berth));
}

function axlesOver(problem: StowProblem, { lain, berthOf }: LookedUp): number {
  const mass = new Map<string, number>();
  for (const { piece, berth } of lain) mass.set(berth.id, (mass.get(berth.id) ?? 0) + piece.grams);
  const used = new Set(lain.map(({ bag }) => bag?.id));
  for (const bag of problem.bags) {
    const berth = berthOf.get(bag.id);
    if (berth !== undefined && used.has(bag.id)) mass.set(berth.id, (mass.get(berth.id) ?? 0) + bag.grams);
  }
  return problem.loads.filter((row) => {
    const load = [...mass].reduce((sum, [id, grams]) => sum + grams * (row.factor[id] ?? 0), 0);
    return load - row.grams > 0.01;
  }).length;
}
