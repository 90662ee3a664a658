import type { JobCard, NeedCard } from '@waymend/planner/answer/card-answer';
import { describe, expect, it } from 'vitest';
import { leverRows, leverSizes } from '../../src/places/jobs/card/levers.ts';
import { afterwards } from '../../src/places/jobs/card/limits.ts';
import { neverLines, pieceRows } from '../../src/places/jobs/card/pieces.ts';

const bar = { id: 'bar', name: 'breaker bar, 470 mm', where: 'drawer' };
const socket = { id: 's22', name: 'deep socket, 22 mm', where: 'tool roll, slot 7' };

function need(what: string, more: Partial<NeedCard> = {}): NeedCard {
  return { what, kind: 'turn', size: 'measured', best: null, others: [], doNot: [], wanted: [], ...more };
}
function pull(kg: number, leverMm: number, how: 'hard' | 'strike' = 'hard') {
  return { torqueNm: 200, leverMm, newtons: kg * 10, kg, how, words: 'words' };
}

describe('the pieces of a card', () => {
  it('name each piece once, at the worst grade it is used at, with all it is for', () => {
    const rows = pieceRows([
      need('nut above', { best: { grade: 'proper', pieces: [bar, socket], pull: null } }),
      need('nut below', { best: { grade: 'with-care', pieces: [bar], pull: null } }),
      need('lift'),
    ]);
    expect(rows).toEqual([
      { piece: bar, grade: 'with-care', for: ['nut above', 'nut below'] },
      { piece: socket, grade: 'proper', for: ['nut above'] },
    ]);
  });

  it('say each thing that is forbidden once, without the word of the heading', () => {
    const never = neverLines({
      doNot: ['Heat on a gas shock.'],
      needs: [
        need('a', { doNot: ['Never: 11/16 in on 17 mm.'] }),
        need('b', { doNot: ['Never: 11/16 in on 17 mm.', 'Never: any jack alone.'] }),
      ],
    });
    expect(never).toEqual(['Heat on a gas shock.', '11/16 in on 17 mm.', 'Any jack alone.']);
  });
});

describe('the lever figure', () => {
  const torque = { nm: 130, from: 117, to: 143, recorded: true, basis: 'b', sentences: [], setting: null };
  const card: Pick<JobCard, 'needs' | 'torques'> = {
    needs: [
      need('Small nut, 13 mm, 60 N m', { best: { grade: 'proper', pieces: [bar], pull: pull(14, 446) } }),
      need('U-bolt, 22 mm, 200 N m', {
        best: { grade: 'proper', pieces: [bar, socket], pull: pull(46, 446) },
      }),
      need('lift', { kind: 'function', size: null }),
    ],
    torques: [{ ...torque, place: 'U-bolt, 22 mm' }],
  };

  it('puts the hardest nut first, and its tightening on the same lever', () => {
    const [hardest, next] = leverRows(card);
    expect(hardest?.what).toBe('U-bolt, 22 mm, 200 N m');
    expect(next?.tighten).toBeNull();
    // By hand: 130 N m / 0.446 m / 9.80665 m/s2 = 29.7 kg.
    expect(hardest?.tighten).toEqual({ nm: 130, kg: 30 });
  });

  it('draws lengths to one scale and pulls to another, and stays on the paper', () => {
    const short = leverSizes({ pull: pull(40, 200), tighten: { nm: 60, kg: 20 } });
    const long = leverSizes({ pull: pull(40, 600), tighten: null });
    expect(long.barPx / short.barPx).toBeCloseTo(3, 9);
    expect(short.undoPx / short.tightenPx).toBeCloseTo(2, 9);
    expect(leverSizes({ pull: pull(40, 1500), tighten: null }).barPx).toBeLessThanOrEqual(262);
  });
});

describe('the limits after a repair', () => {
  it('[M4] lie along the road in the order of their distance, with the end of trust among them', () => {
    const said = afterwards(
      {
        outcome: 'limp',
        trustedKm: 50,
        after: [
          { check: 'Again.', km: 300 },
          { check: 'Leaks?', km: null },
          { check: 'Nuts.', km: 50 },
          { check: 'Heat.', km: 50 },
        ],
      },
      'No further.',
    );
    expect(said.first).toEqual(['Leaks?']);
    expect(said.marks).toEqual([
      { km: 50, words: ['Nuts.', 'Heat.', 'No further.'], isEnd: true },
      { km: 300, words: ['Again.'], isEnd: false },
    ]);
  });

  it('[M4] a proper repair has no end of trust', () => {
    const { marks } = afterwards(
      { outcome: 'drive-on', trustedKm: null, after: [{ check: 'Nuts.', km: 50 }] },
      'x',
    );
    expect(marks).toEqual([{ km: 50, words: ['Nuts.'], isEnd: false }]);
  });
});
