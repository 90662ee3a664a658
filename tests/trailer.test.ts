import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { garageText, planned } from './support/yaml-garage.ts';
import type { GarageText } from './support/yaml-garage.ts';
import { readGarage } from '@waymend/garage/file/read-garage';

const solver = await createHighsSolver();

/** The pickup of the other tests with a camper trailer of the catalogue's pattern behind it, or without. */
function garage(towing: boolean, text: GarageText = {}) {
  const trailer = [
    'vehicles:',
    '  camper: { name: Camper, kind: trailer, pattern: camper-trailer, wheelbaseMm: 3300, emptyFrontKg: 95, emptyRearKg: 855, ratedFrontKg: 150, ratedRearKg: 1450, ratedGrossKg: 1500 }',
  ].join('\n');
  const whole = garageText({ ...text, ...(towing ? { trip: { ...text.trip, trailer: 'camper' } } : {}) });
  const read = readGarage(towing ? whole.replace('vehicles:', trailer) : whole, 'test.yaml');
  if (!read.ok) throw new Error(read.error.map((e) => e.message).join('\n'));
  return read.value;
}

function joints(towing: boolean, fittings: readonly string[] = []) {
  const built = buildScene(garage(towing, { fittings }), 'trip', SHIPPED_TRADE);
  if (!built.ok) throw new Error(built.error.message);
  return built.value.scene.joints;
}

describe('a trailer', () => {
  const nuts = 'nuts: { vehicle: rig, place: wheel-nut, size: 21 mm, torqueNm: 120 }';

  it('[M4] brings the places that only it has, from its pattern, and its owner corrects them', () => {
    const at = (place: string, fittings: readonly string[] = []) =>
      joints(true, fittings)
        .filter((j) => j.place === place)
        .map((j) => `${j.size.label} ${j.status}`);
    expect(at('trailer-hub-nut')).toEqual(['36 mm assumed']);
    expect(at('wheel-nut-trailer')).toEqual(['19 mm assumed']);
    const hub = 'hub: { vehicle: camper, place: trailer-hub-nut, size: 32 mm, status: measured }';
    expect(at('trailer-hub-nut', [hub])).toEqual(['32 mm measured']);
    expect(joints(false).some((j) => j.place === 'trailer-hub-nut')).toBe(false);
  });

  it('[M4] adds nothing to the places of the vehicle itself', () => {
    const ours = new Set(joints(false, [nuts]).map((j) => j.place));
    const alone = joints(false, [nuts]);
    const towing = joints(true, [nuts]).filter((j) => ours.has(j.place));
    expect(towing).toEqual(alone);
  });

  it('[M4] is a position of its own where the owner has recorded what it shares with the vehicle', () => {
    const shock = 'damper: { vehicle: camper, place: shock-lower, size: 22 mm }';
    const at = joints(true, [shock]).filter((j) => j.place === 'shock-lower');
    expect(at.map((j) => j.position).sort()).toEqual(['front', 'rear', 'trailer']);
  });

  it('[M4] its bearing is mended with what its own nut takes, and a wheel change takes no more than before', () => {
    const ask = (job: string, towing: boolean) =>
      planned(
        garage(towing, { fittings: [nuts], belongings: SHIPPED_TRADE.belongings.map((b) => b.id) }),
        { aim: { kind: 'must-do' }, mustDo: [job] },
        solver,
        { ...SHIPPED_TRADE, failures: [] },
      ).kit;
    expect(ask('BO-04', true)).toContain('sk2-36');
    expect(ask('WT-01', true)).toEqual(ask('WT-01', false));
  });
});
