import {
  cents,
  grams,
  inches,
  kilograms,
  metres,
  millilitres,
  millimetres,
  newtonMetres,
} from '@waymend/core/quantity/units';
import type {
  Joint,
  Scene,
  SceneJob,
  ScenePiece,
  SquareDrive,
  ToolOffer,
  Trouble,
} from '@waymend/core/repairing/scene';
import { layOut } from '../../src/checking/bench.ts';
import { jointMark } from '../../src/checking/joints.ts';

/** Small scenes written by hand; nothing here comes from the catalogue, so that its figures can change freely. */

type Size = Joint['size'];

export function mm(width: number): Size {
  return { kind: 'across-flats', label: `${width} mm`, width: millimetres(width), system: 'metric' };
}

export function inch(width: number, label = `${width} in`): Size {
  return { kind: 'across-flats', label, width: inches(width), system: 'inch' };
}

export const lobe = (number: number, family: 'T' | 'E' = 'T'): Size => ({
  kind: 'lobe',
  label: `${family}${number}`,
  family,
  number,
});
export const cross = (number: number): Size => ({ kind: 'cross', label: `cross ${number}`, number });
export const slot = (width: number): Size => ({
  kind: 'slot',
  label: `slot ${width}`,
  width: millimetres(width),
});

export function joint(change: Partial<Joint> = {}): Joint {
  return {
    id: 'j',
    place: 'place',
    title: 'Joint',
    drive: 'hex',
    size: mm(17),
    torque: newtonMetres(50),
    access: 'open',
    stance: 'kneeling',
    rusty: false,
    status: 'measured',
    ...change,
  };
}

export function piece(
  id: string,
  offers: readonly ToolOffer[] = [],
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

export function socket(size: Size, change: Partial<Extract<ToolOffer, { kind: 'socket' }>> = {}): ToolOffer {
  return {
    kind: 'socket',
    size,
    depth: 'shallow',
    points: 6,
    drive: '1/2 in',
    thin: false,
    retains: false,
    slotted: false,
    ...change,
  };
}

export function handle(
  form: 'ratchet' | 'bar' | 't-bar' | 'spinner' | 'torque' | 'impact',
  length: number,
  drive: SquareDrive = '1/2 in',
  max?: number,
): ToolOffer {
  return {
    kind: 'handle',
    form,
    drive,
    length: metres(length),
    ...(max === undefined ? {} : { max: newtonMetres(max) }),
  };
}

export function wrench(
  length: number,
  ...ends: readonly ['ring' | 'ratchet-ring' | 'open' | 'flare', Size][]
): ToolOffer {
  return { kind: 'wrench', ends: ends.map(([form, size]) => ({ form, size })), length: metres(length) };
}

export function does(fn: string, change: Partial<Extract<ToolOffer, { kind: 'does' }>> = {}): ToolOffer {
  return { kind: 'does', fn, grade: 'proper', pieces: 1, ...change };
}

export const extension = (length: number, drive: SquareDrive = '1/2 in', wobble = false): ToolOffer => ({
  kind: 'extension',
  drive,
  length: metres(length),
  wobble,
});
export const adapter = (from: SquareDrive, to: SquareDrive): ToolOffer => ({
  kind: 'adapter',
  handle: from,
  socket: to,
});
export const tube = (length: number): ToolOffer => ({ kind: 'lever-tube', length: metres(length) });

export const CREW = { count: 2, heaviest: kilograms(80) };

/** The grade at which tools (one piece each) undo a joint. */
export function undone(on: Joint, ...tools: readonly ToolOffer[]) {
  const pieces = tools.map((offer, n) => piece(`t${n}`, [offer]));
  return jointMark(layOut(pieces), on, CREW);
}

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
    system: 'brakes',
    bestSkill: 3,
    chanceFactor: 1,
    trusted: metres(Number.MAX_SAFE_INTEGER),
    ...change,
  };
}

export function trouble(
  id: string,
  expected: number,
  jobs: readonly string[],
  change: Partial<Trouble> = {},
): Trouble {
  return {
    id,
    failure: id,
    title: id,
    group: 'brakes',
    expected,
    restored: 0.8,
    help: metres(100_000),
    jobs,
    ...change,
  };
}

export function scene(change: Partial<Scene> = {}): Scene {
  return {
    joints: [],
    jobs: [],
    trouble: [],
    crew: CREW,
    pieces: [],
    bundles: [],
    together: [],
    floor: [],
    limits: { grams: null, millilitres: null, cents: cents(0), berths: [], loads: [] },
    mustDo: [],
    ...change,
  };
}
