import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { answerOf } from '@waymend/planner/plan/answer';
import type { Question, Solved } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Trade } from '@waymend/planner/trade';
import type { Solver } from '@waymend/core/choosing/solver-port';

/** Parts of a garage file that a test cares about, each as the lines one would type. */
export interface GarageText {
  readonly fittings?: readonly string[];
  /** `id: { ... }`, or just a catalogue id for one of it. */
  readonly belongings?: readonly string[];
  /** Replaces the pickup's own lines where the key is the same. */
  readonly vehicle?: Readonly<Record<string, string>>;
  readonly people?: readonly string[];
  readonly berths?: readonly string[];
  readonly loads?: readonly string[];
  readonly legs?: readonly string[];
  /** Further lines of the trip. */
  readonly trip?: Readonly<Record<string, string>>;
}

const VEHICLE = {
  name: 'Pickup',
  pattern: 'frame-pickup-independent-front',
  wheelbaseMm: '3090',
  emptyFrontKg: '1120',
  emptyRearKg: '860',
  ratedFrontKg: '1450',
  ratedRearKg: '1850',
  ratedGrossKg: '3080',
};

/** A garage file with one pickup `rig`, two people of skill 4, and one trip `trip` of 800 km of corrugations. */
export function garageText(text: GarageText): string {
  const people = text.people ?? [
    'ada: { name: Ada, massKg: 80, skill: 4, berth: seats }',
    'ben: { name: Ben, massKg: 75, skill: 4, berth: seats }',
  ];
  const trip = {
    name: 'There and back',
    vehicle: 'rig',
    people: `[${people.map((line) => line.split(':')[0]).join(', ')}]`,
    days: '6',
    kitBerth: 'tray',
    ...text.trip,
  };
  const berths = text.berths ?? [
    'seats: { vehicle: rig, name: seats, xMm: 1450 }',
    'tray: { vehicle: rig, name: tray, xMm: 2800 }',
  ];
  const legs = text.legs ?? ['l1: { trip: trip, order: 1, km: 800, surface: corrugated, helpKm: 200 }'];
  const belongings = (text.belongings ?? []).map((line) => (line.includes(':') ? line : owned(line)));
  return [
    'waymend: 1',
    'name: Test',
    'vehicles:',
    '  rig:',
    ...Object.entries({ ...VEHICLE, ...text.vehicle }).map(([key, value]) => `    ${key}: ${value}`),
    ...section('people', people),
    ...section('berths', berths),
    ...section('loads', text.loads ?? []),
    ...section('fittings', text.fittings ?? []),
    ...section('belongings', belongings),
    'trips:',
    '  trip:',
    ...Object.entries(trip).map(([key, value]) => `    ${key}: ${value}`),
    ...section('legs', legs),
  ].join('\n');
}

/** The line of a belonging, under an id made of its catalogue id; `more` is what else the line says. */
export function owned(is: string, more = ''): string {
  return `${idOf(is)}: { is: "${is}"${more === '' ? '' : `, ${more}`} }`;
}

/** The id under which `owned` keeps a catalogue id. */
export function idOf(is: string): string {
  return is.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
}

function section(name: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${name}:`, ...lines.map((line) => `  ${line}`)];
}

/** The text through the real reader; a refusal is a failed test. */
export function garageOf(text: GarageText): Garage {
  const read = readGarage(garageText(text), 'test.yaml');
  if (!read.ok) throw new Error(read.error.map((e) => e.message).join('\n'));
  return read.value;
}

/** A solved trip, or the sentences why there is no plan. */
export type Planned = {
  readonly solved: Solved;
  readonly answer: PlanAnswer;
  readonly kit: readonly string[];
};

/** Plans trip `trip` to the end; no plan or a refusal is a failed test. `kit` lists catalogue or belonging ids, sorted. */
export function planned(
  garage: Garage,
  question: Question,
  solver: Solver,
  trade: Trade = SHIPPED_TRADE,
): Planned {
  const prepared = prepare(garage, 'trip', trade, question);
  if (!prepared.ok) throw new Error(prepared.error.message);
  const result = solve(prepared.value, question, solver);
  if (result.kind !== 'solved')
    throw new Error(result.kind === 'no-plan' ? result.sentences.join(' ') : result.refusal.message);
  const answer = answerOf(prepared.value, question, result.solved, trade);
  if (!answer.ok) throw new Error(answer.error.message);
  const kit = result.solved.choice.carried.map((p) => prepared.value.reading.pieces[p]?.id ?? '');
  return { solved: result.solved, answer: answer.value, kit: kit.sort() };
}

/** Why there is no plan; a plan is a failed test. */
export function noPlan(
  garage: Garage,
  question: Question,
  solver: Solver,
  trade: Trade = SHIPPED_TRADE,
): readonly string[] {
  const prepared = prepare(garage, 'trip', trade, question);
  if (!prepared.ok) throw new Error(prepared.error.message);
  const result = solve(prepared.value, question, solver);
  if (result.kind !== 'no-plan') throw new Error(`There is a plan: ${result.kind}`);
  return result.sentences;
}

/** The shipped trade with only some failures: one repair is looked at, everything else as it ships. */
export function tradeOf(...failures: readonly string[]): Trade {
  return { ...SHIPPED_TRADE, failures: SHIPPED_TRADE.failures.filter((f) => failures.includes(f.id)) };
}
