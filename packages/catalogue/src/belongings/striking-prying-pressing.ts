import type { CatalogueBelonging } from '../shape/belonging.ts';
import { lastResort, proper, supply, tool, upTo, withCare } from './row.ts';

/** Hammers, punches, bars, extractors, pullers, clamps, threads. */
export const STRIKING_PRYING_PRESSING: readonly CatalogueBelonging[] = [
  tool('HM-45', 'ball-peen hammer', '450 g head', { g: 620, mm: 330, ml: 450, price: 'P2' }, [
    proper('strike-hard'),
    proper('strike-hard', 'light'),
    lastResort('strike-hard', 'heavy'),
  ]),
  tool('HM-90', "engineer's hammer", '900-1000 g head', { g: 1300, mm: 280, ml: 700, price: 'P2' }, [
    proper('strike-hard'),
    proper('strike-hard', 'light', 'heavy'),
  ]),
  tool('HM-SF', 'soft-face hammer', '35 mm face', { g: 450, mm: 290, ml: 450, price: 'P2' }, [
    proper('strike-soft'),
  ]),
  tool(
    'HM-RM',
    'rubber mallet',
    '450 g head',
    { g: 620, mm: 310, ml: 900, price: 'P1' },
    [proper('strike-soft')],
    { care: ['rubber-goods'] },
  ),
  tool('PN-SET', 'pin punches', '3, 4, 5, 6 and 8 mm', { g: 330, mm: 150, ml: 160, price: 'P2' }, [
    proper('drive-pin'),
    withCare('drive-drift'),
  ]),
  tool('PN-DR', 'brass drift', '16 x 200 mm', { g: 340, mm: 200, ml: 60, price: 'P2' }, [
    proper('drive-drift'),
  ]),
  tool('PN-CP', 'centre punch', '', { g: 65, mm: 120, ml: 20, price: 'P1' }, [
    proper('mark'),
    lastResort('drive-pin'),
  ]),
  tool('CH-20', 'cold chisel', '20 x 200 mm', { g: 290, mm: 200, ml: 90, price: 'P1' }, [proper('chisel')]),
  tool('NS-1', 'nut splitter', 'to 22 mm', { g: 420, mm: 120, ml: 220, price: 'P2' }, [
    proper('extract', 'nut'),
  ]),
  tool('EX-SET', 'fluted stud and screw extractors', 'M6-M14', { g: 180, mm: 110, ml: 90, price: 'P2' }, [
    proper('extract', 'stud'),
  ]),
  // They bite one way only, so they undo and never do up: not sockets.
  tool(
    'EX-SK',
    'grip sockets for rounded hexes',
    '10, 13, 14, 17 and 19 mm, 3/8 in drive',
    { g: 320, mm: 32, ml: 180, price: 'P3' },
    [proper('extract', 'hex'), withCare('extract', 'nut')],
  ),
  tool(
    'EX-WN',
    'twist socket for wheel nuts',
    '17-22 mm, 1/2 in drive',
    { g: 350, mm: 60, ml: 140, price: 'P2' },
    [proper('extract', 'wheel-nut')],
  ),
  tool('PB-30', 'pry bar, heel end', '300 mm', { g: 320, mm: 300, ml: 140, price: 'P1' }, [
    upTo('pry', 300),
    upTo('pry', 300, { of: 'light' }),
  ]),
  tool('PB-45', 'pry bar', '450 mm', { g: 700, mm: 450, ml: 280, price: 'P2' }, [
    upTo('pry', 450),
    upTo('pry', 450, { of: 'light' }),
    upTo('pry', 450, { of: 'heavy', grade: 'with-care' }),
    withCare('lever-tyre'),
  ]),
  tool('PB-60', 'pry bar and tyre lever', '600 mm', { g: 1400, mm: 600, ml: 480, price: 'P2' }, [
    upTo('pry', 600),
    upTo('pry', 600, { of: 'light' }),
    upTo('pry', 600, { of: 'heavy' }),
    proper('lever-tyre'),
    withCare('bend'),
  ]),
  tool('SC-BJ', 'ball-joint separator, scissor', '20-24 mm jaw', { g: 900, mm: 150, ml: 550, price: 'P3' }, [
    proper('separate-taper'),
  ]),
  tool('SC-PF', 'taper fork', '', { g: 1200, mm: 300, ml: 500, price: 'P2' }, [
    withCare('separate-taper', 'destructive'),
  ]),
  tool('PL-2', 'two-leg puller', '100 mm', { g: 950, mm: 170, ml: 700, price: 'P3' }, [proper('pull')]),
  tool('PS-UJ', 'press frame for joints', 'to 100 mm', { g: 2800, mm: 260, ml: 2200, price: 'P3' }, [
    proper('press'),
    proper('press', 'light'),
  ]),
  tool('GC-75', 'G-clamp', '75 mm', { g: 750, mm: 150, ml: 500, price: 'P1' }, [
    upTo('clamp-c', 75),
    proper('press', 'light'),
    lastResort('pinch-hose'),
  ]),
  tool('GC-100', 'G-clamp', '100 mm', { g: 1400, mm: 200, ml: 900, price: 'P2' }, [
    upTo('clamp-c', 100),
    withCare('press'),
    proper('press', 'light'),
    lastResort('pinch-hose'),
  ]),
  tool('GC-150', 'G-clamp', '150 mm', { g: 2300, mm: 270, ml: 1600, price: 'P2' }, [
    upTo('clamp-c', 150),
    withCare('press'),
    proper('press', 'light'),
  ]),
  tool('FL-HR', 'half-round file with handle', '200 mm', { g: 280, mm: 310, ml: 160, price: 'P1' }, [
    proper('file'),
    lastResort('cut-metal', 'slow'),
    withCare('clean', 'rub'),
  ]),
  tool('FL-TH', 'thread file', 'metric pitches', { g: 90, mm: 220, ml: 25, price: 'P2' }, [
    proper('chase-thread', 'metric'),
    withCare('chase-thread', 'wheel-stud'),
  ]),
  tool(
    'TD-SET',
    'taps and dies with wrench, short set',
    'M6-M12',
    { g: 1100, mm: 220, ml: 900, price: 'P3' },
    [proper('chase-thread', 'metric'), proper('cut-thread')],
  ),
  tool('TD-WN', 'wheel-stud chaser', 'M12x1.5 and M14x1.5', { g: 160, mm: 60, ml: 50, price: 'P2' }, [
    proper('chase-thread', 'wheel-stud'),
  ]),
  tool('WB-S', 'wire brush, narrow', '', { g: 90, mm: 200, ml: 130, price: 'P1' }, [
    proper('clean'),
    proper('clean', 'rub'),
    withCare('clean-terminal'),
  ]),
  supply('EM-1', 'abrasive cloth, 6 sheets', '80-240 grit', { g: 60, mm: 230, ml: 40, price: 'P1' }, [
    proper('clean', 'rub'),
    proper('sand'),
    withCare('clean', 'contacts'),
    withCare('clean-terminal'),
    lastResort('file'),
  ]),
];
