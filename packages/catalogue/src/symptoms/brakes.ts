import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

/** Brakes: nobody drives on until it is known why. */
export const BRAKES: readonly Symptom[] = [
  {
    id: 'pedal-soft',
    area: 'brakes',
    title: 'Brake pedal soft, spongy or down to the floor',
    first: ['Stop with gears and parking brake, chock both ways. Nobody drives on before it is known why.'],
    questions: [
      ask('fluid', 'Look at the fluid in its bottle, pump the pedal twice, look again.', {
        falls: 'Low, or it falls',
        full: 'Full, and stays so',
      }),
      ask('wet', 'Where is it wet and oily?', {
        wheel: 'Inside a wheel or on its tyre',
        line: 'Along a pipe, under the vehicle',
        nowhere: 'Nowhere',
      }),
      ask('descent', 'Did it come on a long descent or after much braking?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('brake-pipe-broken', { fluid: 'falls', wet: 'line' }),
      lead('brake-hose-burst', { fluid: 'falls', wet: 'wheel line' }),
      lead('wheel-cylinder-leaks', { fluid: 'falls', wet: 'wheel' }),
      lead('brake-fluid-boiled', { fluid: 'full', wet: 'nowhere', descent: 'yes' }),
      lead('brake-pads-gone', { fluid: 'falls', wet: 'nowhere' }),
      lead('master-cylinder-dead', { wet: 'nowhere', descent: 'no' }),
      lead('taper-bearing-failed', { fluid: 'full', wet: 'nowhere', descent: 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'pedal-hard',
    area: 'brakes',
    title: 'Brake pedal hard, little happens',
    first: ['It still brakes, with both feet and far more force: stop on level ground, chock.'],
    questions: [
      ask('hiss', 'Engine running, press the pedal: what do you hear near it?', {
        yes: 'A hiss',
        no: 'Nothing',
      }),
      ask('water', 'Were the brakes under water just before?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('servo-lost', { water: 'no' }),
      lead('intake-split', { hiss: 'no', water: 'no' }),
      lead('brake-pads-gone', { hiss: 'no' }),
      lead('connector-wet', { water: 'yes' }),
      lead('brake-caliper-seized', { hiss: 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'brake-pulls-drags',
    area: 'brakes',
    title: 'Pulls to one side under brakes, drags, or a wheel is hot',
    first: [
      'Do not touch a hot drum or disc, and do not pour water on it. Let it cool on chocks, parking brake off.',
    ],
    questions: [
      ask('hot', 'Hold a hand near each wheel, not on it: which is hotter?', {
        front: 'One at the front',
        rear: 'One or both at the rear',
        none: 'None',
      }),
      ask('noise', 'What do you hear?', {
        grinds: 'Grinding',
        rumbles: 'Rumbling or humming',
        none: 'Nothing',
      }),
      ask('when', 'When does it pull or drag?', { braking: 'Only under brakes', always: 'Always' }),
    ],
    leads: [
      lead('brake-caliper-seized', { hot: 'front rear', when: 'always braking', noise: 'none grinds' }),
      lead('brake-pads-gone', { noise: 'grinds', when: 'braking' }),
      lead('wheel-cylinder-leaks', { hot: 'none rear', when: 'braking', noise: 'none' }),
      lead('shoe-spring-broken', { hot: 'rear', noise: 'grinds' }),
      lead('parking-brake-stuck', { hot: 'rear', noise: 'none grinds', when: 'always' }),
      lead('hub-unit-failed', { noise: 'rumbles grinds', when: 'always' }),
      lead('taper-bearing-failed', { noise: 'rumbles grinds', when: 'always' }),
      lead('half-shaft-broken-semi', { hot: 'rear', noise: 'rumbles', when: 'always' }),
      lead('tread-puncture', { hot: 'none', noise: 'none', when: 'always' }),
      lead('control-arm-bolt-lost', { hot: 'none', when: 'braking' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'parking-brake',
    area: 'brakes',
    title: 'Parking brake does not hold, or does not let go',
    first: ['Chocks on both sides of a wheel before anything else.'],
    questions: [
      ask('how', 'Which is it?', { weak: 'It does not hold', stuck: 'It does not let go' }),
      ask('lever', 'How does its lever feel?', {
        slack: 'Slack, it comes up with no force',
        firm: 'As always, or stiff',
      }),
    ],
    leads: [
      lead('parking-brake-stuck'),
      lead('shoe-spring-broken', { how: 'stuck', lever: 'firm' }),
      lead('wheel-cylinder-leaks', { how: 'weak', lever: 'firm' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
