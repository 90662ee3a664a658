import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { VOCABULARY } from '@waymend/catalogue/vocabulary';
import { SHOWN_WORDS } from '@waymend/catalogue/wording';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../src/words/wording.ts';

describe('whole names in British and American words', () => {
  // Common practice, no source.
  it.each([
    ['combination wrench', 'combination spanner', 'combination wrench'],
    ['Wrenches, combination', 'Spanners, combination', 'Wrenches, combination'],
    ['torque wrench, click', 'torque wrench, click', 'torque wrench, click'],
    ['oil-filter strap wrench', 'oil-filter strap wrench', 'oil-filter strap wrench'],
    [
      'taps and dies with wrench, short set',
      'taps and dies with wrench, short set',
      'taps and dies with wrench, short set',
    ],
    ['jack stands, pair', 'axle stands, pair', 'jack stands, pair'],
    ['Borrow a jack stand', 'Borrow an axle stand', 'Borrow a jack stand'],
    ['tyre levers, pair', 'tyre levers, pair', 'tire irons, pair'],
    ['Wheel nuts', 'Wheel nuts', 'Lug nuts'],
    ['twist socket for wheel nuts', 'twist socket for wheel nuts', 'twist socket for lug nuts'],
    [
      'Hold a bonnet shut whose latch has failed',
      'Hold a bonnet shut whose latch has failed',
      'Hold a hood shut whose latch has failed',
    ],
    [
      'circlip pliers, inside and outside',
      'circlip pliers, inside and outside',
      'snap-ring pliers, inside and outside',
    ],
    [
      'split pins, R-clips and circlips',
      'split pins, R-clips and circlips',
      'cotter pins, R-clips and snap rings',
    ],
    [
      'Replace a broken earth strap or battery cable',
      'Replace a broken earth strap or battery cable',
      'Replace a broken ground strap or battery cable',
    ],
    [
      'Use half of the booster cables as an earth',
      'Use half of the booster cables as an earth',
      'Use half of the jumper cables as a ground',
    ],
    [
      'Gearbox or transfer box broken',
      'Gearbox or transfer box broken',
      'Transmission or transfer case broken',
    ],
    ['Fit a spare half-shaft', 'Fit a spare half-shaft', 'Fit a spare axle shaft'],
    ['Fit a spare drive shaft', 'Fit a spare drive shaft', 'Fit a spare CV axle'],
    ['Front propeller shaft flanges', 'Front propeller shaft flanges', 'Front driveshaft flanges'],
    [
      'freewheel-hub clips, gasket and screws',
      'freewheel-hub clips, gasket and screws',
      'locking hub clips, gasket and screws',
    ],
    ['Tie rod lock nut', 'Track rod lock nut', 'Tie rod lock nut'],
    ['Brake bleed screws', 'Brake bleed nipples', 'Brake bleeder screws'],
    ['centre punch', 'centre punch', 'center punch'],
    ['gear oil, a litre', 'gear oil, a litre', 'gear oil, a liter'],
    ['folding cross brace', 'folding cross brace', 'folding four-way wrench'],
  ])('%s', (ours, british, american) => {
    expect(inWords(ours, 'british')).toBe(british);
    expect(inWords(ours, 'american')).toBe(american);
  });

  it('changes whole words only', () => {
    for (const name of [
      'multimeter',
      'earthing',
      'CV boot',
      'Boot floor',
      'tyreless',
      'wrenching',
      'nonearth',
    ])
      expect([inWords(name, 'american'), inWords(name, 'british')], name).toEqual([name, name]);
  });

  it('leaves no British tyre and no American wrench standing in any name', () => {
    const names = [...BELONGINGS.map(({ name }) => name), ...JOBS.map(({ title }) => title)];
    const american = names.map((name) => inWords(name, 'american'));
    expect(american.filter((name) => /tyre|bonnet|circlip|spanner|centre\b/i.test(name))).toEqual([]);
    const british = names.map((name) => inWords(name, 'british'));
    const kept = /(?:torque|pipe|strap|chain|impact|with) wrench/;
    expect(british.filter((name) => /wrench|tire\b/i.test(name) && !kept.test(name))).toEqual([]);
    expect(american.some((name) => name.includes('tire'))).toBe(true);
    expect(british.some((name) => name.includes('spanner'))).toBe(true);
  });

  it('is the same when it is done twice', () => {
    for (const { name } of BELONGINGS)
      for (const wording of ['british', 'american'] as const)
        expect(inWords(inWords(name, wording), wording)).toBe(inWords(name, wording));
  });
});

describe('the words that are shown', () => {
  it.each(['british', 'american'] as const)('are twins in the vocabulary: %s', (wording) => {
    const region = wording === 'british' ? 'UK' : 'US';
    for (const [ours, shown] of SHOWN_WORDS[wording]) {
      if (ours === shown) continue;
      const known = VOCABULARY.some(({ word, also }) => {
        const heard = (text: string): boolean =>
          word === text ||
          also.some((a) => a.text === text && (a.regions === undefined || a.regions.includes(region)));
        const texts = [word, ...also.map(({ text }) => text)];
        return texts.includes(ours) && heard(shown);
      });
      expect(known, `${ours} -> ${shown}`).toBe(true);
    }
  });
});
