import { bagMillilitres, spotsOf, takes } from '@waymend/core/stowing/spots';
import { USES_UNIT } from '@waymend/core/stowing/stow-rules';
import { gramsByBerth } from '@waymend/core/stowing/broken';
import type {
  StowBag,
  StowPiece,
  StowPocket,
  StowProblem,
  Stowage,
} from '@waymend/core/stowing/stow-problem';
import type { StowAnswer, StowedBag, StowedBerth, StowedItem, StowedPocket } from '../answer/stow-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import { PROPOSED } from './stow-bags.ts';

/** The bags that come, with everything in them, in the order of their berths from front to back. */
export function bagsAnswer(built: BuiltScene, problem: StowProblem, stowage: Stowage): readonly StowedBag[] {
  const berths = new Map(problem.berths.map((berth) => [berth.id, berth]));
  const list = stowage.bags.flatMap(({ bag: id, berth: at }): StowedBag[] => {
    const bag = problem.bags.find((b) => b.id === id);
    const berth = berths.get(at);
    if (bag === undefined || berth === undefined) return [];
    const inside = piecesIn(problem, stowage, (place) => place.bag === id);
    const room = bagMillilitres(bag);
    const { length, width, height } = bag;
    return [
      {
        id,
        name: bag.name,
        kind: bag.kind,
        berth: at,
        berthName: berth.name,
        moved: bag.berth !== null && bag.berth !== at,
        proposed: id.startsWith(PROPOSED),
        firstGrab: bag.firstGrab,
        spillproof: bag.spillproof,
        lengthMm: length,
        widthMm: width,
        heightMm: height,
        grams: bag.grams + inside.reduce((sum, piece) => sum + piece.grams, 0),
        limitGrams: bag.limit === null ? null : bag.limit + bag.grams,
        usedMl: inside.reduce((sum, piece) => sum + piece.millilitres, 0),
        roomMl: Number.isFinite(room) ? room : null,
        pockets: bag.pockets.map((pocket) => pocketAnswer(built, problem, stowage, bag, pocket)),
        items: piecesIn(problem, stowage, (place) => place.bag === id && place.pocket === null).map((piece) =>
          item(built, piece, bag, null),
        ),
      },
    ];
  });
  const x = (bag: StowedBag): number => berths.get(bag.berth)?.x ?? 0;
  return list.sort(
    (a, b) => x(a) - x(b) || Number(b.firstGrab) - Number(a.firstGrab) || (a.name < b.name ? -1 : 1),
  );
}

function pocketAnswer(
  built: BuiltScene,
  problem: StowProblem,
  stowage: Stowage,
  bag: StowBag,
  pocket: StowPocket,
): StowedPocket {
  const inside = piecesIn(problem, stowage, (place) => place.bag === bag.id && place.pocket === pocket.id);
  const spot = spotsOf(problem).find((s) => problem.bags[s.bag] === bag && bag.pockets[s.pocket] === pocket);
  return {
    id: pocket.id,
    name: pocket.name,
    widthMm: pocket.width,
    lengthMm: pocket.length,
    depthMm: pocket.depth,
    takes: pocket.depth === null ? 'mm' : 'ml',
    used: spot === undefined ? 0 : inside.reduce((sum, piece) => sum + takes(piece, spot), 0),
    room: spot?.room ?? 0,
    items: inside.map((piece) => item(built, piece, bag, pocket)),
  };
}

/** Every berth with what rides in it, front to back. */
export function berthsAnswer(problem: StowProblem, stowage: Stowage): readonly StowedBerth[] {
  const mass = gramsByBerth(problem, stowage);
  return [...problem.berths]
    .sort((a, b) => a.x - b.x || (a.id < b.id ? -1 : 1))
    .map((berth) => ({
      id: berth.id,
      name: berth.name,
      atHand: berth.atHand,
      grams: mass.get(berth.id) ?? 0,
      limitGrams: berth.room,
      bags: stowage.bags.flatMap((at) => (at.berth === berth.id ? [at.bag] : [])),
      loose: piecesIn(problem, stowage, (place) => place.berth === berth.id && place.bag === null).map(
        (piece) => item(null, piece, null, null),
      ),
    }));
}

/** Bags that nothing was put in. */
export function emptyBags(problem: StowProblem, stowage: Stowage): StowAnswer['emptyBags'] {
  const used = new Set(stowage.bags.map(({ bag }) => bag));
  return problem.bags.flatMap(({ id, name }) => (used.has(id) ? [] : [{ id, name }]));
}

/** Pieces without a place, and why nothing takes them. */
export function unplaced(problem: StowProblem, stowage: Stowage): StowAnswer['unplaced'] {
  return piecesIn(problem, stowage, (place) => place.berth === null).map(({ id, name }) => ({
    id,
    name,
    why: 'no bag that it fits and no berth that may carry it has room or mass left',
  }));
}

function piecesIn(
  problem: StowProblem,
  stowage: Stowage,
  here: (place: Stowage['places'][number]) => boolean,
): readonly StowPiece[] {
  const there = new Set(stowage.places.filter(here).map(({ piece }) => piece));
  return problem.pieces.filter(({ id }) => there.has(id));
}

function item(
  built: BuiltScene | null,
  piece: StowPiece,
  bag: StowBag | null,
  pocket: StowPocket | null,
): StowedItem {
  const { now = null } = piece;
  const stays = now?.bag === bag?.id && (now?.pocket == null || now.pocket === pocket?.id);
  const { length, width, thickness } = piece.size;
  return {
    id: piece.id,
    belonging:
      built?.scene.pieces.find(({ id }) => id === piece.id)?.belonging ?? piece.id.replace(/#\d+$/, ''),
    name: piece.name,
    grams: piece.grams,
    lengthMm: length,
    widthMm: width,
    thicknessMm: thickness,
    uses: piece.uses * USES_UNIT,
    firstGrab: piece.firstGrab,
    byHand: piece.byHand !== undefined,
    cameFrom: stays ? null : now,
    standsOutMm: pocket?.openEnded === true ? Math.max(0, length - pocket.length) : 0,
  };
}
