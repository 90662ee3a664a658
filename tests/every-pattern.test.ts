import type { VehiclePattern } from '@waymend/catalogue/shape/pattern';
import { RECALLED_OPENINGS } from '@waymend/core/fastening/opening';
import { parseSize } from '@waymend/core/fastening/size';
import { newtonMetres } from '@waymend/core/quantity/units';
import { GRADES } from '@waymend/core/repairing/grade';
import { NeedWriter } from '@waymend/core/repairing/need-writer';
import type { Grade, Scene } from '@waymend/core/repairing/scene';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { describe, expect, it } from 'vitest';
import { garageOf, owned } from './support/yaml-garage.ts';

/** With three of everything in the catalogue, two people of skill 5, and the vehicle as its pattern says. */

const PULLER = 'frame-pickup-independent-front';

/** Jobs that no shop sells the tools for, by pattern and job, each with its reason. None at present. */
const WITHOUT_A_WAY: Readonly<Record<string, readonly string[]>> = {};

function sceneOf(pattern: VehiclePattern, leaveOut: readonly string[] = []): Scene {
  const towing = pattern.kind === 'trailer';
  const drawn = SHIPPED_TRADE.patterns.find((p) => p.id === (towing ? PULLER : pattern.id)) ?? pattern;
  const facts = (p: VehiclePattern) => ({
    name: p.title.replaceAll(',', ''),
    pattern: p.id,
    wheelbaseMm: `${p.wheelbaseMm}`,
    emptyFrontKg: `${p.emptyFrontKg}`,
    emptyRearKg: `${p.emptyRearKg}`,
    ratedFrontKg: `${p.ratedFrontKg}`,
    ratedRearKg: `${p.ratedRearKg}`,
    ratedGrossKg: `${p.ratedGrossKg}`,
  });
  const rig = garageOf({
    vehicle: facts(drawn),
    people: ['ada: { name: Ada, massKg: 78, skill: 5 }', 'ben: { name: Ben, massKg: 78, skill: 5 }'],
    berths: ['tray: { vehicle: rig, name: tray, xMm: 2000 }'],
    belongings: SHIPPED_TRADE.belongings
      .filter((b) => !leaveOut.includes(b.id))
      .map((b) => owned(b.id, 'copies: 3')),
  });
  const { trip } = rig.trips;
  const { rig: base } = rig.vehicles;
  if (trip === undefined || base === undefined) throw new Error('the garage lost its trip');
  const garage = towing
    ? {
        ...rig,
        vehicles: { ...rig.vehicles, box: { ...base, kind: 'trailer' as const, pattern: pattern.id } },
        trips: { trip: { ...trip, trailer: 'box' } },
      }
    : rig;
  const scene = buildScene(garage, 'trip', SHIPPED_TRADE);
  if (!scene.ok) throw new Error(scene.error.message);
  // The shop would sell what is left out.
  return { ...scene.value.scene, pieces: scene.value.scene.pieces.filter((piece) => piece.owned) };
}

/** Ids of the jobs that nothing makes possible, with what stands in the way. */
function impossible(scene: Scene): readonly string[] {
  const writer = new NeedWriter(scene, RECALLED_OPENINGS);
  return scene.jobs.flatMap((job) => {
    if (job.expedient || writer.job(job, 'last-resort') !== null) return [];
    const open = job.needs.filter((need) => writer.need(need, 'last-resort') === null);
    return [`${job.id}: ${open.map((need) => (need.kind === 'turn' ? need.joint : need.fn)).join(', ')}`];
  });
}

describe('every pattern of vehicle', () => {
  it.each(SHIPPED_TRADE.patterns.map((pattern) => [pattern.id, pattern] as const))(
    '[M4] %s: something in the catalogue does each of its jobs',
    (id, pattern) => {
      const scene = sceneOf(pattern);
      expect(scene.jobs.length).toBeGreaterThan(100);
      expect(impossible(scene)).toEqual(WITHOUT_A_WAY[id] ?? []);
    },
  );

  it('[M4] a truck cannot have its wheels off without a brace or a socket of 27 mm on a 3/4 in bar, nor be lain under without a stand of 2,520 kg', () => {
    const truck = SHIPPED_TRADE.patterns.find((p) => p.id === 'light-truck');
    if (truck === undefined) throw new Error('there is no light truck');
    expect(impossible(sceneOf(truck, ['WB-T', 'SD6-27']))).toContain('WT-01: wheel-nut');
    expect(impossible(sceneOf(truck, ['WB-T']))).toEqual([]);
    expect(impossible(sceneOf(truck, ['ST-6'])).some((line) => line.endsWith('support'))).toBe(true);
  });
});

describe('wheel and hub nuts until somebody has looked', () => {
  // The upper end of the usual torque, and every size that is usual: trade manuals' ranges, common practice.
  const scene = sceneOf(SHIPPED_TRADE.patterns.find((p) => p.id === 'camper-trailer') ?? fail());
  const cases = SHIPPED_TRADE.places
    .filter((place) => ['wheel-nut', 'wheel-nut-trailer', 'hub-nut', 'trailer-hub-nut'].includes(place.id))
    .flatMap((place) => place.sizes.map((size) => [place.id, size, place] as const));

  it.each(cases)('[M2] %s of %s is turned with care or better', (id, label, place) => {
    const size = parseSize(label);
    if (!size.ok) throw new Error(size.error.message);
    const joints = scene.joints.map((joint) =>
      joint.place === id
        ? { ...joint, size: size.value, torque: newtonMetres(place.torqueNm[1]), access: place.access }
        : joint,
    );
    const joint = joints.find((one) => one.place === id);
    if (joint === undefined) throw new Error(`the scene has no ${id}`);
    const writer = new NeedWriter({ ...scene, joints }, RECALLED_OPENINGS);
    const grade = GRADES.find((g: Grade) => writer.turn(joint.id, g) !== null);
    expect(grade === 'proper' || grade === 'with-care').toBe(true);
  });

  it('[M2] 330 N m on a hub nut is more than 1/2 in drive bears: without 3/4 in sockets there is no way', () => {
    const pieces = scene.pieces.filter((piece) => !piece.name.includes('3/4 in drive'));
    const size = parseSize('35 mm');
    if (!size.ok) throw new Error(size.error.message);
    const at = (torque: number) => {
      const joints = scene.joints.map((joint) =>
        joint.place === 'hub-nut'
          ? { ...joint, size: size.value, torque: newtonMetres(torque), access: 'recess' as const }
          : joint,
      );
      const joint = joints.find((one) => one.place === 'hub-nut');
      return new NeedWriter({ ...scene, pieces, joints }, RECALLED_OPENINGS).turn(
        joint?.id ?? '',
        'last-resort',
      );
    };
    expect(at(330)).toBeNull();
    expect(at(300)).not.toBeNull();
  });
});

function fail(): never {
  throw new Error('the pattern is not there');
}
