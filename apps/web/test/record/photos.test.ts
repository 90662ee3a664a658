import { expect, it } from 'vitest';
import { createGarage, removeGarage } from '../../src/record/garages.ts';
import { PhotoStore } from '../../src/record/photos.ts';
import { LONGEST_SIDE, MOST_BYTES, scaledDown } from '../../src/places/vehicle/photo/scale-down.ts';
import { Browser } from './browser.ts';

const jpeg = (bytes: number) => new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' });

it('keeps a photo for each place beside the record, and counts what they take', async () => {
  const { factory } = new Browser();
  await createGarage(factory, 'mine', () => 'x');
  const photos = new PhotoStore(factory, 'mine');
  expect(await photos.totals()).toEqual({ ok: true, value: { count: 0, bytes: 0 } });
  await photos.put('ute/wheel-nut@front', jpeg(1000));
  await photos.put('ute/wheel-nut@front', jpeg(700));
  await photos.put('ute/sump-plug', jpeg(300));
  expect(await photos.totals()).toEqual({ ok: true, value: { count: 2, bytes: 1000 } });
  const found = await photos.get('ute/wheel-nut@front');
  expect(found.ok && found.value?.size).toBe(700);
  expect(found.ok && found.value?.type).toBe('image/jpeg');
  await photos.remove('ute/wheel-nut@front');
  expect(await photos.get('ute/wheel-nut@front')).toEqual({ ok: true, value: null });
});

it('photos go with their garage, no other garage has them, and none is kept for one that was removed', async () => {
  const { factory } = new Browser();
  for (const name of ['mine', 'other']) await createGarage(factory, name, () => name);
  const [mine, other] = [new PhotoStore(factory, 'mine'), new PhotoStore(factory, 'other')];
  await mine.put('ute/sump-plug', jpeg(10));
  await other.put('ute/sump-plug', jpeg(20));
  await removeGarage(factory, 'mine');
  expect(await mine.put('ute/drain', jpeg(10))).toMatchObject({ error: { id: 'garage-removed' } });
  expect(await mine.totals()).toEqual({ ok: true, value: { count: 0, bytes: 0 } });
  expect(await other.totals()).toEqual({ ok: true, value: { count: 1, bytes: 20 } });
});

it.each([
  ['a large photo of a phone', 4000, 3000, 0.9],
  ['one full of detail', 4000, 3000, 3],
  ['a small one', 640, 480, 0.3],
  ['a tall one', 1000, 5000, 1],
])('%s becomes small enough', async (_, width, height, bytesPerPixel) => {
  const tried: (readonly [number, number])[] = [];
  const small = await scaledDown({
    width,
    height,
    jpeg: (w, h, quality) => {
      tried.push([w, h]);
      return Promise.resolve(jpeg(Math.round(w * h * bytesPerPixel * quality)));
    },
  });
  expect(small?.size).toBeGreaterThan(0);
  expect(small?.size).toBeLessThanOrEqual(MOST_BYTES);
  for (const [w, h] of tried) {
    expect(Math.max(w, h)).toBeLessThanOrEqual(Math.min(LONGEST_SIDE, Math.max(width, height)));
    expect(w / h).toBeCloseTo(width / height, 1);
  }
});

it('a photo that cannot be written is none', async () => {
  expect(await scaledDown({ width: 10, height: 10, jpeg: () => Promise.resolve(null) })).toBe(null);
  expect(await scaledDown({ width: 0, height: 0, jpeg: () => Promise.resolve(jpeg(1)) })).toBe(null);
});
