import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { SceneBundle, ScenePiece } from '@waymend/core/repairing/scene';
import { grams, millilitres } from '@waymend/core/quantity/units';
import { measuresFrom } from '@waymend/core/stowing/piece-measures';
import type { StowMark, StowPiece } from '@waymend/core/stowing/stow-problem';
import { USES_UNIT } from '@waymend/core/stowing/stow-rules';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import { formOf, heapOf, isWantedAtOnce, stowMarks } from './stow-marks.ts';
import { usesOf } from './uses.ts';

/** What comes along: piece ids, and ids of the sets carried whole. */
export interface KitToStow {
  readonly carried: readonly string[];
  readonly wholeSets: readonly string[];
}

/** From this many expected uses a trip on, a thing is wanted in the first fifteen minutes, unless it is heavy (estimates). */
const OFTEN = 0.05 / USES_UNIT;
const GRAB_GRAMS = 2_000;
/** Heavier things are no part of a sorted heap (estimate). */
const SORTED_GRAMS = 3_000;
/** Catalogue id of a mounted spare wheel. */
export const SPARE_WHEEL = 'P-WHEEL';

/** The pieces of a kit as the stowing rules want them; a set carried whole is one piece. */
export function stowPieces(built: BuiltScene, kit: KitToStow, trade: Trade): readonly StowPiece[] {
  const { scene, garage } = built;
  const carried = new Set(kit.carried);
  const catalogue = new Map(trade.belongings.map((b) => [b.id, b]));
  const uses = usesOf(scene, carried);
  const whole = new Map(
    scene.bundles.flatMap((b) => (kit.wholeSets.includes(b.id) ? [[b.id, b] as const] : [])),
  );
  const boxed = new Map<string, ScenePiece[]>();
  const out: StowPiece[] = [];
  for (const piece of scene.pieces) {
    if (!carried.has(piece.id)) continue;
    const set = piece.bundles.find((id) => whole.get(id)?.carry === 'whole');
    if (set !== undefined) {
      boxed.set(set, [...(boxed.get(set) ?? []), piece]);
      continue;
    }
    const belonging = Object.hasOwn(garage.belongings, piece.belonging)
      ? garage.belongings[piece.belonging]
      : undefined;
    const entry = entryOf(piece, belonging?.is, catalogue);
    const length = belonging?.lengthMm ?? entry?.lengthMm ?? Math.cbrt(piece.millilitres * 1000);
    const often = uses.often.get(piece.id) ?? 0;
    const place = placeOf(built, piece.belonging);
    const job = uses.onlyFor.get(piece.id);
    const firstGrab = piece.grams <= GRAB_GRAMS && (often >= OFTEN || isWantedAtOnce(entry));
    // What goes into the first-grab pouch, and what no roll or pouch is made for, is not sorted.
    const heap = firstGrab || piece.grams > SORTED_GRAMS ? null : heapOf(entry);
    out.push({
      id: piece.id,
      name: piece.name,
      grams: grams(Math.max(1, piece.grams)),
      millilitres: piece.millilitres,
      size: measuresFrom(Math.round(length), piece.millilitres, formOf(entry, length, piece.millilitres)),
      marks: stowMarks(entry),
      uses: often,
      firstGrab,
      groups: [
        ...(heap === null ? [] : [`heap ${heap}`]),
        ...(job === undefined || heap !== null || firstGrab ? [] : [`job ${job}`]),
        ...((belonging?.copies ?? 1) > 1 ? [`copies ${piece.belonging}`] : []),
      ],
      ...place,
      ...(entry?.id === SPARE_WHEEL ? { wheel: true as const } : {}),
    });
  }
  for (const [id, inside] of boxed) {
    const set = whole.get(id);
    if (set !== undefined) out.push(wholeSet(built, set, inside, catalogue, uses.often));
  }
  return out;
}

function entryOf(
  piece: ScenePiece,
  is: string | undefined,
  catalogue: ReadonlyMap<string, CatalogueBelonging>,
): CatalogueBelonging | undefined {
  if (is !== undefined) return catalogue.get(is);
  const bought = /^(?:buy:|set:[^/]*\/)([^#]+)/.exec(piece.id)?.[1];
  return bought === undefined ? undefined : catalogue.get(bought);
}

function wholeSet(
  built: BuiltScene,
  set: SceneBundle,
  inside: readonly ScenePiece[],
  catalogue: ReadonlyMap<string, CatalogueBelonging>,
  often: ReadonlyMap<string, number>,
): StowPiece {
  const { garage } = built;
  const sum = (of: (p: ScenePiece) => number): number => inside.reduce((whole, p) => whole + of(p), 0);
  const box = garage.belongings[set.id];
  const bulk = Math.max(
    set.caseMillilitres,
    sum((p) => p.millilitres),
  );
  const marks = new Set<StowMark>(
    inside.flatMap((p) => stowMarks(entryOf(p, garage.belongings[p.belonging]?.is, catalogue))),
  );
  return {
    id: set.id,
    name: box?.name ?? set.id,
    grams: grams(Math.max(1, set.caseGrams + sum((p) => p.grams))),
    millilitres: millilitres(bulk),
    // A case is about twice as long as it is high and broad together (estimate) where nobody has measured it.
    size: measuresFrom(Math.round(box?.lengthMm ?? Math.cbrt(bulk * 4000)), bulk, 'long'),
    marks: [...marks],
    uses: sum((p) => often.get(p.id) ?? 0),
    firstGrab: false,
    groups: [],
    ...placeOf(built, set.id),
  };
}

/**
 * Where the record says it is. In a bag that is aboard: put there by hand where it is fixed, else it lies there now. Without
 * one, in a berth of this vehicle: by hand.
 */
function placeOf({ garage, trip }: BuiltScene, id: string): Pick<StowPiece, 'byHand' | 'now'> {
  const belonging = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (belonging === undefined) return {};
  const { inside } = belonging;
  const pocket = belonging.pocket === undefined ? undefined : garage.pockets[belonging.pocket];
  const bag = belonging.bag ?? pocket?.bag;
  if (bag !== undefined && isAboard(garage, trip.vehicle, bag)) {
    const at = { bag, pocket: pocket?.bag === bag ? (belonging.pocket ?? null) : null };
    return belonging.fixed === true ? { byHand: { kind: 'bag', ...at } } : { now: at };
  }
  const berth = belonging.berth ?? (inside === undefined ? undefined : garage.belongings[inside]?.berth);
  if (berth === undefined || garage.berths[berth]?.vehicle !== trip.vehicle) return {};
  return { byHand: { kind: 'berth', berth } };
}

/** A bag without a berth may come on any vehicle; one with a berth is where that is. */
export function isAboard(garage: BuiltScene['garage'], vehicle: string, bag: string): boolean {
  const record = garage.bags[bag];
  if (record === undefined) return false;
  return record.berth === undefined || garage.berths[record.berth]?.vehicle === vehicle;
}
