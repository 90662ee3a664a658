import type { KitLoad, LoadInput } from '@waymend/core/loading/load-input';
import type { Spot } from '@waymend/core/loading/place-of';
import { spotOfFixed, spotOfKit } from '@waymend/core/loading/place-of';
import { grams, inMillimetres } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { berthOf } from '../scene/pieces.ts';

/** One line of a kit, as an answer lists it. */
export interface KitLine {
  readonly id: string;
  readonly name: string;
  /** All its copies that come. */
  readonly grams: number;
}

/** Something that rides on a trip, and where. */
export interface Aboard {
  readonly kind: 'person' | 'load' | 'kit';
  readonly id: string;
  readonly name: string;
  readonly kg: number;
  /** Berth id; null when it rides at a distance of its own, or nobody has said where. */
  readonly berth: string | null;
  /** Behind the front axle. */
  readonly xMm: number;
  /** Nobody has said where it rides: its place is the usual one. */
  readonly assumed: boolean;
  /** It rides wherever the kit of the trip rides. */
  readonly withKit: boolean;
  /** Its place can be changed in the record: not fuel in its tank, nor the nose of a trailer. */
  readonly movable: boolean;
}

/** The kit of an answer as the load rules want it, each line in the berth the record now says, with the boxes carried whole. */
export function kitLoads(garage: Garage, kit: readonly KitLine[]): readonly KitLoad[] {
  const cases = new Set<string>();
  for (const { id } of kit) {
    const box = garage.belongings[id]?.inside;
    if (box !== undefined && garage.belongings[box]?.set?.carry === 'whole') cases.add(box);
  }
  return [
    ...kit.map((line) => ({
      id: line.id,
      grams: grams(Math.round(line.grams)),
      berth: berthOf(garage, line.id),
    })),
    ...[...cases].map((id) => ({
      id,
      grams: grams(Math.round(garage.belongings[id]?.set?.caseGrams ?? 0)),
      berth: null,
    })),
  ];
}

/** Everything that rides, in the order of the record: people, loads, kit. Refuses a berth that is not there. */
export function aboard(garage: Garage, input: LoadInput, kit: readonly KitLine[]): Result<readonly Aboard[]> {
  const out: Aboard[] = [];
  for (const load of input.fixed) {
    const spot = spotOfFixed(input, load);
    if (!spot.ok) return spot;
    const kind = load.kind === 'person' ? ('person' as const) : ('load' as const);
    const what = kind === 'load' ? garage.loads[load.id]?.kind : undefined;
    out.push({
      ...placed(load.id, load.name, load.mass, spot.value),
      kind,
      withKit: false,
      movable: kind === 'load' && what !== 'fuel' && what !== 'trailer-nose',
    });
  }
  const names = new Map(kit.map((line) => [line.id, line.name]));
  for (const piece of input.kit) {
    const spot = spotOfKit(input, piece.berth, `belongings.${piece.id}.berth`);
    if (!spot.ok) return spot;
    const name = names.get(piece.id) ?? garage.belongings[piece.id]?.name ?? piece.id;
    out.push({
      ...placed(piece.id, name, piece.grams / 1000, spot.value),
      kind: 'kit',
      withKit: piece.berth === null,
      movable: Object.hasOwn(garage.belongings, piece.id),
    });
  }
  return ok(out);
}

function placed(
  id: string,
  name: string,
  kg: number,
  { x, berth, assumed }: Spot,
): Pick<Aboard, 'id' | 'name' | 'kg' | 'berth' | 'xMm' | 'assumed'> {
  // A load may name a berth and a distance of its own: then it stands in the berth's list, and acts at its distance.
  return { id, name, kg, berth: berth?.id ?? null, xMm: Math.round(inMillimetres(x)), assumed };
}
