import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

const LEVEL =
  'Firm level ground, chocks both ways, away from traffic. Nobody under a vehicle that only a jack holds.';

/** Tyres, wheels and what shakes. */
export const WHEELS: readonly Symptom[] = [
  {
    id: 'tyre-flat',
    area: 'wheels',
    title: 'A tyre is flat',
    first: [LEVEL, 'A tyre that was driven flat is not pumped up again: it may burst.'],
    questions: [
      ask('which', 'Which wheel?', { vehicle: 'One of the vehicle', trailer: 'One of the trailer' }),
      ask('where', 'Where is the hole, or the hiss?', {
        tread: 'In the tread',
        side: 'In the sidewall or shoulder',
        rim: 'Between tyre and rim',
        valve: 'At the valve',
        unknown: 'I cannot find it',
      }),
      ask('size', 'How big is it?', {
        small: 'A nail, thorn or stone: smaller than a pencil',
        gash: 'A cut or gash, larger than that',
        torn: 'Tread off, burst, or it was driven flat',
      }),
    ],
    leads: [
      lead('tread-puncture', { which: 'vehicle', where: 'tread unknown', size: 'small' }),
      lead('tread-gash', { which: 'vehicle', where: 'tread', size: 'gash' }),
      lead('sidewall-cut', { which: 'vehicle', where: 'side', size: 'small gash' }),
      lead('tyre-ruined', { which: 'vehicle', where: 'tread side rim unknown', size: 'torn' }),
      lead('bead-off', { which: 'vehicle', where: 'rim', size: 'small gash' }),
      lead('rim-bent', { which: 'vehicle', where: 'rim', size: 'small gash' }),
      lead('valve-core-leak', { which: 'vehicle', where: 'valve unknown', size: 'small' }),
      lead('valve-stem-torn', { which: 'vehicle', where: 'valve', size: 'small gash torn' }),
      lead('trailer-tyre-flat', { which: 'trailer' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'tyre-slow-leak',
    area: 'wheels',
    title: 'A tyre loses air slowly',
    first: ['Check it cold and pump it up before each drive until it is mended.'],
    questions: [
      ask('bubbles', 'Wet it with soapy water: where does it bubble?', {
        tread: 'On the tread',
        side: 'On the sidewall',
        rim: 'Along the rim',
        core: 'In the mouth of the valve',
        stem: 'Around the foot of the valve',
        none: 'Nowhere',
      }),
    ],
    leads: [
      lead('tread-puncture', { bubbles: 'tread none' }),
      lead('sidewall-cut', { bubbles: 'side' }),
      lead('rim-bent', { bubbles: 'rim' }),
      lead('bead-off', { bubbles: 'rim' }),
      lead('valve-core-leak', { bubbles: 'core none' }),
      lead('valve-cap-lost', { bubbles: 'core' }),
      lead('valve-stem-torn', { bubbles: 'stem' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'wheel-nuts',
    area: 'wheels',
    title: 'Trouble with wheel nuts',
    first: [LEVEL, 'Stand so that a slipping bar does not take you along.'],
    questions: [
      ask('what', 'What is it?', {
        stuck: 'One does not come off, or is rounded',
        locked: 'A locking nut, and its key is not here',
        loose: 'Nuts loose, missing, or a stud broken',
      }),
    ],
    leads: [
      lead('wheel-nut-stuck', { what: 'stuck' }),
      lead('locking-nut-keyless', { what: 'locked' }),
      lead('wheel-stud-broken', { what: 'loose' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'vibration',
    area: 'wheels',
    title: 'Vibration that is felt in the seat or floor',
    first: ['Stop and look before it grows: a loose wheel or shaft shakes first.'],
    questions: [
      ask('with', 'What does it follow?', {
        road: 'Road speed, whatever the gear',
        engine: 'Engine speed, standing too',
        pull: 'It comes under power and goes when coasting',
      }),
      ask('look', 'Chocked and in gear, engine off, by hand: what is loose?', {
        wheel: 'A wheel, or its nuts',
        shaft: 'A propeller shaft has play, or its bolts do',
        tyre: 'A tyre has a bulge or torn tread',
        none: 'Nothing',
      }),
    ],
    leads: [
      lead('wheel-stud-broken', { with: 'road', look: 'wheel' }),
      lead('taper-bearing-failed', { with: 'road', look: 'wheel' }),
      lead('hub-unit-failed', { with: 'road', look: 'wheel none' }),
      lead('universal-joint-failed', { with: 'road pull', look: 'shaft' }),
      lead('flange-bolts-lost', { with: 'road pull', look: 'shaft' }),
      lead('propeller-shaft-damaged', { with: 'road', look: 'shaft none' }),
      lead('drive-shaft-broken', { with: 'pull', look: 'none shaft' }),
      lead('tyre-ruined', { with: 'road', look: 'tyre' }),
      lead('rim-bent', { with: 'road', look: 'tyre none' }),
      lead('engine-mount-broken', { with: 'engine pull', look: 'none' }),
      lead('fan-coupling-slips', { with: 'engine', look: 'none' }),
      lead('plug-or-coil-dead', { with: 'engine', look: 'none' }),
      lead('clutch-slips', { with: 'pull', look: 'none' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
