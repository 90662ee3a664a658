import { describe, expect, it } from 'vitest';
import { BELONGING_BY_ID, BELONGINGS } from '../src/belongings/all.ts';
import type { Offer } from '../src/shape/offer.ts';
import { FUNCTIONS } from '../src/shape/words.ts';
import { SUBSTITUTIONS } from '../src/substitutions.ts';

type Does = Extract<Offer, { kind: 'does' }>;
const does: readonly Does[] = BELONGINGS.flatMap((b) =>
  b.offers.flatMap((offer) => (offer.kind === 'does' ? [offer] : [])),
);
const functions: Readonly<Record<string, { readonly of: readonly string[] }>> = FUNCTIONS;

describe('the substitution table', () => {
  it('uses each id once and says when each row holds', () => {
    expect(new Set(SUBSTITUTIONS.map((s) => s.id)).size).toBe(SUBSTITUTIONS.length);
    for (const { id, offered, condition } of SUBSTITUTIONS) {
      expect(offered.length, id).toBeGreaterThan(2);
      expect(condition, id).toMatch(/[.:].?$|\.$/);
    }
  });

  it('wants functions and words that exist', () => {
    for (const { id, wanted, how } of SUBSTITUTIONS) {
      if (wanted.fn === 'turn' || wanted.fn === 'hold' || wanted.fn === 'break-free') {
        expect(['sizes', 'words'], id).toContain(how.by);
        continue;
      }
      if (wanted.of !== undefined) expect(functions[wanted.fn]?.of, id).toContain(wanted.of);
    }
  });

  it('[M2] carries on some belonging every row that offers are said to carry', () => {
    const rows = SUBSTITUTIONS.filter((s) => s.how.by === 'offers');
    expect(rows.length).toBeGreaterThan(20);
    for (const { id, wanted, grade } of rows) {
      const match = does.some(
        (o) => o.fn === wanted.fn && o.of === wanted.of && (o.grade ?? 'proper') === grade,
      );
      expect(match, id).toBe(true);
    }
  });

  it('[M2] builds ways made of several functions only from what belongings offer', () => {
    const rows = SUBSTITUTIONS.flatMap((s) =>
      s.how.by === 'together' ? [{ id: s.id, needs: s.how.needs }] : [],
    );
    expect(rows.length).toBeGreaterThan(10);
    for (const { id, needs } of rows) {
      expect(
        needs.reduce((n, need) => n + (need.count ?? 1), 0),
        id,
      ).toBeGreaterThan(1);
      for (const need of needs) {
        const match = does.some(
          (o) =>
            o.fn === need.fn &&
            (need.of === undefined || o.of === need.of) &&
            (o.amount ?? 0) >= (need.amount ?? 0),
        );
        expect(match, `${id}: ${need.fn}`).toBe(true);
      }
    }
  });

  it('[M2] says how much each row made of several functions stands in for, where that is counted', () => {
    const counted: Readonly<Record<string, { readonly words: string; readonly amount?: string }>> = FUNCTIONS;
    const rows = SUBSTITUTIONS.flatMap((s) =>
      s.how.by === 'together' ? [{ id: s.id, fn: s.wanted.fn, upTo: s.how.upTo }] : [],
    );
    for (const { id, fn, upTo } of rows)
      expect(upTo !== undefined, id).toBe(counted[fn]?.amount !== undefined);
    expect(rows.filter((r) => r.upTo !== undefined).map((r) => r.id)).toEqual([
      'lift-high-spacer',
      'clamp-windlass',
      'bridge-heavy',
    ]);
  });

  it('[M2] contradicts no forbidden row with an offer', () => {
    const rows = SUBSTITUTIONS.filter((s) => s.grade === 'forbidden');
    expect(rows.length).toBeGreaterThanOrEqual(9);
    let checked = 0;
    for (const { id, wanted, how, barred = [] } of rows) {
      expect(['sizes', 'words'], id).toContain(how.by);
      for (const item of barred) {
        const belonging = BELONGING_BY_ID.get(item);
        expect(belonging, `${id}: ${item}`).toBeDefined();
        expect(
          belonging?.offers.some((o) => o.kind === 'does' && o.fn === wanted.fn),
          `${id}: ${item}`,
        ).toBe(false);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(15);
  });

  it('[M4] bars every lifting tool from supporting', () => {
    const barred = SUBSTITUTIONS.find((s) => s.id === 'support-jack')?.barred ?? [];
    const lifting = BELONGINGS.filter((b) => b.offers.some((o) => o.kind === 'does' && o.fn === 'lift'));
    expect(lifting.length).toBe(5);
    for (const { id } of lifting) expect(barred).toContain(id);
  });

  it('[M2] leaves no function that nothing in the catalogue provides', () => {
    const provided = new Set(does.map((o) => `${o.fn} ${o.of ?? ''}`));
    for (const { wanted, how } of SUBSTITUTIONS) {
      if (how.by === 'together') provided.add(`${wanted.fn} ${wanted.of ?? ''}`);
    }
    const names = [...provided].map((line) => line.split(' ')[0]);
    for (const [fn, { of }] of Object.entries(functions)) {
      expect(names, fn).toContain(fn);
      for (const word of of) expect(provided.has(`${fn} ${word}`), `${fn} of ${word}`).toBe(true);
    }
  });
});
