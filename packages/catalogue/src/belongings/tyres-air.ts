import type { CatalogueBelonging } from '../shape/belonging.ts';
import { pieces, proper, supply, tool, upTo, withCare } from './row.ts';

/** Plugs, patches, valves, levers, air. */
export const TYRES_AIR: readonly CatalogueBelonging[] = [
  tool(
    'TK-P',
    'tread plug kit: rasp, inserter, 30 strings, cement',
    '',
    { g: 650, mm: 200, ml: 700, price: 'P2' },
    [proper('plug')],
    { care: ['plug-kit', 'rubber-solution'], marks: ['sharp'] },
  ),
  tool(
    'TK-M',
    'mushroom plug set with lever',
    '',
    { g: 900, mm: 210, ml: 900, price: 'P4' },
    [proper('plug', 'strong')],
    { care: ['plug-kit', 'rubber-solution'] },
  ),
  tool(
    'TK-I',
    'inside patches, rasp, cement, roller',
    '20 patches',
    { g: 350, mm: 160, ml: 350, price: 'P2' },
    [proper('patch-tyre'), withCare('patch', 'tyre-carcass')],
    { care: ['rubber-solution'] },
  ),
  tool(
    'VT-C',
    'valve-core driver with 6 cores',
    '',
    { g: 40, mm: 70, ml: 25, price: 'P1' },
    [proper('valve-core'), proper('valve-core', 'part'), withCare('deflate')],
    { care: ['rubber-goods'] },
  ),
  tool('VT-4', 'four-way valve tool', '', { g: 45, mm: 60, ml: 25, price: 'P1' }, [
    proper('valve-core'),
    proper('chase-thread', 'valve'),
    withCare('deflate'),
  ]),
  tool('VT-P', 'valve stem puller', '', { g: 260, mm: 300, ml: 200, price: 'P2' }, [proper('valve-stem')]),
  supply(
    'VS-4',
    'tyre valves: four snap-in, two clamp-in',
    '',
    { g: 110, mm: 50, ml: 90, price: 'P1' },
    [proper('valve-stem', 'part'), proper('valve-core', 'part')],
    { stock: [{ of: 'P-VALVE', units: 4 }], care: ['rubber-goods'] },
  ),
  tool('TL-2', 'tyre levers, pair', '500-600 mm', { g: 2600, mm: 600, ml: 1200, price: 'P3' }, [
    pieces(2, proper('lever-tyre')),
    upTo('pry', 500, { of: 'light' }),
    upTo('pry', 500, { of: 'heavy', grade: 'with-care' }),
  ]),
  tool('BB-T', 'bead breaker, lever and clamp', '', { g: 5500, mm: 700, ml: 6500, price: 'P4' }, [
    proper('break-bead'),
  ]),
  supply(
    'BL-1',
    'bead lubricant',
    '250 ml',
    { g: 270, mm: 100, ml: 280, price: 'P1' },
    [proper('tyre-lube')],
    { marks: ['liquid'] },
  ),
  tool(
    'CP-S',
    '12 V compressor, single, battery clips',
    '30-40 l/min',
    { g: 2600, mm: 230, ml: 4500, price: 'P4' },
    [upTo('inflate', 30)],
    { care: ['compressor'] },
  ),
  tool(
    'CP-M',
    '12 V compressor, single, large',
    '70-90 l/min',
    { g: 5200, mm: 300, ml: 8500, price: 'P4' },
    [upTo('inflate', 70)],
    { care: ['compressor'] },
  ),
  tool(
    'CP-T',
    '12 V compressor, twin, portable',
    '130-170 l/min',
    { g: 9000, mm: 360, ml: 14000, price: 'P6' },
    [upTo('inflate', 130)],
    { care: ['compressor'] },
  ),
  tool(
    'PU-F',
    'foot pump',
    '',
    { g: 1700, mm: 420, ml: 3500, price: 'P2' },
    [upTo('inflate', 10, { grade: 'last-resort' })],
    { care: ['rubber-goods'] },
  ),
  tool('GA-1', 'tyre gauge for low pressures', '0-4 bar', { g: 120, mm: 100, ml: 120, price: 'P2' }, [
    proper('gauge'),
  ]),
  tool('DF-2', 'tyre deflator', '', { g: 90, mm: 70, ml: 60, price: 'P2' }, [proper('deflate')]),
];
