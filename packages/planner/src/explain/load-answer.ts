import { loadOf } from '@waymend/core/loading/load';
import type { LoadLine, LoadResult } from '@waymend/core/loading/load';
import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { LoadAnswer, Margin } from '../answer/plan-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import { loadInput } from '../scene/load.ts';
import type { Trade } from '../trade.ts';

/** Axle, gross, roof, tyre and berth loads with these pieces aboard (M13). */
export function loadAnswer(
  built: BuiltScene,
  trade: Trade,
  pieces: readonly Pick<ScenePiece, 'id' | 'grams' | 'berth'>[],
): Result<LoadAnswer> {
  const load = loadOf(loadInput(built.garage, built.trip, built.vehicle, pieces, trade.loadIndex));
  return load.ok ? ok(asLoadAnswer(load.value)) : load;
}

/** Loads as an answer says them, to the gram. */
export function asLoadAnswer(load: LoadResult): LoadAnswer {
  const { tyresFront, tyresRear } = load;
  return {
    front: margin(load.front),
    rear: margin(load.rear),
    gross: margin(load.gross),
    roof: load.roof.limitKg === null && load.roof.kg === 0 ? null : margin(load.roof),
    tyres:
      tyresFront === null || tyresRear === null
        ? null
        : { front: margin(tyresFront), rear: margin(tyresRear) },
    berths: load.berths.map((b) => ({ id: b.id, name: b.name, ...margin(b) })),
  };
}

/** Grams are the finest anything here is weighed to. */
function margin(line: LoadLine): Margin {
  const round = (kg: number | null) => (kg === null ? null : Math.round(kg * 1000) / 1000);
  return { kg: round(line.kg) ?? 0, limitKg: round(line.limitKg), marginKg: round(line.marginKg) };
}

/** The limits a load breaks, in words. */
export function brokenLimits(load: LoadAnswer): readonly string[] {
  const out: string[] = [];
  const say = (name: string, m: Margin | null) => {
    if (m?.marginKg !== null && m?.marginKg !== undefined && m.marginKg < 0)
      out.push(`${name} ${Math.ceil(-m.marginKg)} kg over its limit`);
  };
  say('front axle', load.front);
  say('rear axle', load.rear);
  say('gross mass', load.gross);
  say('roof', load.roof);
  say('front tyres', load.tyres?.front ?? null);
  say('rear tyres', load.tyres?.rear ?? null);
  for (const b of load.berths) say(b.name, b);
  return out;
}
