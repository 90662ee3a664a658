import { expect, it } from 'vitest';
import { DATABASE_VERSION } from '../../src/record/database.ts';
import { createGarage, listGarages, removeGarage } from '../../src/record/garages.ts';
import { openRecord } from '../../src/record/open-record.ts';
import { askPersistence } from '../../src/record/persistence.ts';
import { Browser, rename, until } from './browser.ts';

it('keeps several garages apart; lists, makes, opens and removes them', async () => {
  const browser = new Browser();
  const { factory } = browser;
  expect(await createGarage(factory, 'Old ute', () => 'x1')).toEqual({ ok: true, value: 'Old ute' });
  expect(await createGarage(factory, 'Old ute', () => 'x2')).toMatchObject({
    error: { id: 'garage-name-taken' },
  });
  expect(await createGarage(factory, ' ', () => 'x3')).toMatchObject({ error: { id: 'garage-unnamed' } });
  const [old, fresh] = [await browser.open('Old ute'), await browser.open('New truck')];
  await old.edit('a', rename('in the old'));
  await fresh.edit('a', rename('in the new'));
  await fresh.noteCopyMade();
  old.close();
  fresh.close();
  expect(await listGarages(factory)).toEqual({ ok: true, value: ['New truck', 'Old ute'] });
  expect((await browser.open('Old ute')).getState().garage.name).toBe('in the old');
  await removeGarage(factory, 'New truck');
  expect(await listGarages(factory)).toEqual({ ok: true, value: ['Old ute'] });
  expect((await browser.open('Old ute')).getState().garage.name).toBe('in the old');
  // Made anew under the name, it has nothing of the removed one.
  expect((await browser.open('New truck')).getState()).toMatchObject({
    garage: { name: '' },
    history: [],
    changesSinceCopy: 0,
  });
});

it('does not bring a removed garage back to life from another tab, and says so there', async () => {
  const browser = new Browser();
  const record = await browser.open();
  await record.edit('a', rename('a'));
  await removeGarage(browser.factory, 'mine');
  void record.edit('b', rename('b'));
  await until(() => typeof record.getState().saved === 'object');
  expect(record.getState()).toMatchObject({
    garage: { name: 'b' },
    saved: { failed: expect.stringContaining('removed in another tab') as string },
  });
  expect(await listGarages(browser.factory)).toEqual({ ok: true, value: [] });
});

it('leaves a database of a newer version untouched and says what to do', async () => {
  const browser = new Browser();
  await new Promise<void>((resolve) => {
    const request = browser.factory.open('waymend', DATABASE_VERSION + 1);
    request.onupgradeneeded = () => void request.result.createObjectStore('of the future');
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
  const opened = await openRecord(browser.around());
  expect(opened).toMatchObject({
    ok: false,
    error: { id: 'database-newer', message: expect.stringContaining('reload the page') as string },
  });
  const stores = await new Promise<readonly string[]>((resolve) => {
    const request = browser.factory.open('waymend');
    request.onsuccess = () => {
      resolve([...request.result.objectStoreNames]);
      request.result.close();
    };
  });
  expect(stores).toEqual(['of the future']);
});

it('makes way for a newer version that another tab opens, and says so at the next edit', async () => {
  const browser = new Browser();
  const record = await browser.open();
  await new Promise<void>((resolve) => {
    const request = browser.factory.open('waymend', DATABASE_VERSION + 1);
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
  void record.edit('a', rename('a'));
  await until(() => typeof record.getState().saved === 'object');
  browser.ring();
  await until(() => JSON.stringify(record.getState().saved).includes('newer version'));
  expect(record.getState().garage.name).toBe('a');
});

it('refuses in a sentence where the browser keeps nothing', async () => {
  const around = new Browser().around();
  const forbidden = Object.assign(new IDBFactory(), { open: () => fail('SecurityError') });
  expect(await openRecord({ ...around, indexedDB: forbidden })).toMatchObject({
    error: { id: 'database-unavailable' },
  });
});

it('asks the browser to keep what is stored, and takes no answer for no', async () => {
  const storage = (persisted: boolean, persist: boolean) => ({
    persisted: () => Promise.resolve(persisted),
    persist: () => Promise.resolve(persist),
  });
  expect(await askPersistence(storage(true, false))).toBe(true);
  expect(await askPersistence(storage(false, true))).toBe(true);
  expect(await askPersistence(storage(false, false))).toBe(false);
  expect(await askPersistence(undefined)).toBe(false);
  const broken = { ...storage(false, true), persist: () => Promise.reject(new Error('no')) };
  expect(await askPersistence(broken)).toBe(false);
});

function fail(name: string): never {
  throw new DOMException('not here', name);
}
