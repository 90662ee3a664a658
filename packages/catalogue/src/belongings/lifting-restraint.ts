import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, pieces, proper, tool, upTo, withCare } from './row.ts';

/** Jacks, bases, stands, chocks, straps, chain, hoist. A jack lifts; only stands and a crossed crib support. */
export const LIFTING_RESTRAINT: readonly CatalogueBelonging[] = [
  tool(
    'JB-2',
    'hydraulic bottle jack',
    '2 t, 160-310 mm',
    { g: 2900, mm: 160, ml: 1900, price: 'P3' },
    [upTo('lift', 2000), withCare('press'), withCare('press', 'light'), withCare('spread')],
    { care: ['jacks'] },
  ),
  tool(
    'JB-4',
    'hydraulic bottle jack',
    '4 t, 190-370 mm',
    { g: 3900, mm: 190, ml: 2500, price: 'P3' },
    [upTo('lift', 4000), withCare('press'), withCare('press', 'light'), withCare('spread')],
    { care: ['jacks'] },
  ),
  tool(
    'JB-6',
    'hydraulic bottle jack, two-stage',
    '6 t, 210-480 mm',
    { g: 6200, mm: 215, ml: 4000, price: 'P4' },
    [
      upTo('lift', 6000),
      upTo('lift', 6000, { of: 'high' }),
      withCare('press'),
      withCare('press', 'light'),
      withCare('spread'),
    ],
    { care: ['jacks'] },
  ),
  tool(
    'JS-1',
    'scissor jack as issued',
    '1-1.5 t, 95-380 mm',
    { g: 3200, mm: 400, ml: 3500, price: 'P3' },
    [upTo('lift', 1000), withCare('press', 'light'), withCare('spread')],
    { care: ['jacks'] },
  ),
  // Reaches high and falls over easily: never better than with care, and only on a point made for it.
  tool(
    'JF-12',
    'farm jack',
    '1.2 m, 2-3 t',
    { g: 14000, mm: 1220, ml: 18000, price: 'P4' },
    [
      upTo('lift', 2000, { grade: 'with-care' }),
      upTo('lift', 2000, { of: 'high', grade: 'with-care' }),
      withCare('pull-heavy'),
      proper('spread'),
      upTo('clamp-c', 800, { grade: 'with-care' }),
      withCare('break-bead'),
    ],
    { care: ['jacks'] },
  ),
  tool('JBASE', 'jack base plate', '300 x 300 mm', { g: 1500, mm: 300, ml: 1800, price: 'P2' }, [
    proper('base'),
  ]),
  tool('JX-1', 'jack height spacers', '50-100 mm', { g: 900, mm: 100, ml: 500, price: 'P2' }, [
    proper('lift-adapt'),
  ]),
  tool(
    'ST-1',
    'jack stand, folding, single',
    '2-3 t, 280-420 mm',
    { g: 2700, mm: 300, ml: 5500, price: 'P3' },
    [upTo('support', 2000)],
  ),
  tool('ST-2', 'jack stands, pair', '2-3 t each', { g: 6200, mm: 300, ml: 12000, price: 'P3' }, [
    pieces(2, [upTo('support', 2000)]),
  ]),
  tool(
    'ST-6',
    'jack stand, heavy, single',
    '5-6 t, 390-600 mm',
    { g: 6500, mm: 390, ml: 12000, price: 'P3' },
    [upTo('support', 5000)],
  ),
  // Four blocks make one crib: two crossed layers of two. A single block on its end is no support.
  tool(
    'CRIB',
    'timber cribbing, four blocks',
    '100 x 100 x 400 mm each',
    { g: 8400, mm: 400, ml: 16000, price: 'P1' },
    [upTo('support', 2000), withCare('chock'), withCare('base'), proper('splint', 'wood')],
  ),
  tool('WC-2', 'wheel chocks, folding, pair', '', { g: 900, mm: 210, ml: 1200, price: 'P2' }, [
    pieces(2, proper('chock')),
  ]),
  tool(
    'SR-25',
    'ratchet strap',
    '25 mm x 5 m',
    { g: 550, mm: 150, ml: 500, price: 'P1' },
    [proper('restrain', 'light'), withCare('lash', 'strong')],
    { care: ['straps'] },
  ),
  tool(
    'SR-50',
    'ratchet strap',
    '50 mm x 6-8 m',
    { g: 2600, mm: 250, ml: 2200, price: 'P2' },
    [
      proper('restrain'),
      proper('restrain', 'light'),
      proper('lash', 'strong'),
      upTo('clamp-c', 300, { grade: 'with-care' }),
      lastResort('pull-heavy'),
    ],
    { care: ['straps'] },
  ),
  tool('CH-2', 'short chain with grab hook', '8 mm x 2 m', { g: 3000, mm: 200, ml: 1000, price: 'P3' }, [
    proper('restrain'),
    proper('restrain', 'hot'),
    proper('lash', 'hot', 'strong'),
    withCare('tow'),
  ]),
  tool('SH-S', 'bow shackle', '3.25 t', { g: 650, mm: 110, ml: 250, price: 'P2' }, [proper('tow', 'joint')]),
  tool(
    'SH-T',
    'soft shackle of rope',
    '8-10 mm',
    { g: 150, mm: 200, ml: 250, price: 'P3' },
    [proper('tow', 'joint'), withCare('lash', 'strong')],
    { care: ['straps'] },
  ),
  tool('TS-1', 'tow strap', '5-9 m', { g: 1800, mm: 300, ml: 2500, price: 'P3' }, [proper('tow')], {
    care: ['straps'],
  }),
  tool('HH-2', 'hand lever hoist', '1-2 t', { g: 3800, mm: 500, ml: 4500, price: 'P4' }, [
    proper('pull-heavy'),
    proper('hoist'),
    withCare('restrain'),
  ]),
];
