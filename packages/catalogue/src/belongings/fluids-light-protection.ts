import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, pieces, proper, supply, tool, withCare } from './row.ts';

/** Handling fluids, measuring, light, protection, carrying. */
export const FLUIDS_LIGHT_PROTECTION: readonly CatalogueBelonging[] = [
  tool(
    'OF-S',
    'oil-filter strap wrench',
    '60-110 mm, 3/8 or 1/2 in drive',
    { g: 280, mm: 130, ml: 250, price: 'P2' },
    [proper('turn-round', 'filter')],
  ),
  tool('GG-1', 'small grease gun with cartridge', '85-100 g', { g: 750, mm: 260, ml: 700, price: 'P2' }, [
    proper('grease'),
  ]),
  tool('FP-1', 'transfer pump for gear oil', '200-500 ml stroke', { g: 420, mm: 330, ml: 900, price: 'P2' }, [
    proper('pump-oil'),
    withCare('siphon'),
  ]),
  tool('FN-1', 'folding funnel with hose', '40 cm hose', { g: 120, mm: 160, ml: 250, price: 'P1' }, [
    proper('pour'),
    withCare('pump-oil'),
  ]),
  tool('DP-1', 'folding drain pan', '5 l', { g: 300, mm: 350, ml: 900, price: 'P1' }, [
    proper('catch'),
    withCare('keep-parts'),
  ]),
  tool('SI-H', 'siphon hose with hand pump', '2 m', { g: 280, mm: 250, ml: 700, price: 'P1' }, [
    proper('siphon'),
    withCare('bleed-fuel'),
    withCare('pump-oil'),
  ]),
  tool(
    'BK-1',
    'brake bleed bottle, clear tube, one-way valve',
    '7-11 mm screws',
    { g: 120, mm: 180, ml: 350, price: 'P1' },
    [proper('bleed-brake'), lastResort('bleed-fuel')],
    { care: ['rubber-goods'] },
  ),
  supply(
    'BK-P',
    'brake-line blanks',
    'M10x1 and M12x1',
    { g: 110, mm: 30, ml: 40, price: 'P2' },
    [proper('plug-line')],
    { stock: [{ of: 'P-BPLUG', units: 1 }] },
  ),
  tool('FT-1', 'tube cutter and flaring tool', '4.75-6 mm', { g: 900, mm: 200, ml: 700, price: 'P3' }, [
    proper('flare-tube'),
    proper('cut-tube'),
  ]),
  tool('VP-1', 'hand vacuum pump', '', { g: 650, mm: 220, ml: 900, price: 'P3' }, [
    proper('vacuum'),
    proper('bleed-brake'),
    withCare('bleed-fuel'),
  ]),
  tool('FG-1', 'feeler gauges', '0.05-1.0 mm', { g: 70, mm: 90, ml: 25, price: 'P1' }, [proper('feeler')]),
  tool('CA-1', 'plastic vernier caliper', '150 mm', { g: 45, mm: 230, ml: 60, price: 'P1' }, [
    proper('measure'),
  ]),
  tool('TM-1', 'tape measure', '3 m', { g: 120, mm: 60, ml: 90, price: 'P1' }, [proper('measure')]),
  tool(
    'IR-1',
    'infrared thermometer',
    '-50 to 500 C',
    { g: 160, mm: 170, ml: 350, price: 'P2' },
    [proper('temperature-reading')],
    { care: ['cells'] },
  ),
  tool('MG-1', 'telescopic magnet', '', { g: 50, mm: 180, ml: 20, price: 'P1' }, [proper('magnet')]),
  tool('MR-1', 'inspection mirror', '', { g: 60, mm: 180, ml: 40, price: 'P1' }, [proper('mirror')]),
  tool(
    'HL-1',
    'headlamp, rechargeable',
    '300 lm or more',
    { g: 110, mm: 80, ml: 160, price: 'P3' },
    [proper('light', 'hands-free')],
    { care: ['cells'], marks: ['lithium'] },
  ),
  tool(
    'WL-1',
    'magnetic work lamp',
    '500 lm or more',
    { g: 320, mm: 200, ml: 400, price: 'P3' },
    [proper('light', 'area'), withCare('light', 'hands-free')],
    { care: ['cells'], marks: ['lithium'] },
  ),
  supply('BA-6', 'spare cells', '6 small cells', { g: 140, mm: 52, ml: 50, price: 'P1' }, [proper('power')], {
    care: ['cells'],
    marks: ['battery'],
  }),
  tool('GL-M', "mechanic's gloves, pair", '', { g: 120, mm: 230, ml: 350, price: 'P2' }, [proper('hands')], {
    care: ['gloves'],
  }),
  supply(
    'GL-N',
    'nitrile gloves',
    '20',
    { g: 120, mm: 120, ml: 300, price: 'P1' },
    [proper('hands', 'fluid')],
    { care: ['gloves'] },
  ),
  tool('EY-1', 'safety goggles', '', { g: 80, mm: 170, ml: 700, price: 'P1' }, [proper('eyes')]),
  tool('MA-1', 'ground mat', '1.8 x 0.7 m', { g: 600, mm: 350, ml: 2500, price: 'P2' }, [proper('mat')]),
  tool('TP-2', 'light tarpaulin', '2 x 3 m', { g: 700, mm: 300, ml: 2000, price: 'P2' }, [
    proper('shade'),
    lastResort('catch'),
    withCare('mat'),
    withCare('keep-parts'),
    lastResort('glass-cover'),
  ]),
  // Vests make a person seen; they do not warn ahead.
  tool('HV-1', 'high-visibility vests, two', '', { g: 260, mm: 250, ml: 900, price: 'P1' }, [
    pieces(2, withCare('warn')),
  ]),
  tool('TR-1', 'warning triangle', '', { g: 900, mm: 440, ml: 1500, price: 'P2' }, [proper('warn')]),
  tool(
    'FE-1',
    'fire extinguisher, powder',
    '1 kg fill',
    { g: 1900, mm: 330, ml: 3500, price: 'P2' },
    [proper('fire')],
    { care: ['extinguisher'] },
  ),
  tool(
    'FE-2',
    'fire extinguisher, powder',
    '2 kg fill',
    { g: 3500, mm: 380, ml: 6500, price: 'P3' },
    [proper('fire')],
    { care: ['extinguisher'] },
  ),
  tool('FB-1', 'fire blanket', '1.2 x 1.2 m', { g: 500, mm: 220, ml: 1000, price: 'P2' }, [
    lastResort('fire'),
    withCare('pad'),
  ]),
  supply(
    'RG-1',
    'rags and hand cleaner',
    '',
    { g: 450, mm: 200, ml: 2000, price: 'P1' },
    [proper('clean'), withCare('pad'), withCare('tyre-lube'), lastResort('clean', 'degrease')],
    { marks: ['liquid'] },
  ),
  tool('TB-1', 'parts tray, zip bags, marker, tags', '', { g: 150, mm: 250, ml: 500, price: 'P1' }, [
    proper('keep-parts'),
    proper('mark'),
  ]),
  tool('TR-R', 'tool roll, canvas', 'about 40 pockets', { g: 900, mm: 500, ml: 2500, price: 'P3' }, [
    proper('carry'),
  ]),
  tool('TB-X', 'rigid case', 'about 30 l', { g: 3500, mm: 500, ml: 30000, price: 'P4' }, [proper('carry')]),
  tool(
    'MAN-1',
    'paper extract: torques, sizes, wiring, belt path',
    '',
    { g: 200, mm: 210, ml: 250, price: 'P1' },
    [proper('know')],
  ),
];
