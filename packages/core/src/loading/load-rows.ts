import type { SceneLimits } from '../repairing/scene.ts';
import type { Metres } from '../quantity/units.ts';
import type { Result } from '../result.ts';
import { ok } from '../result.ts';
import { axleShare } from './axle-share.ts';
import type { LoadResult } from './load.ts';
import { loadOf } from './load.ts';
import type { LoadBerth, LoadInput } from './load-input.ts';
import { spotOfKit } from './place-of.ts';

/** One linear load row of the choosing problem: sum(carried grams x factor(berth)) <= grams. */
export type LoadRow = SceneLimits['loads'][number];

/**
 * The room that everything but the kit leaves on axles, tyres, gross and roof, as linear rows (M13). `input.kit` is not
 * looked at. A limit that is already passed gives a row with negative room, so that the clash names it. Rows without a
 * limit are left out. Room is rounded down to whole grams; factors to a millionth, a hundredth of what a tape measures.
 */
export function loadRowsOf(input: LoadInput): Result<readonly LoadRow[]> {
  const bare = loadOf({ ...input, kit: [] });
  if (!bare.ok) return bare;
  const elsewhere = spotOfKit(input, null, 'kitBerth');
  if (!elsewhere.ok) return elsewhere;
  const share = (axle: 'front' | 'rear') => (x: Metres) => axleShare(x, input.wheelbase)[axle];
  const rows: LoadRow[] = [];
  const add = (
    id: string,
    marginKg: number | null | undefined,
    factorAt: (x: Metres, b: LoadBerth | null) => number,
  ) => {
    if (marginKg === null || marginKg === undefined) return;
    rows.push({
      id,
      grams: Math.floor(marginKg * 1000 + 1e-6),
      factor: Object.fromEntries(input.berths.map((b) => [b.id, millionths(factorAt(b.x, b))])),
      elsewhere: millionths(factorAt(elsewhere.value.x, elsewhere.value.berth)),
    });
  };
  add('front', bare.value.front.marginKg, share('front'));
  add('rear', bare.value.rear.marginKg, share('rear'));
  add('tyres-front', bare.value.tyresFront?.marginKg, share('front'));
  add('tyres-rear', bare.value.tyresRear?.marginKg, share('rear'));
  add('gross', bare.value.gross.marginKg, () => 1);
  add('roof', bare.value.roof.marginKg, (_, b) => (b?.roof === true ? 1 : 0));
  return ok(rows);
}

/** Room left for the kit in each berth that has a limit, whole grams, for `SceneLimits.berths`. */
export function berthRoom(bare: LoadResult): readonly { readonly id: string; readonly grams: number }[] {
  return bare.berths.flatMap((b) =>
    b.marginKg === null ? [] : [{ id: b.id, grams: Math.floor(b.marginKg * 1000 + 1e-6) }],
  );
}

function millionths(n: number): number {
  return Math.round(n * 1e6) / 1e6;
}
