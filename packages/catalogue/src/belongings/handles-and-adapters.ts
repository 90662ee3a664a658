import type { CatalogueBelonging } from '../shape/belonging.ts';
import type { Offer } from '../shape/offer.ts';
import type { SquareDrive } from '../shape/words.ts';
import type { Measures } from './row.ts';
import { FROM_GEOMETRY, proper, tool, upTo, withCare } from './row.ts';

type HandleForm = Extract<Offer, { kind: 'handle' }>['form'];

/** A handle's geometry; `maxNm` where its own limit is below that of its square drive. */
function turns(form: HandleForm, drive: SquareDrive, lengthMm: number, maxNm?: number): Offer {
  return { kind: 'handle', form, drive, lengthMm, ...(maxNm === undefined ? {} : { maxNm }) };
}

/** An extension bar; straight unless a wobble end is said. */
function extension(id: string, drive: SquareDrive, measures: Measures): CatalogueBelonging {
  const bar: Offer = { kind: 'extension', drive, lengthMm: measures.mm };
  const size = `${measures.mm} mm, ${drive} drive`;
  return tool(id, 'extension bar', size, measures, [bar], { basis: FROM_GEOMETRY });
}

/** A drive adapter: a handle of one square turns sockets of another. */
function adapter(id: string, handle: SquareDrive, onto: SquareDrive, measures: Measures): CatalogueBelonging {
  const step: Offer = { kind: 'adapter', handle, socket: onto };
  return tool(id, 'drive adapter', `${handle} handle to ${onto} socket`, measures, [step]);
}

/** What turns a socket, lengthens it, bends round a corner or changes its drive. */
export const HANDLES_AND_ADAPTERS: readonly CatalogueBelonging[] = [
  tool('RT-4', 'ratchet', '1/4 in drive, 140 mm', { g: 120, mm: 140, ml: 60, price: 'P2' }, [
    turns('ratchet', '1/4 in', 140, 30),
  ]),
  tool('RT-3', 'ratchet', '3/8 in drive, 200 mm', { g: 290, mm: 200, ml: 130, price: 'P3' }, [
    turns('ratchet', '3/8 in', 200, 100),
  ]),
  tool(
    'RT-3F',
    'ratchet, long, flexible head',
    '3/8 in drive, 280 mm',
    { g: 380, mm: 280, ml: 200, price: 'P3' },
    [turns('ratchet', '3/8 in', 280, 100)],
  ),
  tool('RT-2', 'ratchet', '1/2 in drive, 260 mm', { g: 580, mm: 260, ml: 260, price: 'P3' }, [
    turns('ratchet', '1/2 in', 260, 250),
  ]),
  tool('BB-3', 'breaker bar', '3/8 in drive, 250 mm', { g: 300, mm: 250, ml: 120, price: 'P2' }, [
    turns('bar', '3/8 in', 250),
  ]),
  tool('BB-2S', 'breaker bar, short', '1/2 in drive, 390 mm', { g: 720, mm: 390, ml: 250, price: 'P2' }, [
    turns('bar', '1/2 in', 390),
  ]),
  tool('BB-2M', 'breaker bar', '1/2 in drive, 470 mm', { g: 980, mm: 470, ml: 330, price: 'P3' }, [
    turns('bar', '1/2 in', 470),
  ]),
  tool('BB-2L', 'breaker bar, long', '1/2 in drive, 600 mm', { g: 1500, mm: 600, ml: 480, price: 'P3' }, [
    turns('bar', '1/2 in', 600),
  ]),
  tool('BB-6', 'breaker bar', '3/4 in drive, 900 mm', { g: 4200, mm: 900, ml: 1500, price: 'P4' }, [
    turns('bar', '3/4 in', 900),
  ]),
  tool(
    'TP-1',
    'slide-over tube',
    '30 mm outside, 3 mm wall, 600 mm',
    { g: 1200, mm: 600, ml: 450, price: 'P1' },
    [{ kind: 'lever-tube', lengthMm: 600 }],
  ),
  tool('SB-2', 'sliding T-bar', '1/2 in drive, 300 mm', { g: 380, mm: 300, ml: 110, price: 'P2' }, [
    turns('t-bar', '1/2 in', 300),
  ]),
  tool('SPH-4', 'spinner handle', '1/4 in drive, 150 mm', { g: 90, mm: 150, ml: 70, price: 'P1' }, [
    turns('spinner', '1/4 in', 150),
  ]),
  tool(
    'CB-W',
    'telescopic wheel brace',
    '17/19/21/22 mm, 1/2 in drive',
    { g: 900, mm: 530, ml: 450, price: 'P2' },
    [
      { kind: 'brace', sizes: ['17 mm', '19 mm', '21 mm', '22 mm'], depth: 'deep', leverMm: 530 },
      turns('bar', '1/2 in', 530),
    ],
  ),
  // A cross brace is worked from both sides: a foot on one arm and a pull on the other turn as hard as the body on
  // a lever of 0.3 m, more than its own half length and less than the whole.
  tool('XB-4', 'cross brace', '17/19/21/22 mm', { g: 1500, mm: 400, ml: 2500, price: 'P2' }, [
    { kind: 'brace', sizes: ['17 mm', '19 mm', '21 mm', '22 mm'], depth: 'deep', leverMm: 320 },
  ]),
  tool('XB-F', 'folding cross brace', '17/19/21/22 mm', { g: 1300, mm: 370, ml: 700, price: 'P2' }, [
    { kind: 'brace', sizes: ['17 mm', '19 mm', '21 mm', '22 mm'], depth: 'deep', leverMm: 300 },
  ]),
  // A tube with a hexagon in each end and a loose bar through it, pushed over to one side.
  tool(
    'WB-T',
    'truck wheel brace, tube with bar',
    '27/32 mm, bar 750 mm',
    { g: 3400, mm: 750, ml: 1200, price: 'P3' },
    [{ kind: 'brace', sizes: ['27 mm', '32 mm'], depth: 'deep', leverMm: 700 }],
    { basis: FROM_GEOMETRY },
  ),
  tool(
    'TW-2',
    'torque wrench, click',
    '40-200 N m, 1/2 in drive',
    { g: 1400, mm: 480, ml: 700, price: 'P4' },
    [turns('torque', '1/2 in', 480, 200), upTo('torque-set', 200, { from: 40 })],
    { care: ['torque-wrench'] },
  ),
  tool(
    'TW-3',
    'torque wrench, click',
    '10-60 N m, 3/8 in drive',
    { g: 800, mm: 330, ml: 400, price: 'P4' },
    [turns('torque', '3/8 in', 330, 60), upTo('torque-set', 60, { from: 10 })],
    { care: ['torque-wrench'] },
  ),
  // Its scale starts at nothing; it is to be believed from a fifth of its greatest torque (standards/torque-wrench-range).
  tool(
    'TW-B',
    'torque wrench, beam',
    '0-200 N m, 1/2 in drive',
    { g: 850, mm: 460, ml: 450, price: 'P3' },
    [turns('torque', '1/2 in', 460, 200), upTo('torque-set', 200, { from: 40 })],
    { care: ['torque-wrench'] },
  ),
  tool(
    'IW-B',
    'battery impact wrench, compact, one battery',
    '250 N m, 1/2 in drive',
    { g: 2100, mm: 220, ml: 3200, price: 'P5' },
    [turns('impact', '1/2 in', 220, 250), proper('shock-loosen')],
    { care: ['power-tool-battery'], marks: ['lithium', 'battery'] },
  ),
  // Works only under a hammer, which the jobs that shock a screw loose ask for as well.
  tool('ID-1', 'struck impact driver with bits', '1/2 in drive', { g: 560, mm: 150, ml: 300, price: 'P3' }, [
    withCare('shock-loosen'),
    { kind: 'driver', head: 'cross', sizes: ['cross 2', 'cross 3'], lengthMm: 150 },
    { kind: 'driver', head: 'slot', sizes: ['slot 6.5 mm', 'slot 8 mm'], lengthMm: 150 },
  ]),
  extension('EX4-50', '1/4 in', { g: 32, mm: 50, ml: 13, price: 'P1' }),
  extension('EX4-100', '1/4 in', { g: 62, mm: 100, ml: 26, price: 'P1' }),
  extension('EX4-150', '1/4 in', { g: 93, mm: 150, ml: 38, price: 'P1' }),
  extension('EX3-75', '3/8 in', { g: 77, mm: 75, ml: 25, price: 'P1' }),
  extension('EX3-125', '3/8 in', { g: 120, mm: 125, ml: 42, price: 'P1' }),
  extension('EX3-250', '3/8 in', { g: 220, mm: 250, ml: 85, price: 'P1' }),
  extension('EX2-75', '1/2 in', { g: 140, mm: 75, ml: 40, price: 'P1' }),
  extension('EX2-125', '1/2 in', { g: 200, mm: 125, ml: 67, price: 'P1' }),
  extension('EX2-250', '1/2 in', { g: 360, mm: 250, ml: 130, price: 'P1' }),
  extension('EX2-450', '1/2 in', { g: 620, mm: 450, ml: 240, price: 'P1' }),
  tool('UJ-4', 'universal joint', '1/4 in drive', { g: 28, mm: 38, ml: 9, price: 'P1' }, [
    { kind: 'joint', drive: '1/4 in' },
  ]),
  tool('UJ-3', 'universal joint', '3/8 in drive', { g: 70, mm: 50, ml: 22, price: 'P2' }, [
    { kind: 'joint', drive: '3/8 in' },
  ]),
  tool('UJ-2', 'universal joint', '1/2 in drive', { g: 160, mm: 70, ml: 55, price: 'P2' }, [
    { kind: 'joint', drive: '1/2 in' },
  ]),
  adapter('AD-43', '1/4 in', '3/8 in', { g: 22, mm: 26, ml: 7, price: 'P1' }),
  adapter('AD-34', '3/8 in', '1/4 in', { g: 24, mm: 28, ml: 9, price: 'P1' }),
  adapter('AD-32', '3/8 in', '1/2 in', { g: 48, mm: 36, ml: 17, price: 'P1' }),
  adapter('AD-23', '1/2 in', '3/8 in', { g: 55, mm: 36, ml: 20, price: 'P1' }),
  adapter('AD-26', '1/2 in', '3/4 in', { g: 150, mm: 50, ml: 55, price: 'P2' }),
  adapter('AD-62', '3/4 in', '1/2 in', { g: 220, mm: 55, ml: 75, price: 'P2' }),
];
