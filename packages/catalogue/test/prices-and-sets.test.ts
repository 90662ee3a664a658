import { describe, expect, it } from 'vitest';
import { BELONGING_BY_ID, BELONGINGS } from '../src/belongings/all.ts';
import { BOXED_SET_BY_ID, BOXED_SETS } from '../src/boxed-sets.ts';
import { bandCents, PRICE_BANDS, priceCents } from '../src/prices.ts';

describe('prices', () => {
  it('lie inside their band, in whole cents, and rise from band to band', () => {
    const bands = ['P1', 'P2', 'P3', 'P4', 'P5', 'P6'] as const;
    let last = 0;
    for (const band of bands) {
      const [low, high] = PRICE_BANDS[band];
      const cents = bandCents(band);
      expect(Number.isSafeInteger(cents)).toBe(true);
      expect(cents).toBeGreaterThan(Math.max(low, last));
      if (high !== null) expect(cents).toBeLessThan(high);
      last = cents;
    }
  });

  it('stand for every belonging', () => {
    for (const belonging of BELONGINGS) expect(priceCents(belonging), belonging.id).toBeGreaterThan(0);
  });
});

describe('boxed sets', () => {
  const pieces = (id: string) =>
    BOXED_SET_BY_ID.get(id)?.contents.reduce((sum, p) => sum + p.copies * (p.pieces ?? 1), 0);

  it('hold what their titles count', () => {
    expect(pieces('box-94')).toBe(94);
    expect(pieces('box-108')).toBe(108);
    expect(pieces('wrenches-12')).toBe(12);
  });

  it('hold only catalogue pieces, each kind on one line', () => {
    for (const { id, contents } of BOXED_SETS) {
      expect(new Set(contents.map((p) => p.is)).size, id).toBe(contents.length);
      for (const { is } of contents) expect(BELONGING_BY_ID.has(is), `${id}: ${is}`).toBe(true);
    }
  });

  // common practice, no source: boxes stop at about 32 mm, hub nuts of 36 to 41 mm are bought singly
  it('never hold 39 mm', () => {
    const sizes = BOXED_SETS.flatMap((set) => set.contents).flatMap(
      ({ is }) => BELONGING_BY_ID.get(is)?.offers.flatMap((o) => (o.kind === 'socket' ? [o.size] : [])) ?? [],
    );
    expect(sizes).toContain('32 mm');
    expect(sizes).not.toContain('39 mm');
  });

  it('leave out of the wrench set the sizes its note names', () => {
    const set = BOXED_SET_BY_ID.get('wrenches-12');
    const held = set?.contents.map((p) => p.is) ?? [];
    for (const size of [15, 16, 18, 20, 21]) {
      expect(set?.note).toMatch(new RegExp(`\\b${size}\\b`));
      expect(held).not.toContain(`CW-${size}`);
    }
  });

  it('weigh what such boxes weigh and cost less than their pieces bought singly', () => {
    for (const { id, contents, cents, caseGrams } of BOXED_SETS) {
      let grams = caseGrams;
      let single = 0;
      for (const { is, copies } of contents) {
        const belonging = BELONGING_BY_ID.get(is);
        if (belonging === undefined) throw new Error(is);
        grams += belonging.grams * copies;
        single += priceCents(belonging) * copies;
      }
      // recalled, not re-read: boxes of about a hundred pieces weigh 6 to 11 kg
      if (id.startsWith('box-')) expect(grams).toBeGreaterThan(6000);
      expect(grams, id).toBeLessThan(11000);
      expect(cents, id).toBeLessThan(single);
    }
  });
});
