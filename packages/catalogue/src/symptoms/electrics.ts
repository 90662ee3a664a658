import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

const RINGS = 'Rings and watch off. Smell or smoke: battery minus off at once, extinguisher at hand.';
const FUSE = ask('fuse', 'Look at its fuse, put in one of the same rating if it is blown.', {
  whole: 'It was whole',
  holds: 'It was blown, the new one holds',
  again: 'The new one blows at once',
});

/** Lamps, charge, and what does not work. */
export const ELECTRICS: readonly Symptom[] = [
  {
    id: 'no-charge',
    area: 'electrics',
    title: 'Charge lamp on, or the battery goes flat while driving',
    first: [RINGS],
    questions: [
      ask('belt', 'Engine off: is the belt that drives the alternator there and tight?', {
        gone: 'Gone or slack',
        there: 'There and tight',
      }),
      ask('mud', 'Was it in water or deep mud lately?', { yes: 'Yes', no: 'No' }),
      ask('lead', 'Look at the thick lead on the alternator and its fuse.', {
        broken: 'Off, burnt, or its fuse is blown',
        fine: 'Firm and whole',
      }),
      ask('volts', 'Engine at a fast idle: how many volts at the battery?', {
        low: 'Under 13',
        high: 'Over 15',
        right: '13 to 15, or no meter here',
      }),
    ],
    leads: [
      lead('v-belt-broken', { belt: 'gone' }),
      lead('multi-rib-belt-broken', { belt: 'gone' }),
      lead('pulley-seized', { belt: 'gone' }),
      lead('alternator-brushes', { belt: 'there', lead: 'fine', volts: 'low right' }),
      lead('alternator-dead', { belt: 'there', lead: 'fine' }),
      lead('starter-drowned', { belt: 'there', mud: 'yes', lead: 'fine', volts: 'low right' }),
      lead('charge-lead-off', { belt: 'there', lead: 'broken', volts: 'low right' }),
      lead('main-fuse-blown', { belt: 'there', lead: 'broken', volts: 'low right' }),
      lead('battery-terminal-loose', { belt: 'there', lead: 'fine', volts: 'right high' }),
      lead('battery-worn-out', { belt: 'there', lead: 'fine', volts: 'right' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'lights-dead',
    area: 'electrics',
    title: 'Lights dead or flickering',
    first: ['Off the road first: without lights nobody sees you. Warning triangle or flashing torch out.'],
    questions: [
      ask('which', 'Which lights?', {
        one: 'One lamp',
        pair: 'A pair, or one side',
        all: 'All of the vehicle',
        trailer: 'Only those of the trailer',
      }),
      FUSE,
      ask('shake', 'Wiggle its plug and earth: does it flicker?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('lamp-blown', { which: 'one', fuse: 'whole', shake: 'no' }),
      lead('lights-dead', { which: 'one pair all', fuse: 'whole' }),
      lead('fuse-blown', { which: 'one pair all', fuse: 'holds', shake: 'no' }),
      lead('relay-dead', { which: 'pair all', fuse: 'whole', shake: 'no' }),
      lead('wire-chafed', { which: 'one pair', fuse: 'whole again' }),
      lead('wire-shorted', { which: 'one pair all', fuse: 'again' }),
      lead('main-fuse-blown', { which: 'all', fuse: 'whole', shake: 'no' }),
      lead('battery-terminal-loose', { which: 'all', fuse: 'whole', shake: 'yes' }),
      lead('trailer-lights-dead', { which: 'trailer' }),
      lead('lamp-bracket-loose', { which: 'one', fuse: 'whole', shake: 'yes' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'thing-dead',
    area: 'electrics',
    title: 'One thing does not work',
    first: [RINGS, 'A fuse is never replaced by a larger one, foil or wire.'],
    questions: [
      ask('what', 'What does not work?', {
        camp: 'Fridge, radio, compressor or a socket',
        wipers: 'Wipers',
        window: 'A window',
        winch: 'The winch',
        second: 'The second battery does not charge, or is always flat',
        other: 'Something else',
      }),
      FUSE,
      ask('water', 'Was it in water or mud?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('accessory-dead', { what: 'camp' }),
      lead('wipers-dead', { what: 'wipers' }),
      lead('window-dropped', { what: 'window' }),
      lead('winch-dead', { what: 'winch' }),
      lead('second-battery-fault', { what: 'second' }),
      lead('fuse-blown', { what: 'camp wipers window other', fuse: 'holds' }),
      lead('relay-dead', { what: 'wipers window other', fuse: 'whole' }),
      lead('wire-chafed', { what: 'camp second other', fuse: 'whole again' }),
      lead('wire-shorted', { what: 'camp wipers window second other', fuse: 'again' }),
      lead('connector-wet', { what: 'camp window winch other', fuse: 'whole', water: 'yes' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'all-dead',
    area: 'electrics',
    title: 'Everything electric went dead while driving',
    first: [RINGS, 'Roll out of the way while it rolls: brake and steering help fade.'],
    questions: [
      ask('back', 'Does it come back when you move the battery clamps?', {
        yes: 'Yes, or it flickers',
        no: 'No',
      }),
      ask('burnt', 'Is anything hot, melted or smoking?', { yes: 'Yes', no: 'No' }),
    ],
    leads: [
      lead('battery-terminal-loose', { back: 'yes', burnt: 'no' }),
      lead('battery-terminal-broken', { back: 'yes', burnt: 'no' }),
      lead('battery-cable-broken', { burnt: 'no' }),
      lead('main-fuse-blown', { back: 'no' }),
      lead('wire-shorted', { burnt: 'yes' }),
      lead('battery-shorted', { back: 'no', burnt: 'no' }),
      lead('alternator-dead', { back: 'no', burnt: 'no' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'warning-lamp',
    area: 'electrics',
    title: 'A warning lamp came on',
    first: ['Red means stop now: oil, heat, brakes. The handbook of the vehicle names every lamp.'],
    questions: [
      ask('which', 'Which lamp?', {
        engine: 'Engine, yellow',
        flashing: 'Engine, flashing, and it runs badly',
        stability: 'Anti-lock or stability, yellow',
        brake: 'Brake, red',
        filter: 'Particulate filter',
        glow: 'Glow coil, flashing',
        key: 'Key or padlock',
      }),
      ask('drives', 'How does it drive?', { weak: 'Weak, it does not rev', normal: 'As always' }),
    ],
    leads: [
      lead('limp-home', { which: 'engine glow', drives: 'weak' }),
      lead('sensor-plug-bad', { which: 'engine flashing glow' }),
      lead('boost-hose-off', { which: 'engine', drives: 'weak' }),
      lead('plug-or-coil-dead', { which: 'flashing engine' }),
      lead('brake-electronics-lamp', { which: 'stability', drives: 'normal' }),
      lead('hub-unit-failed', { which: 'stability' }),
      lead('brake-pads-gone', { which: 'brake' }),
      lead('brake-pipe-broken', { which: 'brake' }),
      lead('brake-hose-burst', { which: 'brake' }),
      lead('wheel-cylinder-leaks', { which: 'brake' }),
      lead('parking-brake-stuck', { which: 'brake' }),
      lead('particulate-filter-blocked', { which: 'filter' }),
      lead('glow-plugs-dead', { which: 'glow', drives: 'normal' }),
      lead('key-not-recognised', { which: 'key' }),
      lead('control-unit-dead', { which: 'engine flashing stability', drives: 'weak' }),
      lead('injection-fault', { which: 'engine flashing', drives: 'weak' }),
    ],
    basis: COMMON_PRACTICE,
  },
];
