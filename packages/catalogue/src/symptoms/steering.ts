import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

const STOPPED = 'Stop where it is flat, chock. A steering part that lets go gives no second warning.';

/** Steering. */
export const STEERING: readonly Symptom[] = [
  {
    id: 'steering-heavy',
    area: 'steering',
    title: 'Steering has become heavy',
    first: [STOPPED],
    questions: [
      ask('fluid', 'Is there fluid in the steering bottle?', {
        low: 'Low, empty or foaming',
        full: 'Full',
        none: 'The vehicle has no such bottle',
      }),
      ask('belt', 'Is the drive belt there and tight?', { gone: 'Gone or slack', there: 'There' }),
      ask('tyre', 'Do both front tyres stand equally full?', { soft: 'One is soft', same: 'Both are full' }),
    ],
    leads: [
      lead('steering-return-leak', { fluid: 'low', tyre: 'same' }),
      lead('steering-pressure-burst', { fluid: 'low', tyre: 'same' }),
      lead('v-belt-broken', { belt: 'gone' }),
      lead('multi-rib-belt-broken', { belt: 'gone' }),
      lead('pulley-seized', { belt: 'gone' }),
      lead('tread-puncture', { tyre: 'soft' }),
      lead('valve-core-leak', { tyre: 'soft' }),
      lead('fuse-blown', { fluid: 'none', belt: 'there', tyre: 'same' }),
      lead('alternator-dead', { fluid: 'none', tyre: 'same' }),
      lead('steering-box-broken', { fluid: 'full none', belt: 'there', tyre: 'same' }),
      lead('ball-joint-parted', { fluid: 'full none', belt: 'there', tyre: 'same' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'steering-loose',
    area: 'steering',
    title: 'Steering loose, wandering or off centre',
    first: [STOPPED],
    questions: [
      ask(
        'rock',
        'Engine off, somebody rocks the steering wheel; watch from the side, not from beneath. What has play?',
        {
          joint: 'A joint or rod lags behind',
          box: 'The box or rack moves on the chassis, or does not follow',
          wheel: 'A wheel rocks, or its nuts move',
          none: 'Nothing',
        },
      ),
      ask('centre', 'Is the steering wheel off centre since a blow?', { yes: 'Yes', no: 'No' }),
      ask('axle', 'Measure by eye: does a wheel stand further back or in than its fellow?', {
        yes: 'Yes',
        no: 'No',
      }),
    ],
    leads: [
      lead('tie-rod-end-broken', { rock: 'joint' }),
      lead('tie-rod-bent', { rock: 'joint none', centre: 'yes', axle: 'no' }),
      lead('ball-joint-parted', { rock: 'joint wheel' }),
      lead('steering-box-broken', { rock: 'box' }),
      lead('wheel-stud-broken', { rock: 'wheel', centre: 'no', axle: 'no' }),
      lead('taper-bearing-failed', { rock: 'wheel', axle: 'no' }),
      lead('hub-unit-failed', { rock: 'wheel', axle: 'no' }),
      lead('control-arm-bolt-lost', { rock: 'wheel joint', axle: 'yes' }),
      lead('link-bolt-lost', { rock: 'none joint', axle: 'yes' }),
      lead('link-bush-torn', { rock: 'none', centre: 'no' }),
      lead('centre-bolt-sheared', { rock: 'none', axle: 'yes' }),
      lead('u-bolt-broken', { rock: 'none', axle: 'yes' }),
      lead('tread-puncture', { rock: 'none', centre: 'no', axle: 'no' }),
      lead('steering-damper-broken', { rock: 'none', centre: 'no', axle: 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'pulls-driving',
    area: 'steering',
    title: 'Pulls to one side without braking',
    first: [STOPPED],
    questions: [
      ask('tyre', 'Is a tyre soft or torn?', { yes: 'Yes', no: 'No' }),
      ask('hot', 'Is one wheel hotter than its fellow?', { yes: 'Yes', no: 'No' }),
      ask('sits', 'Does it lean, or does an axle stand crooked?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('tread-puncture', { tyre: 'yes', hot: 'no' }),
      lead('tyre-ruined', { tyre: 'yes' }),
      lead('brake-caliper-seized', { tyre: 'no', hot: 'yes' }),
      lead('taper-bearing-failed', { tyre: 'no', hot: 'yes' }),
      lead('hub-unit-failed', { tyre: 'no', hot: 'yes' }),
      lead('leaf-broken', { tyre: 'no', sits: 'yes' }),
      lead('centre-bolt-sheared', { tyre: 'no', hot: 'no', sits: 'yes' }),
      lead('u-bolt-broken', { tyre: 'no', hot: 'no', sits: 'yes' }),
      lead('coil-broken', { tyre: 'no', hot: 'no', sits: 'yes' }),
      lead('tie-rod-bent', { tyre: 'no', hot: 'no', sits: 'no' }),
      lead('link-bush-torn', { tyre: 'no', hot: 'no', sits: 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'wobble',
    area: 'steering',
    title: 'The front wheels wobble or shake the steering wheel',
    first: [
      'Slow down gently, do not brake hard, hold the rim with both hands; then stop and look at every wheel nut.',
    ],
    questions: [
      ask('nuts', 'Are all wheel nuts there and tight?', { no: 'No', yes: 'Yes' }),
      ask('when', 'When does it shake?', {
        bump: 'After a bump, until nearly stopped',
        speed: 'Steadily, with speed',
        braking: 'Under brakes',
      }),
      ask('tyre', 'Has a tyre a bulge, loose tread or packed mud in the rim?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('wheel-stud-broken', { nuts: 'no' }),
      lead('steering-damper-broken', { nuts: 'yes', when: 'bump', tyre: 'no' }),
      lead('link-bush-torn', { nuts: 'yes', when: 'bump braking', tyre: 'no' }),
      lead('tie-rod-end-broken', { nuts: 'yes', when: 'bump braking', tyre: 'no' }),
      lead('ball-joint-parted', { nuts: 'yes', tyre: 'no' }),
      lead('taper-bearing-failed', { nuts: 'yes', tyre: 'no' }),
      lead('hub-unit-failed', { nuts: 'yes', tyre: 'no' }),
      lead('shock-dead', { nuts: 'yes', when: 'bump', tyre: 'no' }),
      lead('tyre-ruined', { nuts: 'yes', when: 'speed', tyre: 'yes' }),
      lead('rim-bent', { nuts: 'yes', when: 'speed' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
