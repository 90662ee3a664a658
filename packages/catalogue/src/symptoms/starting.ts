import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

const LAMPS = ask('lamps', 'Turn the key one step, then try to start. What do the dash and headlamps do?', {
  bright: 'They light, and stay bright',
  dim: 'They light, and go dim or out when it should start',
  dead: 'They do not light at all',
});
const WATER = ask('water', 'Was it in deep water or very heavy rain just before?', { yes: 'Yes', no: 'No' });

/** It does not start. */
export const STARTING: readonly Symptom[] = [
  {
    id: 'no-start-silent',
    area: 'starting',
    title: 'Will not start: nothing is heard at the key',
    first: ['Gear in neutral or park, parking brake on, key off before you reach into the engine.'],
    questions: [
      LAMPS,
      ask('key-lamp', 'Does a key or padlock lamp flash or stay on?', {
        yes: 'Yes',
        no: 'No, or there is none',
      }),
      WATER,
    ],
    leads: [
      lead('battery-flat', { lamps: 'dim dead', 'key-lamp': 'no' }),
      lead('battery-terminal-loose', { lamps: 'dim dead', 'key-lamp': 'no' }),
      lead('battery-terminal-broken', { lamps: 'dim dead', 'key-lamp': 'no' }),
      lead('battery-cable-broken', { lamps: 'bright dim', 'key-lamp': 'no' }),
      lead('battery-shorted', { lamps: 'dim dead', 'key-lamp': 'no' }),
      lead('main-fuse-blown', { lamps: 'dead', 'key-lamp': 'no' }),
      lead('starter-unfed', { lamps: 'bright', 'key-lamp': 'no' }),
      lead('starter-brushes', { lamps: 'bright', 'key-lamp': 'no' }),
      lead('starter-dead', { lamps: 'bright', 'key-lamp': 'no' }),
      lead('starter-drowned', { lamps: 'bright dim', 'key-lamp': 'no', water: 'yes' }),
      lead('connector-wet', { lamps: 'bright', water: 'yes' }),
      lead('key-not-recognised', { lamps: 'bright', 'key-lamp': 'yes' }),
      lead('control-unit-dead', { lamps: 'bright' }),
      lead('relay-dead', { lamps: 'bright', 'key-lamp': 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'no-start-clicks',
    area: 'starting',
    title: 'Will not start: it only clicks',
    first: [
      'Gear in neutral or park, parking brake on. Batteries give off gas that burns: no flame, no sparks.',
    ],
    questions: [
      LAMPS,
      ask('click', 'What clicks?', { one: 'One firm clunk each time', many: 'Fast ticking' }),
      WATER,
    ],
    leads: [
      lead('battery-flat', { lamps: 'dim dead' }),
      lead('battery-worn-out', { lamps: 'dim' }),
      lead('battery-terminal-loose', { lamps: 'dim dead' }),
      lead('battery-cable-broken', { lamps: 'dim bright' }),
      lead('battery-shorted', { lamps: 'dim dead', click: 'many' }),
      lead('starter-contacts', { lamps: 'bright', click: 'one' }),
      lead('starter-brushes', { lamps: 'bright', click: 'one' }),
      lead('starter-dead', { lamps: 'bright', click: 'one' }),
      lead('relay-dead', { lamps: 'bright', click: 'many' }),
      lead('engine-swallowed-water', { lamps: 'dim bright', click: 'one', water: 'yes' }),
      lead('engine-internals', { lamps: 'dim', click: 'one' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'no-start-slow',
    area: 'starting',
    title: 'Will not start: it turns over slowly',
    first: ['Batteries give off gas that burns: no flame, no sparks, rings off.'],
    questions: [
      ask('stood', 'Were lamps, fridge or radio on for long, or did it stand for days?', {
        yes: 'Yes',
        no: 'No',
      }),
      ask('clamp', 'Twist the battery clamps by hand, then feel the cables after a try.', {
        loose: 'A clamp turns, or is furred white or green',
        hot: 'A cable or clamp is hot',
        firm: 'All firm and cool',
      }),
      ask('cold', 'Is it freezing?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('battery-flat', { stood: 'yes', clamp: 'firm' }),
      lead('battery-worn-out', { clamp: 'firm' }),
      lead('battery-shorted', { clamp: 'firm' }),
      lead('battery-terminal-loose', { clamp: 'loose hot' }),
      lead('battery-terminal-broken', { clamp: 'loose' }),
      lead('battery-cable-broken', { clamp: 'hot loose' }),
      lead('starter-brushes', { stood: 'no', clamp: 'firm', cold: 'no' }),
      lead('alternator-brushes', { stood: 'no', clamp: 'firm' }),
      lead('alternator-dead', { stood: 'no', clamp: 'firm' }),
      lead('second-battery-fault', { stood: 'yes', clamp: 'firm' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'no-start-cranks',
    area: 'starting',
    title: 'Will not start: it turns as usual and does not fire',
    first: [
      'No more than ten seconds of starter at a time, then a minute of rest. If it swallowed water, do not turn it at all.',
    ],
    questions: [
      ask('before', 'What came before?', {
        fill: 'Fuel was filled a short while ago',
        ran: 'It stopped by itself while driving',
        stood: 'It stood overnight or longer',
        hot: 'It was hot, and stood for half an hour',
      }),
      ask('cold', 'Is it freezing, or was the night?', { yes: 'Yes', no: 'No' }),
      WATER,
      ask('spin', 'Does it turn faster and more evenly than usual?', {
        yes: 'Yes, it whirrs',
        no: 'No, as always',
      }),
    ],
    leads: [
      lead('fuel-filter-blocked', { before: 'ran fill stood', spin: 'no' }),
      lead('fuel-dirty', { before: 'fill ran', spin: 'no' }),
      lead('fuel-line-leaks', { before: 'ran stood', spin: 'no' }),
      lead('feed-pump-dead', { before: 'ran stood hot', spin: 'no' }),
      lead('feed-pump-unfed', { before: 'ran stood', spin: 'no' }),
      lead('lift-pump-dirty', { before: 'ran stood', spin: 'no' }),
      lead('diesel-sucks-air', { before: 'stood ran', spin: 'no' }),
      lead('diesel-waxed', { before: 'stood ran', cold: 'yes', spin: 'no' }),
      lead('vapour-lock', { before: 'hot ran', cold: 'no', spin: 'no' }),
      lead('glow-plugs-dead', { before: 'stood', spin: 'no' }),
      lead('spark-wet', { water: 'yes', spin: 'no' }),
      lead('connector-wet', { water: 'yes', spin: 'no' }),
      lead('plug-or-coil-dead', { before: 'stood ran', spin: 'no' }),
      lead('crank-sensor-dead', { before: 'ran hot', spin: 'no' }),
      lead('sensor-plug-bad', { spin: 'no' }),
      lead('key-not-recognised', { before: 'stood hot fill', spin: 'no' }),
      lead('fuse-blown', { before: 'ran stood', spin: 'no' }),
      lead('relay-dead', { before: 'ran hot stood', spin: 'no' }),
      lead('control-unit-dead', { spin: 'no' }),
      lead('injection-fault', { before: 'ran stood', spin: 'no' }),
      lead('engine-swallowed-water', { before: 'ran', water: 'yes' }),
      lead('timing-belt-broken', { before: 'ran', spin: 'yes' }),
      lead('engine-internals', { spin: 'yes' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'key-trouble',
    area: 'starting',
    title: 'Trouble with the key or the lock',
    first: [
      'Nobody breaks glass towards a face. A child or animal inside in the heat comes first: then break the far window.',
    ],
    questions: [
      ask('key', 'What is wrong with it?', {
        lost: 'Lost or broken',
        inside: 'Locked inside',
        jams: 'It does not go in or does not turn',
        ignored: 'It turns, and the vehicle does not know it',
      }),
    ],
    leads: [
      lead('key-lost', { key: 'lost' }),
      lead('locked-out', { key: 'inside' }),
      lead('ignition-lock-broken', { key: 'jams' }),
      lead('key-not-recognised', { key: 'ignored' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
