import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, proper, tool, upTo, withCare } from './row.ts';

/** Testing, joining wire, starting and charging. */
export const ELECTRICAL: readonly CatalogueBelonging[] = [
  tool(
    'MM-1',
    'digital multimeter with leads',
    '600 V',
    { g: 320, mm: 170, ml: 420, price: 'P3' },
    [proper('test-voltage'), proper('test-continuity'), withCare('test-lamp')],
    { care: ['meters', 'cells'] },
  ),
  tool(
    'MM-C',
    'direct-current clamp meter',
    '200-600 A',
    { g: 330, mm: 220, ml: 450, price: 'P4' },
    [proper('test-current'), proper('test-voltage')],
    { care: ['meters', 'cells'] },
  ),
  tool(
    'TL-1',
    'test lamp, probe',
    '6-24 V',
    { g: 65, mm: 150, ml: 90, price: 'P1' },
    [proper('test-lamp'), withCare('test-continuity'), lastResort('test-voltage')],
    { care: ['meters'] },
  ),
  tool('JL-T', 'fused jumper wires, clip ends', '2 m, 15 A fuse', { g: 130, mm: 100, ml: 150, price: 'P1' }, [
    upTo('bridge-circuit', 15),
  ]),
  tool(
    'CR-R',
    'ratchet crimper, insulated terminals',
    '0.5-6 mm2',
    { g: 560, mm: 220, ml: 350, price: 'P3' },
    [proper('crimp'), proper('crimp', 'light')],
  ),
  tool('CR-P', 'crimping and stripping pliers', '0.5-6 mm2', { g: 230, mm: 210, ml: 190, price: 'P1' }, [
    withCare('crimp'),
    proper('crimp', 'light'),
    proper('strip'),
    proper('cut-wire'),
  ]),
  tool('CR-H', 'hammer lug crimper', '10-50 mm2', { g: 650, mm: 130, ml: 250, price: 'P2' }, [
    proper('crimp', 'lug'),
  ]),
  tool('WS-1', 'wire stripper', '0.5-6 mm2', { g: 170, mm: 180, ml: 180, price: 'P2' }, [
    proper('strip'),
    withCare('cut-wire'),
  ]),
  tool(
    'SI-G',
    'gas soldering iron with 20 g solder',
    '30-70 W',
    { g: 170, mm: 210, ml: 200, price: 'P3' },
    [proper('solder'), lastResort('free', 'heat')],
    { marks: ['fuel', 'hot-hazard'] },
  ),
  tool('BT-B', 'battery terminal brush', '', { g: 65, mm: 90, ml: 90, price: 'P1' }, [
    proper('clean-terminal'),
  ]),
  tool('OB-1', 'diagnostic code reader, generic protocol', '', { g: 150, mm: 110, ml: 200, price: 'P3' }, [
    proper('read-codes'),
  ]),
  tool(
    'JC-25',
    'booster cables, 25 mm2 copper',
    '3.0-3.5 m',
    { g: 2700, mm: 400, ml: 4500, price: 'P3' },
    [proper('start-boost', 'second-vehicle')],
    { care: ['jump-leads'] },
  ),
  tool(
    'JC-35',
    'booster cables, 35 mm2 copper',
    '4.5 m',
    { g: 4300, mm: 450, ml: 7000, price: 'P4' },
    [proper('start-boost', 'second-vehicle')],
    { care: ['jump-leads'] },
  ),
  tool(
    'JP-LI',
    'lithium jump pack',
    '400-1000 A class',
    { g: 900, mm: 190, ml: 750, price: 'P4' },
    [proper('start-boost', 'solo')],
    { care: ['jump-pack-lithium'], marks: ['lithium', 'battery'] },
  ),
  tool(
    'JP-PB',
    'lead-acid jump pack with small compressor',
    '17-22 Ah',
    { g: 8500, mm: 380, ml: 14000, price: 'P4' },
    [proper('start-boost', 'solo'), upTo('inflate', 10, { grade: 'with-care' })],
    { care: ['jump-pack-lead'], marks: ['battery'] },
  ),
  tool('CH-1', 'maintenance charger, mains or solar', '4-7 A', { g: 900, mm: 190, ml: 1400, price: 'P4' }, [
    proper('charge'),
  ]),
];
