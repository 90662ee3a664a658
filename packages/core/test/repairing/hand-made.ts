import type { Problem } from '../../src/choosing/problem.ts';
import {
  cents,
  grams,
  kilograms,
  metres,
  millilitres,
  millimetres,
  newtonMetres,
} from '../../src/quantity/units.ts';
import type { BuiltProblem } from '../../src/repairing/build-problem.ts';
import { buildProblem } from '../../src/repairing/build-problem.ts';
import type {
  FunctionNeed,
  Grade,
  Joint,
  Scene,
  SceneJob,
  ScenePiece,
  SquareDrive,
  ToolOffer,
  Trouble,
} from '../../src/repairing/scene.ts';
import { sizeOf } from '../fastening/sizes.ts';

/** Small scenes written by hand: nothing comes from the catalogue, whose figures may change. Lengths in mm. */

export const socket = (
  size: string,
  drive: SquareDrive = '1/2 in',
  more: Partial<Extract<ToolOffer, { kind: 'socket' }>> = {},
): ToolOffer => ({
  kind: 'socket',
  size: sizeOf(size),
  depth: 'shallow',
  points: 6,
  drive,
  thin: false,
  retains: false,
  slotted: false,
  ...more,
});
export const deep = (size: string, drive: SquareDrive = '1/2 in'): ToolOffer =>
  socket(size, drive, { depth: 'deep' });

type HandleForm = Extract<ToolOffer, { kind: 'handle' }>['form'];
export const handle = (
  form: HandleForm,
  drive: SquareDrive = '1/2 in',
  mm = 470,
  max?: number,
): ToolOffer => ({
  kind: 'handle',
  form,
  drive,
  length: millimetres(mm),
  ...(max === undefined ? {} : { max: newtonMetres(max) }),
});

type EndForm = Extract<ToolOffer, { kind: 'wrench' }>['ends'][number]['form'];
export const wrench = (mm: number, ...ends: readonly (readonly [EndForm, string])[]): ToolOffer => ({
  kind: 'wrench',
  ends: ends.map(([form, size]) => ({ form, size: sizeOf(size) })),
  length: millimetres(mm),
});
/** Ring one end, open the other. */
export const combination = (size: string, mm = 230): ToolOffer => wrench(mm, ['ring', size], ['open', size]);

export const key = (head: 'hex-key' | 'lobe', arm: number, ...sizes: readonly string[]): ToolOffer => ({
  kind: 'key',
  head,
  sizes: sizes.map(sizeOf),
  arm: millimetres(arm),
});
export const bit = (
  head: Extract<ToolOffer, { kind: 'bit-socket' }>['head'],
  drive: SquareDrive,
  ...sizes: readonly string[]
): ToolOffer => ({ kind: 'bit-socket', head, drive, sizes: sizes.map(sizeOf) });
export const adjustable = (mm = 250, jaw: 'adjustable' | 'parallel' | 'pipe' = 'adjustable'): ToolOffer => ({
  kind: 'adjustable',
  jaw,
  from: millimetres(0),
  to: millimetres(30),
  length: millimetres(mm),
});
export const pliers = (form: 'locking' | 'water-pump' = 'locking', mm = 250): ToolOffer => ({
  kind: 'pliers',
  form,
  to: millimetres(40),
  length: millimetres(mm),
});
export const extension = (mm: number, drive: SquareDrive = '1/2 in', wobble = false): ToolOffer => ({
  kind: 'extension',
  drive,
  length: millimetres(mm),
  wobble,
});
export const adapter = (from: SquareDrive, to: SquareDrive): ToolOffer => ({
  kind: 'adapter',
  handle: from,
  socket: to,
});
export const tube = (mm = 600): ToolOffer => ({ kind: 'lever-tube', length: millimetres(mm) });
export const does = (fn: string, more: Partial<Extract<ToolOffer, { kind: 'does' }>> = {}): ToolOffer => ({
  kind: 'does',
  fn,
  grade: 'proper',
  pieces: 1,
  ...more,
});

export function piece(
  id: string,
  offers: readonly ToolOffer[],
  change: Partial<ScenePiece> = {},
): ScenePiece {
  return {
    id,
    belonging: id,
    name: id,
    grams: grams(100),
    millilitres: millilitres(50),
    cents: cents(0),
    owned: true,
    offers,
    stock: [],
    bundles: [],
    berth: null,
    ...change,
  };
}

export function joint(change: Partial<Joint> = {}): Joint {
  return {
    id: 'j',
    place: 'place',
    title: 'Joint',
    drive: 'hex',
    size: sizeOf('17 mm'),
    torque: newtonMetres(50),
    access: 'open',
    stance: 'kneeling',
    rusty: false,
    status: 'measured',
    ...change,
  };
}

export const FAR = metres(300_000);

export function job(id: string, change: Partial<SceneJob> = {}): SceneJob {
  return {
    id,
    job: id,
    title: `Job ${id}`,
    expedient: false,
    needs: [],
    uses: [],
    people: 1,
    skill: 2,
    system: 'cooling',
    bestSkill: 3,
    chanceFactor: 1,
    trusted: metres(Number.MAX_SAFE_INTEGER),
    ...change,
  };
}

export function trouble(id: string, jobs: readonly string[], change: Partial<Trouble> = {}): Trouble {
  return {
    id,
    failure: id,
    title: `Trouble ${id}`,
    group: 'cooling',
    expected: 0.1,
    restored: 0.8,
    help: FAR,
    jobs,
    ...change,
  };
}

export function scene(change: Partial<Scene> = {}): Scene {
  return {
    joints: [],
    jobs: [],
    trouble: [],
    crew: { count: 2, heaviest: kilograms(75) },
    pieces: [],
    bundles: [],
    together: [],
    floor: [],
    limits: { grams: null, millilitres: null, cents: cents(0), berths: [], loads: [] },
    mustDo: [],
    ...change,
  };
}

export function built(of: Scene): BuiltProblem {
  const answer = buildProblem(of);
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

/** Needs met by a kit, straight from the shape's own words. */
export function metWith({ needs }: Problem, kit: ReadonlySet<number>): readonly boolean[] {
  const met: boolean[] = [];
  for (const need of needs) {
    if (need.kind === 'enough') {
      let units = 0;
      for (const { piece: p, units: each } of need.from) if (kit.has(p)) units += each;
      met.push(units >= need.units);
    } else {
      met.push(
        need.ways.some(
          (way) => way.pieces.every((p) => kit.has(p)) && way.needs.every((n) => met[n] === true),
        ),
      );
    }
  }
  return met;
}

/** Score units still lost with a kit, straight from the shape's own words. */
export function lossWith(answer: BuiltProblem, ids: readonly string[]): number {
  const kit = kitOf(answer, ids);
  const met = metWith(answer.problem, kit);
  return answer.problem.events.reduce((sum, event) => {
    const gains = event.options.filter((o) => o.needs.every((n) => met[n] === true)).map((o) => o.gain);
    return sum + event.loss - Math.max(0, ...gains);
  }, answer.problem.fixedLoss);
}

/** Chance to restore one trouble (the first event) with a kit: gain over loss. */
export function chanceWith(answer: BuiltProblem, ids: readonly string[]): number {
  const [event] = answer.problem.events;
  if (event === undefined) return 0;
  return 1 - (lossWith(answer, ids) - answer.problem.fixedLoss) / event.loss;
}

function kitOf(answer: BuiltProblem, ids: readonly string[]): ReadonlySet<number> {
  return new Set(
    ids.map((id) => {
      const index = answer.indexOf.get(id);
      if (index === undefined) throw new Error(`no piece ${id}`);
      return index;
    }),
  );
}

/** The best grade at which all these tools together undo a joint; null when they do not. */
export function grade(
  at: Joint,
  tools: Readonly<Record<string, readonly ToolOffer[]>>,
  heaviest = 75,
): Grade | null {
  const pieces = Object.entries(tools).map(([id, offers]) => piece(id, offers));
  const answer = built(
    scene({
      joints: [at],
      jobs: [job('J', { needs: [{ kind: 'turn', joint: at.id }] })],
      trouble: [trouble('t', ['J'])],
      crew: { count: 2, heaviest: kilograms(heaviest) },
      pieces,
    }),
  );
  const met = metWith(answer.problem, new Set(pieces.map((_, index) => index)));
  const needs = answer.joints.get(at.id) ?? {};
  const found = (['proper', 'with-care', 'last-resort'] as const).find(
    (g) => needs[g] !== undefined && met[needs[g]] === true,
  );
  return found ?? null;
}

/** The best grade at which these pieces give a function. */
export function functionGrade(
  need: FunctionNeed,
  pieces: readonly ScenePiece[],
  together: Scene['together'] = [],
): Grade | null {
  const answer = built(
    scene({
      jobs: [job('J', { needs: [{ kind: 'function', ...need }] })],
      trouble: [trouble('t', ['J'], { restored: 1 })],
      pieces,
      together,
    }),
  );
  const chance = chanceWith(
    answer,
    pieces.map((p) => p.id),
  );
  // M4 grade factors: 1, 0.9, 0.5.
  if (chance === 0) return null;
  return chance === 1 ? 'proper' : Math.abs(chance - 0.9) < 1e-6 ? 'with-care' : 'last-resort';
}
