import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

const STAYS = 'Chock it: without drive, park and gears may hold nothing.';

/** Gears and drive. */
export const DRIVE: readonly Symptom[] = [
  {
    id: 'no-gear',
    area: 'drive',
    title: 'Will not go into gear',
    first: [STAYS],
    questions: [
      ask('pedal', 'How is the clutch pedal?', {
        floor: 'On the floor, or soft',
        normal: 'As always',
        none: 'There is none: automatic',
      }),
      ask('lever', 'How does the lever feel?', {
        loose: 'Loose, it stirs in nothing',
        stiff: 'Stiff or blocked',
        normal: 'As always',
      }),
      ask('off', 'Does it go in with the engine off?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('clutch-fluid-lost', { pedal: 'floor', lever: 'normal stiff', off: 'yes' }),
      lead('clutch-slave-leaks', { pedal: 'floor', lever: 'normal stiff', off: 'yes' }),
      lead('clutch-broken', { pedal: 'normal', lever: 'normal stiff', off: 'yes' }),
      lead('linkage-adrift', { pedal: 'normal none', lever: 'loose' }),
      lead('gear-lost', { pedal: 'normal', lever: 'stiff normal', off: 'no' }),
      lead('gearbox-broken', { pedal: 'normal none', lever: 'stiff normal', off: 'no' }),
      lead('automatic-failed', { pedal: 'none', lever: 'normal' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'no-drive',
    area: 'drive',
    title: 'In gear, engine runs, and it does not drive',
    first: [STAYS, 'Watch shafts from the side, well clear. Nobody under it while the engine runs.'],
    questions: [
      ask('shafts', 'In gear, briefly, from the side: what turns beneath?', {
        one: 'A propeller shaft turns, its wheels do not',
        none: 'No shaft turns',
        loose: 'A shaft lies loose or flails',
        clicks: 'It clicks or bangs at a wheel',
      }),
      ask('range', 'Does it drive in low range, or with the front axle in?', { yes: 'Yes', no: 'No' }),
      ask('smell', 'What do you smell or see?', {
        burnt: 'Burnt clutch or brake',
        red: 'Red oil beneath',
        none: 'Nothing',
      }),
    ],
    leads: [
      lead('clutch-slips', { shafts: 'none', range: 'no', smell: 'burnt' }),
      lead('clutch-broken', { shafts: 'none', range: 'no', smell: 'none burnt' }),
      lead('gearbox-broken', { shafts: 'none', range: 'no', smell: 'none' }),
      lead('automatic-cooler-leaks', { shafts: 'none', range: 'no', smell: 'red' }),
      lead('automatic-failed', { shafts: 'none', range: 'no', smell: 'none burnt red' }),
      lead('linkage-adrift', { shafts: 'none', smell: 'none' }),
      lead('transfer-case-broken', { shafts: 'none', smell: 'none' }),
      lead('universal-joint-failed', { shafts: 'loose', smell: 'none' }),
      lead('propeller-shaft-damaged', { shafts: 'loose', smell: 'none' }),
      lead('flange-bolts-lost', { shafts: 'loose', smell: 'none' }),
      lead('half-shaft-broken-floating', { shafts: 'one', smell: 'none' }),
      lead('half-shaft-broken-semi', { shafts: 'one', smell: 'none' }),
      lead('differential-broken', { shafts: 'one clicks', smell: 'none' }),
      lead('drive-shaft-broken', { shafts: 'one clicks', smell: 'none' }),
      lead('freewheel-hub-failed', { shafts: 'one clicks', range: 'no', smell: 'none' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'gears-bad',
    area: 'drive',
    title: 'Jumps out of gear, whines, or the clutch slips',
    first: ['Go gently to a place where it may stay: a gearbox does not mend itself by being tried.'],
    questions: [
      ask('what', 'What does it do?', {
        jumps: 'Jumps out of one gear',
        whines: 'Whines or growls in gear',
        slips: 'Revs rise, speed does not',
        four: 'Four-wheel drive or low range does not go in, or not out',
      }),
      ask('oil', 'Under the box: is there oil?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('gear-lost', { what: 'jumps whines' }),
      lead('linkage-adrift', { what: 'jumps four', oil: 'no' }),
      lead('box-oil-water', { what: 'whines' }),
      lead('oil-plug-lost', { what: 'whines', oil: 'yes' }),
      lead('case-holed', { what: 'whines jumps', oil: 'yes' }),
      lead('clutch-slips', { what: 'slips' }),
      lead('freewheel-hub-failed', { what: 'four', oil: 'no' }),
      lead('transfer-case-broken', { what: 'four whines' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
