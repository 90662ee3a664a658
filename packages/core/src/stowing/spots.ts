import type { BagKind, StowBag, StowPiece, StowPocket, StowProblem } from './stow-problem.ts';
import { SOFT_GRAMS, STANDS_OUT } from './stow-rules.ts';

/** A place that takes pieces: a pocket, the room of a bag, or the floor of a berth. Indices into the problem; -1: none. */
export interface Spot {
  readonly bag: number;
  readonly pocket: number;
  /** Of loose places only: a bag may go from berth to berth. */
  readonly berth: number;
  /** What it holds side by side, in what `takes` counts; Infinity where nothing is known. */
  readonly room: number;
  /** Half girths in a cloth pocket (mm), room elsewhere (ml). */
  readonly takes: 'girth' | 'room';
  readonly limit: number;
}

/** Every place there is: pockets and rooms bag by bag, then the floors of the berths. */
export function spotsOf(problem: StowProblem): readonly Spot[] {
  const spots: Spot[] = [];
  for (const [b, bag] of problem.bags.entries()) {
    for (const [p, pocket] of bag.pockets.entries()) {
      spots.push({
        bag: b,
        pocket: p,
        berth: -1,
        room: pocket.depth === null ? pocket.width : pocketMillilitres(pocket),
        takes: pocket.depth === null ? 'girth' : 'room',
        limit: pocket.limit ?? Infinity,
      });
    }
    if (hasRoom(bag))
      spots.push({ bag: b, pocket: -1, berth: -1, room: Infinity, takes: 'room', limit: Infinity });
  }
  for (const h of problem.berths.keys())
    spots.push({ bag: -1, pocket: -1, berth: h, room: Infinity, takes: 'room', limit: Infinity });
  return spots;
}

/** A roll with slots holds things in its slots only; everything else has room beside its pockets. */
export function hasRoom(bag: StowBag): boolean {
  return bag.kind !== 'roll' || bag.pockets.length === 0;
}

function pocketMillilitres({ width, length, depth }: StowPocket): number {
  return Math.floor((width * length * (depth ?? 0)) / 1000);
}

/** What a bag holds, ml: as stated, else its inside measures; Infinity where neither is known. */
export function bagMillilitres(bag: StowBag): number {
  if (bag.millilitres !== null) return bag.millilitres;
  const { length, width, height } = bag;
  if (length === null || width === null || height === null) return Infinity;
  return Math.floor((length * width * height) / 1000);
}

const SOFT: ReadonlySet<BagKind> = new Set(['roll', 'pouch']);
const RIGID: ReadonlySet<BagKind> = new Set(['box', 'case']);

/** Takes its whole room in a berth, however little is in it. */
export function isRigid(bag: StowBag): boolean {
  return RIGID.has(bag.kind) && Number.isFinite(bagMillilitres(bag));
}

/** Flat width that a piece takes of a cloth pocket: half its girth. */
export function halfGirth({ size }: StowPiece): number {
  return size.width + size.thickness;
}

/** What a piece takes of a place, in what the place counts. */
export function takes(piece: StowPiece, spot: Spot): number {
  return spot.takes === 'girth' ? halfGirth(piece) : piece.millilitres;
}

/** Whether a piece goes into a place that is otherwise empty: length and form, its mass and room (M14). */
export function fits(problem: StowProblem, piece: StowPiece, spot: Spot): boolean {
  if (spot.bag < 0) return fitsBerth(problem, piece, spot);
  const bag = problem.bags[spot.bag];
  if (bag === undefined) return false;
  if (SOFT.has(bag.kind) && piece.grams > SOFT_GRAMS) return false;
  if (piece.grams > (bag.limit ?? Infinity) || piece.grams > spot.limit) return false;
  if (piece.millilitres > bagMillilitres(bag) || takes(piece, spot) > spot.room) return false;
  const pocket = bag.pockets[spot.pocket];
  if (pocket !== undefined) return fitsPocket(piece, pocket);
  return fitsInside(piece, [bag.length, bag.width, bag.height]);
}

function fitsBerth(problem: StowProblem, piece: StowPiece, spot: Spot): boolean {
  const berth = problem.berths[spot.berth];
  if (berth === undefined) return false;
  return piece.grams <= (berth.room ?? Infinity) && piece.millilitres <= (berth.millilitres ?? Infinity);
}

function fitsPocket(piece: StowPiece, pocket: StowPocket): boolean {
  const length = pocket.openEnded ? Math.floor(pocket.length * STANDS_OUT) : pocket.length;
  // Cloth: length alone is left to ask, its girth has been looked at.
  if (pocket.depth === null) return piece.size.length <= length;
  return fitsInside(piece, [length, pocket.width, pocket.depth]);
}

/** Longest side along the longest; a side that nobody has measured sets no limit. */
function fitsInside({ size }: StowPiece, inside: readonly (number | null)[]): boolean {
  const sides = inside.map((mm) => mm ?? Infinity).sort((a, b) => b - a);
  return size.length <= (sides[0] ?? 0) && size.width <= (sides[1] ?? 0) && size.thickness <= (sides[2] ?? 0);
}
