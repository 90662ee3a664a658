import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, pieces, proper, tool, upTo, withCare } from './row.ts';

/** Pliers and cutters: hands of steel. */
export const PLIERS: readonly CatalogueBelonging[] = [
  tool('PR-CO', 'combination pliers', '180 mm', { g: 250, mm: 180, ml: 190, price: 'P2' }, [
    proper('grip'),
    proper('cut-wire'),
    withCare('split-pin'),
    withCare('bend'),
    lastResort('clip-spring-band'),
    lastResort('crimp', 'light'),
  ]),
  tool('PR-LN', 'long-nose pliers', '200 mm', { g: 190, mm: 200, ml: 160, price: 'P2' }, [
    proper('grip', 'fine'),
    proper('split-pin'),
    lastResort('circlip'),
  ]),
  tool('PR-SC', 'diagonal side cutters', '170 mm', { g: 220, mm: 170, ml: 160, price: 'P2' }, [
    proper('cut-wire'),
    proper('split-pin'),
    withCare('cut-hose'),
    lastResort('strip'),
  ]),
  // Greatest hex between the jaws of pliers: our estimate for their length.
  tool('PR-WP', 'water-pump pliers', '250 mm', { g: 340, mm: 250, ml: 260, price: 'P2' }, [
    { kind: 'pliers', form: 'water-pump', toMm: 46, lengthMm: 250 },
    proper('grip', 'wide'),
    withCare('clip-spring-band'),
  ]),
  tool('PR-WP3', 'water-pump pliers, large', '300 mm', { g: 530, mm: 300, ml: 400, price: 'P2' }, [
    { kind: 'pliers', form: 'water-pump', toMm: 60, lengthMm: 300 },
    proper('grip', 'wide'),
    withCare('clip-spring-band'),
    withCare('turn-round', 'filter', 'rough'),
  ]),
  tool('PR-PW', 'parallel-jaw pliers', '250 mm, to 46 mm', { g: 540, mm: 250, ml: 300, price: 'P4' }, [
    { kind: 'adjustable', jaw: 'parallel', fromMm: 5, toMm: 46, lengthMm: 250 },
    proper('grip', 'wide'),
    proper('press', 'light'),
  ]),
  tool('PR-L25', 'locking pliers, curved jaw', '250 mm', { g: 560, mm: 250, ml: 330, price: 'P2' }, [
    { kind: 'pliers', form: 'locking', toMm: 42, lengthMm: 250 },
    proper('lock-grip'),
    proper('grip'),
    withCare('grip', 'wide'),
    withCare('pinch-hose'),
    upTo('clamp-c', 40, { of: 'quick', grade: 'with-care' }),
    withCare('extract', 'stud'),
    lastResort('extract', 'nut', 'hex'),
    lastResort('turn-round', 'rough'),
    lastResort('valve-stem'),
  ]),
  tool('PR-L18', 'locking pliers, curved jaw', '180 mm', { g: 340, mm: 180, ml: 200, price: 'P2' }, [
    { kind: 'pliers', form: 'locking', toMm: 32, lengthMm: 180 },
    proper('lock-grip'),
    proper('grip'),
    withCare('pinch-hose'),
    upTo('clamp-c', 30, { of: 'quick', grade: 'with-care' }),
    lastResort('extract', 'stud', 'nut', 'hex'),
  ]),
  tool('PR-LL', 'locking pliers, long nose', '190 mm', { g: 230, mm: 190, ml: 170, price: 'P2' }, [
    proper('lock-grip', 'fine'),
    proper('grip', 'fine'),
    withCare('split-pin'),
  ]),
  tool('PR-LC', 'locking C-clamp', '280 mm, opens 80 mm', { g: 820, mm: 280, ml: 700, price: 'P3' }, [
    upTo('clamp-c', 80, { of: 'quick' }),
    upTo('clamp-c', 80),
    withCare('lock-grip'),
    lastResort('pinch-hose'),
  ]),
  tool('PR-CR', 'circlip pliers, inside and outside', '10-50 mm', { g: 220, mm: 190, ml: 180, price: 'P2' }, [
    proper('circlip'),
  ]),
  tool('PR-EC', 'ear-clamp pincers', '', { g: 270, mm: 230, ml: 200, price: 'P2' }, [proper('clip-ear')]),
  tool('PR-HC', 'spring-band clamp pliers', '18-54 mm', { g: 330, mm: 250, ml: 280, price: 'P2' }, [
    proper('clip-spring-band'),
  ]),
  tool('PR-HP', 'hose pinch-off pliers, pair', 'to 25 mm', { g: 240, mm: 190, ml: 300, price: 'P2' }, [
    pieces(2, proper('pinch-hose')),
  ]),
  tool('PR-FE', 'fencing pliers', '260 mm', { g: 520, mm: 260, ml: 330, price: 'P2' }, [
    proper('grip'),
    proper('cut-wire'),
    withCare('strike-hard', 'light'),
    upTo('pry', 260, { of: 'light', grade: 'with-care' }),
    withCare('split-pin'),
  ]),
  // They also twist wire tight, but the wire itself is what lashes.
  tool('PR-EN', 'end nippers', '220 mm', { g: 340, mm: 220, ml: 220, price: 'P2' }, [
    proper('cut-wire'),
    withCare('clip-ear'),
    withCare('split-pin'),
  ]),
  tool(
    'MT-1',
    'pocket multi-tool',
    '100 mm closed',
    { g: 240, mm: 100, ml: 80, price: 'P4' },
    [
      proper('grip', 'light'),
      withCare('grip', 'fine'),
      proper('cut-hose'),
      withCare('cut-wire'),
      lastResort('strip'),
      lastResort('file'),
      { kind: 'driver', head: 'cross', sizes: ['cross 2'], lengthMm: 100 },
      { kind: 'driver', head: 'slot', sizes: ['slot 5 mm'], lengthMm: 100 },
    ],
    { marks: ['sharp'] },
  ),
  tool('BC-35', 'bolt cutter', '350 mm, 6 mm rod', { g: 1000, mm: 360, ml: 700, price: 'P2' }, [
    proper('cut-bolt'),
    proper('cut-wire'),
  ]),
];
