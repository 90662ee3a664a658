import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Job } from '../shape/job.ts';
import { UNDER_ON_WHEELS } from './raised.ts';

const HOT = 'Exhausts burn for an hour after a drive. Let it cool; thick gloves.';
const GRASS = 'A hot pipe sets dry grass alight. Park on bare ground and keep the extinguisher at hand.';
const GAS = 'Exhaust gas kills without a smell. Windows open while driving, no idling, nobody asleep inside.';

export const EXHAUST_JOBS: readonly Job[] = [
  {
    id: 'EX-01',
    system: 'exhaust',
    title: 'Wire up a hanging exhaust',
    outcome: 'drive-on',
    skill: 1,
    minutes: [10, 30],
    people: 1,
    needs: [{ fn: 'lash', of: 'hot' }],
    helps: [{ fn: 'cut-metal' }, { fn: 'mat' }, { fn: 'pry', of: 'light' }, { fn: 'cut-wire' }],
    steps: [
      'Let it cool. Lift the pipe to where it hung.',
      'Two loops of steel wire, twisted, from pipe to a solid bracket. Leave it a little play to grow when hot.',
      'A part that has torn off: carry it, or cut it away clear of axle and tyre.',
    ],
    cautions: [HOT, GRASS, UNDER_ON_WHEELS],
    after: [{ check: 'Wire', km: 25 }, { check: 'Wire, each evening' }],
    expedients: [],
    forbidden: ['Plastic ties, cord or straps: they melt and let it drop.'],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'EX-02',
    system: 'exhaust',
    title: 'Bandage an exhaust that blows ahead of the cab',
    outcome: 'limp',
    trust: 'T3',
    skill: 2,
    minutes: [20, 60],
    people: 1,
    needs: [
      { fn: 'patch', of: 'metal' },
      { fn: 'lash', of: 'hot' },
    ],
    helps: [{ fn: 'seal', of: 'clamp' }, { fn: 'clean' }, { fn: 'cut-metal' }, { fn: 'mat' }],
    steps: [
      "Cool. Brush the rust off a hand's width each side of the hole.",
      'Putty or paste if there is any, then sheet metal or an opened can round the pipe.',
      'Draw it tight with clamps or several turns of wire. It blows a little until soot seals it.',
    ],
    cautions: [HOT, GRASS, GAS, UNDER_ON_WHEELS, 'Cut sheet has edges like knives.'],
    after: [
      { check: 'Wire and sheet, heat on wires and hoses near by', km: 20 },
      { check: 'Again', km: 100 },
    ],
    expedients: [
      {
        id: 'EX-02/flange',
        title: 'Pull a loose flange together',
        trust: 'T4',
        needs: [
          { turn: 'exhaust-flange' },
          { fn: 'fastener', of: 'general' },
          { fn: 'free', of: 'penetrant' },
        ],
        steps: [
          'Only if it blows at a flange. Soak the nuts, or cut them off, and fit new bolts and a bandage of sheet as gasket.',
        ],
        limits: 'None, once it is dry of soot marks.',
        relativeChance: 0.5,
      },
      {
        id: 'EX-02/windows',
        title: 'Drive with every window open',
        trust: 'T2',
        speedKmh: 40,
        skill: 1,
        needs: [],
        steps: [
          'All windows open, blower on from outside, short stages. Headache or yawning: stop and get out.',
        ],
        limits: 'About 50 km. Never at idle or in the wind from behind.',
        relativeChance: 0.7,
      },
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'EX-02B',
    system: 'exhaust',
    title: 'Burn a blocked particulate filter clear',
    outcome: 'limp',
    trust: 'T3',
    skill: 2,
    minutes: [20, 60],
    people: 1,
    when: { all: ['particulate-filter'] },
    needs: [{ fn: 'read-codes' }],
    helps: [{ fn: 'fire' }, { fn: 'know' }],
    steps: [
      'Lamp on, power down after slow work. If the road allows, half an hour at a steady 60 km/h or more in a low gear often clears it.',
      'If not: bare ground, bonnet up, reader connected, forced burn as the manual says. Stay with it.',
      'Clear the code. Look at the oil level: it must not have risen.',
    ],
    cautions: [HOT, 'During the burn the tail pipe is hot enough to light grass metres away.', GAS],
    after: [{ check: 'Oil level, lamp', km: 50 }],
    expedients: [
      {
        id: 'EX-02B/drive',
        title: 'Drive it clear',
        trust: 'T2',
        skill: 1,
        needs: [],
        steps: ['Steady speed, low gear, half an hour, before the lamp turns red.'],
        limits: 'Only on a road that lets it run.',
        relativeChance: 0.5,
      },
    ],
    basis: COMMON_PRACTICE,
  },
];
