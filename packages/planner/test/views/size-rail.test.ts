import { parseSize } from '@waymend/core/fastening/size';
import type { Flats } from '@waymend/core/fastening/size';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { nearFits } from '@waymend/planner/views/near-fits';
import { sizeCures } from '@waymend/planner/views/size-cures';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { sizeRail } from '@waymend/planner/views/size-rail';
import { describe, expect, it } from 'vitest';
import { wagon } from './garage.ts';

function flats(text: string): Flats {
  const size = parseSize(text);
  if (!size.ok || size.value.kind !== 'across-flats') throw new Error(text);
  return size.value;
}

/** Combination wrenches, sockets and what drives them; the second 19 and the 24 are told apart below. */
const OWNED = {
  belongings: {
    w19: { is: 'CW-19', copies: 2 },
    w22: { is: 'CW-22' },
    s19: { is: 'SK2-19' },
    s24: { is: 'SK2-24' },
    d21: { is: 'SD2-21' },
    bar: { is: 'BB-2M' },
  },
};

function rail(kit: readonly { id: string; copies: number }[], more: object = OWNED): SizeRail {
  const read = sizeRail(wagon(more), 'trip', kit, SHIPPED_TRADE);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

const at = (r: SizeRail, label: string) => r.sizes.find((s) => s.label === label);

describe('the size rail', () => {
  it('[M2] sets each place once at its size, with its status', () => {
    const r = rail([], {
      ...OWNED,
      fittings: {
        nuts: { vehicle: 'live-axle-wagon', place: 'wheel-nut', size: '22 mm', status: 'measured' },
      },
    });
    const all = [...r.sizes, ...r.others].flatMap((s) => s.places).filter((p) => !p.farSide);
    expect(all).toHaveLength(r.places);
    expect(new Set(all.map((p) => p.joint)).size).toBe(r.places);
    expect(at(r, '22 mm')?.places[0]).toMatchObject({ joint: 'nuts', status: 'measured', couldBe: [] });
    expect(r.measured).toBe(1);
    expect(at(rail([]), '21 mm')?.places[0]).toMatchObject({
      joint: 'wheel-nut',
      status: 'assumed',
      couldBe: ['19 mm', '22 mm', '17 mm'],
    });
  });

  it('tells copies that come along from those that stay home', () => {
    const ring = at(rail([{ id: 'w19', copies: 1 }]), '19 mm')?.cells.find((c) => c.kind === 'ring');
    expect(ring?.pieces.map((p) => [p.id, p.along])).toEqual([
      ['w19', true],
      ['w19#2', false],
    ]);
  });

  it('[M2] a size nothing along turns is a hole, and is none once a piece and its handle come', () => {
    const none = at(rail([]), '24 mm');
    expect(none?.hole).toBe(true);
    expect(none?.places[0]).toMatchObject({ grade: null, missing: 'piece' });
    expect(none?.cells.find((c) => c.kind === 'socket')).toMatchObject({ wanted: true });
    const alone = at(rail([{ id: 's24', copies: 1 }]), '24 mm');
    expect(alone?.hole).toBe(false);
    expect(alone?.places.find((p) => p.joint.startsWith('diff-fill-plug'))?.missing).toBe('lever');
    const both = at(
      rail([
        { id: 's24', copies: 1 },
        { id: 'bar', copies: 1 },
      ]),
      '24 mm',
    );
    expect(both?.places.find((p) => p.joint.startsWith('diff-fill-plug'))?.grade).toBe('proper');
  });

  it('[M3] ties turn and hold only when two pieces come along', () => {
    expect(at(rail([]), '22 mm')?.tie).toBe('neither');
    const one = at(rail([{ id: 'w22', copies: 1 }]), '22 mm');
    expect(one?.tie).toBe('one');
    expect(one?.hole).toBe(true);
  });

  it('[M10] a cure comes from home where home has it, and weighs only what is added', () => {
    const garage = wagon(OWNED);
    const cures = sizeCures(garage, 'trip', [{ id: 'bar', copies: 1 }], ['gearbox-fill-plug'], SHIPPED_TRADE);
    if (!cures.ok) throw new Error(cures.error.message);
    expect(cures.value).toMatchObject([
      { joint: 'gearbox-fill-plug', kind: 'bring', grade: 'proper', items: [{ id: 's24' }], cents: 0 },
    ]);
    const socket = SHIPPED_TRADE.belongings.find((b) => b.id === 'SK2-24');
    expect(cures.value[0]?.grams).toBe(socket?.grams);
  });

  it('[M10] and is bought where home has none', () => {
    const bought = sizeCures(wagon(), 'trip', [], ['sump-plug'], SHIPPED_TRADE);
    if (!bought.ok) throw new Error(bought.error.message);
    expect(bought.value[0]?.kind).toBe('buy');
    expect(bought.value[0]?.items.every((i) => !i.owned)).toBe(true);
    expect(bought.value[0]?.cents).toBeGreaterThan(0);
  });

  it('refuses a trip that is not there', () => {
    expect(sizeRail(wagon(), 'none', [], SHIPPED_TRADE).ok).toBe(false);
  });
});

describe('near fits', () => {
  const fits = (tool: string, head: string) => nearFits([flats(tool)], [flats(head)])[0];

  it('[M2] 3/4 in on 19 mm is 0.05 mm loose and serves; 19 mm on 3/4 in rests on a recalled list', () => {
    expect(fits('3/4 in', '19 mm')).toMatchObject({ looseMm: 0.05, grade: 'with-care', recalled: false });
    expect(fits('19 mm', '3/4 in')).toMatchObject({ looseMm: -0.05, grade: 'with-care', recalled: true });
  });

  it('[M2] 13 mm on 1/2 in and 9/16 in on 14 mm are never', () => {
    expect(fits('13 mm', '1/2 in')).toMatchObject({ looseMm: 0.3, grade: null, why: 'too-loose' });
    expect(fits('9/16 in', '14 mm')).toMatchObject({ grade: null, why: 'too-loose' });
    expect(fits('5/16 in', '8 mm')).toMatchObject({ grade: null, why: 'does-not-go-on' });
  });

  it('says nothing of the same size, nor of what no hand would try', () => {
    expect(fits('17 mm', '17 mm')).toBeUndefined();
    expect(fits('19 mm', '17 mm')).toBeUndefined();
    expect(fits('17 mm', '19 mm')).toBeUndefined();
  });
});
