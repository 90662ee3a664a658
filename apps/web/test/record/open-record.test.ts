import { describe, expect, it } from 'vitest';
import type { GarageRecord } from '../../src/shell/record-port.ts';
import { Browser, EMPTY, rename, until, withBag } from './browser.ts';

describe('one tab', () => {
  it('[M15] shows an edit at once, says saved only when it is written, and has it after a restart', async () => {
    const browser = new Browser();
    const record = await browser.open();
    expect(record.getState()).toMatchObject({ garage: EMPTY, saved: 'saved', changesSinceCopy: 0 });
    const written = record.edit('Bag made', withBag('b', 'Blue bag'));
    expect(record.getState()).toMatchObject({
      saved: 'saving',
      garage: { bags: { b: { name: 'Blue bag' } } },
    });
    await written;
    expect(record.getState().saved).toBe('saved');
    record.close();
    const again = await browser.open();
    expect(again.getState().garage).toEqual(withBag('b', 'Blue bag')(EMPTY));
    expect(again.getState().history.map(({ title }) => title)).toEqual(['Bag made']);
  });

  it('[M15] undoes and redoes, also after a restart, and a new edit ends what could be redone', async () => {
    const browser = new Browser();
    const first = await browser.open();
    await first.edit('one', rename('one'));
    await first.edit('two', rename('two'));
    await first.undo();
    first.close();
    const record = await browser.open();
    const look = () => {
      const { garage, canUndo, canRedo } = record.getState();
      return [garage.name, canUndo, canRedo];
    };
    expect(look()).toEqual(['one', true, true]);
    await record.redo();
    expect(look()).toEqual(['two', true, false]);
    await record.undo();
    await record.undo();
    expect(look()).toEqual(['', false, true]);
    await record.redo();
    await record.edit('three', rename('three'));
    expect(look()).toEqual(['three', true, false]);
    await record.undo();
    expect(look()).toEqual(['one', true, true]);
  });

  it('[M15] replaces the whole garage as one step that can be undone', async () => {
    const record = await new Browser().open();
    await record.edit('Bag made', withBag('b', 'Blue bag'));
    const before = record.getState().garage;
    const demo = withBag('d', 'Demo bag')(rename('Demo')(EMPTY));
    await record.replace('Demo opened', demo);
    expect(record.exportGarage()).toEqual(demo);
    await record.undo();
    expect(record.exportGarage()).toEqual(before);
    expect(record.getState().history).toHaveLength(3);
  });

  it('counts the steps since a copy was kept, across a restart', async () => {
    const browser = new Browser();
    const record = await browser.open();
    await record.edit('one', withBag('a', 'A'));
    await record.edit('two', withBag('b', 'B'));
    expect(record.getState().changesSinceCopy).toBe(2);
    await record.noteCopyMade();
    expect(record.getState().changesSinceCopy).toBe(0);
    await record.edit('three', withBag('c', 'C'));
    record.close();
    expect((await browser.open()).getState().changesSinceCopy).toBe(1);
  });

  it('gives the same state until something changes, and writes nothing for an edit that changes nothing', async () => {
    const record = await new Browser().open();
    let told = 0;
    const stop = record.subscribe(() => told++);
    const state = record.getState();
    await record.edit('nothing', (garage) => ({ ...garage }));
    expect(record.getState()).toBe(state);
    expect(told).toBe(0);
    await record.edit('one', rename('one'));
    expect(told).toBeGreaterThan(0);
    const after = told;
    stop();
    await record.edit('two', rename('two'));
    expect(told).toBe(after);
  });

  it('leaves everything as it was when an edit goes wrong', async () => {
    const record = await new Browser().open();
    const state = record.getState();
    expect(() =>
      record.edit('bad', () => {
        throw new Error('a defect');
      }),
    ).toThrow('a defect');
    expect(record.getState()).toBe(state);
  });

  it('stands where the screens expect a record', async () => {
    const record: GarageRecord = await new Browser().open();
    await record.edit('one', rename('one'));
    await record.undo();
    expect(record.getState()).toMatchObject({ canUndo: false, canRedo: true, saved: 'saved' });
  });
});

describe('two tabs', () => {
  it('[M15] hear of each other, never number alike, and end equal', async () => {
    const browser = new Browser();
    const [one, two] = [await browser.open(), await browser.open()];
    const edits: Promise<void>[] = [];
    for (let i = 0; i < 20; i++) {
      edits.push(one.edit('one', withBag(`a${i}`, `${i}`)), two.edit('two', withBag(`b${i}`, `${i}`)));
    }
    await Promise.all(edits);
    await until(() => [one, two].every((tab) => Object.keys(tab.getState().garage.bags).length === 40));
    expect(one.getState().garage).toEqual(two.getState().garage);
    const again = await browser.open();
    expect(again.getState().garage).toEqual(one.getState().garage);
    expect(again.getState().conflicts).toEqual([]);
    const ids = again.getState().history.flatMap(({ changes }) => changes.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(40 * 3);
  });

  it('[M15] show both values when they changed one field apart, until one tab settles it', async () => {
    const browser = new Browser();
    const [one, two] = [await browser.open(), await browser.open()];
    await Promise.all([one.edit('a', rename('Left')), two.edit('b', rename('Right'))]);
    await until(() => one.getState().conflicts.length === 1 && two.getState().conflicts.length === 1);
    const [conflict] = one.getState().conflicts;
    if (conflict === undefined) throw new Error('there is no conflict');
    expect(conflict.values.map(({ value }) => value).sort()).toEqual(['Left', 'Right']);
    expect(one.getState().garage.name).toBe(two.getState().garage.name);
    await one.settle('Settled', conflict, 'Left');
    await until(() => two.getState().conflicts.length === 0);
    expect(two.getState().garage.name).toBe('Left');
  });

  it('[M15] undo in one tab what was done in the other, and hear of a copy', async () => {
    const browser = new Browser();
    const [one, two] = [await browser.open(), await browser.open()];
    await one.edit('a', rename('Left'));
    await until(() => two.getState().canUndo);
    await two.undo();
    await until(() => one.getState().garage.name === '');
    expect(one.getState().canRedo).toBe(true);
    await two.noteCopyMade();
    await until(() => one.getState().changesSinceCopy === 0);
    expect(one.getState().history).toHaveLength(2);
  });

  it('[M15] find what they were not told of when they wake', async () => {
    const browser = new Browser();
    const [one, two] = [await browser.open(), await browser.open()];
    const deaf = await browser.open();
    deaf.close();
    await one.edit('a', rename('Left'));
    expect(deaf.getState().garage.name).toBe('');
    await deaf.refresh();
    expect(deaf.getState().garage.name).toBe('Left');
    await two.refresh();
    expect(two.getState().history).toHaveLength(1);
  });
});
