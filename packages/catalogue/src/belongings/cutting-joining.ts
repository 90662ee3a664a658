import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, proper, tool, withCare } from './row.ts';

/** Saws, drills, rivets and welding. */
export const CUTTING_JOINING: readonly CatalogueBelonging[] = [
  tool('SW-HF', 'hacksaw, full frame, 3 blades', '300 mm', { g: 560, mm: 420, ml: 500, price: 'P2' }, [
    proper('cut-metal'),
    proper('cut-metal', 'slow'),
    withCare('cut-bolt'),
    withCare('cut-hose'),
    lastResort('cut-wood'),
  ]),
  tool('SW-HJ', 'pad-handle hacksaw, 3 blades', '250-300 mm', { g: 170, mm: 300, ml: 120, price: 'P1' }, [
    withCare('cut-metal'),
    proper('cut-metal', 'slow'),
    lastResort('cut-bolt'),
    withCare('cut-hose'),
  ]),
  tool(
    'SW-WD',
    'folding wood saw',
    '210-270 mm',
    { g: 270, mm: 250, ml: 200, price: 'P2' },
    [proper('cut-wood')],
    { marks: ['sharp'] },
  ),
  tool(
    'AX-1',
    'hatchet',
    '600 g head',
    { g: 950, mm: 380, ml: 900, price: 'P3' },
    [proper('cut-wood'), withCare('strike-hard', 'light', 'heavy')],
    { marks: ['sharp'] },
  ),
  tool(
    'GR-B',
    'battery angle grinder, one battery, 4 discs',
    '115-125 mm',
    { g: 2700, mm: 330, ml: 4200, price: 'P5' },
    [proper('cut-metal', 'fast', 'slow'), proper('cut-bolt'), withCare('sand'), withCare('clean', 'rub')],
    { care: ['power-tool-battery', 'cutting-discs'], marks: ['lithium', 'battery', 'hot-hazard'] },
  ),
  tool(
    'DR-B',
    'battery drill, one battery',
    '10-13 mm chuck',
    { g: 1600, mm: 200, ml: 2600, price: 'P4' },
    [proper('turn-drill'), proper('turn-drill', 'slow')],
    { care: ['power-tool-battery'], marks: ['lithium', 'battery'] },
  ),
  tool('DR-H', 'hand drill', 'to 8 mm', { g: 900, mm: 320, ml: 1200, price: 'P3' }, [
    withCare('turn-drill'),
    proper('turn-drill', 'slow'),
  ]),
  tool('DR-BT', 'twist drills', '3, 4, 5, 6, 8 and 10 mm', { g: 160, mm: 130, ml: 60, price: 'P2' }, [
    proper('drill-bit'),
  ]),
  tool('RV-1', 'rivet tool with 60 rivets', '3.2-4.8 mm', { g: 650, mm: 250, ml: 450, price: 'P2' }, [
    proper('join-sheet'),
  ]),
  tool(
    'WL-B',
    'weld lead kit for two batteries, rods, filter mask',
    '2.5-3.2 mm rod',
    { g: 4500, mm: 350, ml: 6000, price: 'P4' },
    [proper('weld')],
    { marks: ['hot-hazard'] },
  ),
];
