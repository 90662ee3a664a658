import { loadOf } from '@waymend/core/loading/load';
import type { LoadIndexRow } from '@waymend/core/loading/load-input';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import type { LoadAnswer, Margin } from '../answer/plan-answer.ts';
import { asLoadAnswer } from '../explain/load-answer.ts';
import { loadInput } from '../scene/load.ts';
import type { Aboard, KitLine } from './aboard.ts';
import { aboard, kitLoads } from './aboard.ts';

/** A place where mass acts: a berth of the record, or a distance that something has of its own. */
export interface LoadSpot {
  /** Berth id; for the others an id of their own. */
  readonly id: string;
  readonly name: string;
  readonly berth: boolean;
  readonly xMm: number;
  readonly roof: boolean;
  readonly kg: number;
  readonly limitKg: number | null;
  readonly marginKg: number | null;
  readonly assumed: boolean;
  readonly aboard: readonly Aboard[];
}

/** What sets the limit: the least room left on axles, tyres, roof and gross, or in a berth that is over. */
export interface Tightest {
  readonly of: 'front' | 'rear' | 'gross' | 'roof' | 'tyres-front' | 'tyres-rear' | 'berth';
  /** Name of the berth, when it is one. */
  readonly name: string | null;
  readonly marginKg: number;
}

/** The side view: where every mass of a trip acts, what it puts on the axles, and which limit comes first (M13). */
export interface LoadView {
  readonly vehicle: string;
  readonly name: string;
  readonly pattern: string | null;
  readonly wheelbaseMm: number;
  readonly emptyFrontKg: number;
  readonly emptyRearKg: number;
  readonly weighed: boolean;
  /** Kilograms as the plan's own answer says them, to the gram. */
  readonly load: LoadAnswer;
  readonly spots: readonly LoadSpot[];
  /** The centre of everything, behind the front axle. */
  readonly centreMm: number;
  readonly tightest: Tightest | null;
  /** The limit that moving things can help: the tightest, or where that is the gross mass the tighter axle. */
  readonly helped: Tightest | null;
  readonly kitBerth: string | null;
}

/** Looks at one trip with this kit aboard; refuses a trip or vehicle that is not there, and what the load rules refuse. */
export function loadView(
  garage: Garage,
  tripId: string,
  kit: readonly KitLine[],
  loadIndex: readonly LoadIndexRow[],
): Result<LoadView> {
  const trip = Object.hasOwn(garage.trips, tripId) ? garage.trips[tripId] : undefined;
  if (trip === undefined) return refuse('trip-unknown', `There is no trip "${tripId}"`, { path: 'trips' });
  const vehicle = garage.vehicles[trip.vehicle];
  if (vehicle === undefined)
    return refuse('vehicle-unknown', `The trip names the vehicle "${trip.vehicle}", which is not there`, {
      path: `trips.${tripId}.vehicle`,
    });
  const input = loadInput(garage, trip, vehicle, [], loadIndex);
  const loaded = { ...input, kit: kitLoads(garage, kit) };
  const load = loadOf(loaded);
  if (!load.ok) return load;
  const things = aboard(garage, loaded, kit);
  if (!things.ok) return things;
  const answer = asLoadAnswer(load.value);
  const rear = answer.rear.kg;
  const gross = answer.gross.kg;
  return ok({
    vehicle: trip.vehicle,
    name: vehicle.name,
    pattern: vehicle.pattern ?? null,
    wheelbaseMm: vehicle.wheelbaseMm,
    emptyFrontKg: vehicle.emptyFrontKg,
    emptyRearKg: vehicle.emptyRearKg,
    weighed: vehicle.weighed,
    load: answer,
    spots: spotsOf(garage, trip.vehicle, answer, things.value),
    centreMm: gross > 0 ? Math.round((rear / gross) * vehicle.wheelbaseMm) : 0,
    tightest: tightestOf(answer),
    helped: helpedOf(answer),
    kitBerth: trip.kitBerth ?? null,
  });
}

function spotsOf(
  garage: Garage,
  vehicleId: string,
  answer: LoadAnswer,
  things: readonly Aboard[],
): readonly LoadSpot[] {
  const margins = new Map(answer.berths.map((b) => [b.id, b]));
  const berths = Object.entries(garage.berths).flatMap(([id, berth]): LoadSpot[] => {
    const margin = margins.get(id);
    if (berth.vehicle !== vehicleId || margin === undefined) return [];
    const { name, xMm, roof } = berth;
    const inside = things.filter((t) => t.berth === id);
    return [{ id, name, berth: true, xMm, roof, ...numbers(margin), assumed: false, aboard: inside }];
  });
  const loose = new Map<number, Aboard[]>();
  for (const thing of things)
    if (thing.berth === null) loose.set(thing.xMm, [...(loose.get(thing.xMm) ?? []), thing]);
  const others = [...loose].map(
    ([xMm, inside]): LoadSpot => ({
      id: `at ${xMm}`,
      name: inside.every((t) => t.kind === 'kit') ? 'kit' : inside.map((t) => t.name).join(', '),
      berth: false,
      xMm,
      roof: false,
      kg: toGrams(inside.reduce((sum, t) => sum + t.kg, 0)),
      limitKg: null,
      marginKg: null,
      assumed: inside.some((t) => t.assumed),
      aboard: inside,
    }),
  );
  return [...berths, ...others].sort((a, b) => a.xMm - b.xMm || (a.id < b.id ? -1 : 1));
}

/** The first limit that is over, else the one with the least room; a berth only counts when it is over. */
export function tightestOf(load: LoadAnswer): Tightest | null {
  const lines: Tightest[] = [];
  const add = (of: Tightest['of'], margin: Margin | null, name: string | null = null) => {
    if (margin?.marginKg !== null && margin?.marginKg !== undefined)
      lines.push({ of, name, marginKg: margin.marginKg });
  };
  add('front', load.front);
  add('rear', load.rear);
  add('gross', load.gross);
  add('tyres-front', load.tyres?.front ?? null);
  add('tyres-rear', load.tyres?.rear ?? null);
  if ((load.roof?.marginKg ?? 0) < 0) add('roof', load.roof);
  for (const berth of load.berths) if ((berth.marginKg ?? 0) < 0) add('berth', berth, berth.name);
  return lines.reduce<Tightest | null>(
    (least, line) => (least === null || line.marginKg < least.marginKg ? line : least),
    null,
  );
}

function helpedOf(load: LoadAnswer): Tightest | null {
  return tightestOf({ ...load, gross: { ...load.gross, marginKg: null } });
}

function numbers({ kg, limitKg, marginKg }: Margin): Margin {
  return { kg, limitKg, marginKg };
}

function toGrams(kg: number): number {
  return Math.round(kg * 1000) / 1000;
}
