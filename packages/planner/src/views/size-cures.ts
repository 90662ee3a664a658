import { waysOf } from '@waymend/core/repairing/ways-of';
import type { Grade, Scene } from '@waymend/core/repairing/scene';
import { grams } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { buildScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { CarriedLine } from './carried.ts';
import { carriedPieces } from './carried.ts';

/** How a place that nothing aboard undoes could be undone: what to bring from home, or to buy, over what comes along. */
export interface SizeCure {
  readonly joint: string;
  readonly kind: 'bring' | 'buy';
  readonly grade: Grade;
  readonly items: readonly { readonly id: string; readonly name: string; readonly owned: boolean }[];
  /** What comes to the kit, whole grams; and what it costs, whole cents, null where a piece is not sold singly. */
  readonly grams: number;
  readonly cents: number | null;
}

/** How many ways are looked through for the ones that cost nothing, or little. */
const LOOKED_AT = 12;

/**
 * The cheapest way to undo each of these joints, from home where that is possible, and the cheapest bought one where home
 * has none or only a worse grade (M2, M10). Pieces that come along anyway add no mass. Refuses what the scene refuses.
 */
export function sizeCures(
  garage: Garage,
  tripId: string,
  kit: readonly CarriedLine[],
  joints: readonly string[],
  trade: Trade,
): Result<readonly SizeCure[]> {
  const built = buildScene(garage, tripId, trade);
  if (!built.ok) return built;
  const { scene } = built.value;
  const carried = carriedPieces(scene.pieces, kit);
  // What is marked never, or stands there only for when it has been put right, is no cure.
  const table = scene.pieces.filter((p) => p.pin !== 'never' || carried.has(p.id));
  const lighter: Scene = {
    ...scene,
    pieces: table.map((p) => (carried.has(p.id) ? { ...p, owned: true, grams: grams(0) } : p)),
  };
  const home: Scene = { ...lighter, pieces: lighter.pieces.filter((p) => p.owned) };
  return ok(
    joints.flatMap((joint): SizeCure[] => {
      if (!scene.joints.some(({ id }) => id === joint)) return [];
      const brought = best(home, joint, carried);
      const bought = brought?.grade === 'proper' ? null : best(lighter, joint, carried);
      return [brought, bought]
        .filter((cure) => cure !== null)
        .filter((c, n, all) => n === 0 || isOther(c, all[0]));
    }),
  );
}

function isOther(cure: SizeCure, first: SizeCure | undefined): boolean {
  const ids = (c: SizeCure | undefined) => c?.items.map(({ id }) => id).join();
  return ids(cure) !== ids(first);
}

/** The best grade's cheapest way, without what comes along. */
function best(scene: Scene, joint: string, carried: ReadonlySet<string>): SizeCure | null {
  const ways = waysOf(scene, { kind: 'turn', joint }, LOOKED_AT);
  const way = GRADE_ORDER.flatMap((grade) => ways.filter((w) => w.grade === grade))[0];
  if (way === undefined) return null;
  const pieces = new Map(scene.pieces.map((p) => [p.id, p]));
  const items = way.pieces.flatMap((id) => {
    const piece = pieces.get(id);
    return piece === undefined || carried.has(id) ? [] : [{ id, name: piece.name, owned: piece.owned }];
  });
  return {
    joint,
    kind: items.every(({ owned }) => owned) ? 'bring' : 'buy',
    grade: way.grade,
    items,
    grams: way.grams,
    cents: way.cents,
  };
}

const GRADE_ORDER: readonly Grade[] = ['proper', 'with-care', 'last-resort'];
