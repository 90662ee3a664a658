import type { TypicalBag } from '@waymend/catalogue/bags/typical-bags';
import { ROOMY_BAG, TYPICAL_BAGS } from '@waymend/catalogue/bags/typical-bags';
import type { Grams, Millimetres } from '@waymend/core/quantity/units';
import { grams, inMillimetres, millilitres, wholeMillimetres } from '@waymend/core/quantity/units';
import type { LoadResult } from '@waymend/core/loading/load';
import type { LoadInput } from '@waymend/core/loading/load-input';
import { berthRoom } from '@waymend/core/loading/load-rows';
import { countBags } from '@waymend/core/stowing/count-bags';
import type { StowBag, StowBerth, StowPiece } from '@waymend/core/stowing/stow-problem';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { BuiltScene } from '../scene/build-scene.ts';
import { SPARE_WHEEL, isAboard } from './stow-pieces.ts';

/** Where things ride that have no berth, on a vehicle nobody has given any. */
export const NO_BERTH = 'where the kit rides';
/** A roof's floor above the load floor where nobody has measured it (estimate). */
const ROOF_MM = 1_000;

const mm = (n: number): Millimetres => wholeMillimetres(Math.round(n));
const orNull = <T>(n: number | undefined, as: (n: number) => T): T | null => (n === undefined ? null : as(n));
const inGrams = (kg: number): Grams => grams(Math.round(kg * 1000));

/** The berths of the vehicle with what room everything but the kit leaves. */
export function stowBerths(built: BuiltScene, input: LoadInput, bare: LoadResult): readonly StowBerth[] {
  const { garage, trip } = built;
  const room = new Map(berthRoom(bare).map((b) => [b.id, Math.max(0, b.grams)]));
  const seats = new Set(trip.people.flatMap((id) => garage.people[id]?.berth ?? []));
  const berths = Object.entries(garage.berths).flatMap(([id, berth]): StowBerth[] =>
    berth.vehicle !== trip.vehicle
      ? []
      : [
          {
            id,
            name: berth.name,
            x: mm(berth.xMm),
            z: mm(berth.zMm ?? (berth.roof ? ROOF_MM : 0)),
            roof: berth.roof,
            atHand: berth.atHand ?? seats.has(id),
            seat: seats.has(id),
            wheelOnly: isWheelOnly(built, id),
            room: orNull(room.get(id), grams),
            millilitres: orNull(berth.litres, (l) => millilitres(Math.round(l * 1000))),
          },
        ],
  );
  if (berths.some((berth) => !berth.roof && !berth.seat)) return berths;
  const behind = inMillimetres(input.wheelbase);
  return [
    ...berths,
    {
      id: NO_BERTH,
      name: NO_BERTH,
      x: mm(behind),
      z: mm(0),
      roof: false,
      atHand: false,
      seat: false,
      wheelOnly: false,
      room: null,
      millilitres: null,
    },
  ];
}

/** The spare wheel rides here, and by the record nothing else does. */
function isWheelOnly({ garage, trip }: BuiltScene, berth: string): boolean {
  const here = Object.values(garage.belongings).filter((b) => b.berth === berth && b.bag === undefined);
  if (here.length === 0 || here.some((b) => b.is !== SPARE_WHEEL)) return false;
  const others = [...Object.values(garage.loads), ...Object.values(garage.bags)];
  return trip.kitBerth !== berth && others.every((other) => other.berth !== berth);
}

/** The recorded bags that are aboard, with their pockets in order. */
export function stowBags({ garage, trip }: BuiltScene): readonly StowBag[] {
  return Object.entries(garage.bags).flatMap(([id, bag]): StowBag[] => {
    if (!isAboard(garage, trip.vehicle, id)) return [];
    const pockets = Object.entries(garage.pockets)
      .filter(([, pocket]) => pocket.bag === id)
      .sort(([a, p], [b, q]) => p.order - q.order || (a < b ? -1 : 1));
    return [
      {
        id,
        name: bag.name,
        kind: bag.kind ?? 'bag',
        grams: grams(Math.round(bag.grams)),
        length: orNull(bag.lengthMm, mm),
        width: orNull(bag.widthMm, mm),
        height: orNull(bag.heightMm, mm),
        millilitres: orNull(bag.litres, (l) => millilitres(Math.round(l * 1000))),
        limit: orNull(bag.limitKg, inGrams),
        firstGrab: bag.firstGrab ?? false,
        spillproof: bag.spillproof ?? false,
        fixedIn: bag.fixed === true ? (bag.berth ?? null) : null,
        berth: bag.berth ?? null,
        pockets: pockets.map(([pocketId, pocket]) => ({
          id: pocketId,
          name: pocket.name,
          width: mm(pocket.widthMm),
          length: mm(pocket.lengthMm),
          depth: orNull(pocket.depthMm, mm),
          openEnded: pocket.openEnded,
          limit: orNull(pocket.limitKg, inGrams),
        })),
      },
    ];
  });
}

/** The id of a bag that nobody owns yet. */
export const PROPOSED = 'proposed ';

/** Bags in general for an owner who has recorded none: one of each, and roomy ones for the litres that need them. */
export function proposedBags(
  pieces: readonly StowPiece[],
  berths: readonly StowBerth[],
  solver: Solver,
): readonly StowBag[] {
  const seat = berths.filter((berth) => berth.atHand).sort((a, b) => a.x - b.x)[0]?.id ?? null;
  return TYPICAL_BAGS.flatMap((bag) => {
    const copies = bag.id === ROOMY_BAG ? roomyBags(bag, pieces, solver) : 1;
    return Array.from({ length: copies }, (_, n) => proposed(bag, n, bag.firstGrab === true ? seat : null));
  });
}

/** How many roomy bags hold everything that one takes at all. */
function roomyBags(bag: TypicalBag, pieces: readonly StowPiece[], solver: Solver): number {
  const holds = Math.floor((bag.lengthMm * bag.widthMm * bag.heightMm) / 1000);
  const sizes = pieces.flatMap((piece) =>
    piece.wheel !== true && piece.millilitres <= holds && piece.size.length <= bag.lengthMm
      ? [piece.millilitres]
      : [],
  );
  return Math.max(1, countBags(sizes, holds, solver)?.count ?? 1);
}

function proposed(bag: TypicalBag, n: number, berth: string | null): StowBag {
  const id = `${PROPOSED}${bag.id}${n === 0 ? '' : ` ${n + 1}`}`;
  return {
    id,
    name: n === 0 ? bag.name : `${bag.name}, no ${n + 1}`,
    kind: bag.kind,
    grams: grams(bag.grams),
    length: mm(bag.lengthMm),
    width: mm(bag.widthMm),
    height: mm(bag.heightMm),
    millilitres: null,
    limit: inGrams(bag.limitKg),
    firstGrab: bag.firstGrab ?? false,
    spillproof: bag.spillproof ?? false,
    fixedIn: berth,
    berth,
    pockets: (bag.pockets ?? []).map((pocket, p) => ({
      id: `${id} ${p + 1}`,
      name: pocket.name,
      width: mm(pocket.widthMm),
      length: mm(pocket.lengthMm),
      depth: orNull(pocket.depthMm, mm),
      openEnded: pocket.openEnded ?? false,
      limit: null,
    })),
  };
}
