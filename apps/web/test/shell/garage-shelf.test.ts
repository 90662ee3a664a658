import { describe, expect, it } from 'vitest';
import { chooseGarage, chosenGarage, FIRST_GARAGE } from '../../src/shell/chosen-garage.ts';
import { openShelf } from '../../src/shell/garage-shelf.ts';
import { Browser, rename, until, withBag } from '../record/browser.ts';

class Small {
  private readonly kept = new Map<string, string>();
  getItem = (key: string): string | null => this.kept.get(key) ?? null;
  setItem = (key: string, value: string): void => void this.kept.set(key, value);
}

function shelfOf(browser: Browser, openKey: string) {
  const loaded: string[] = [];
  const { name: _, ...around } = browser.around();
  return { shelf: openShelf(openKey, { ...around, load: (key) => void loaded.push(key) }), loaded };
}

describe('which garage a tab opens', () => {
  it('is its own before the last one of the device, and never one that was removed', () => {
    const [tab, device] = [new Small(), new Small()];
    expect(chosenGarage([], [tab, device])).toBe(FIRST_GARAGE);
    expect(chosenGarage(['b', FIRST_GARAGE], [tab, device])).toBe(FIRST_GARAGE);
    expect(chosenGarage(['b', 'c'], [null, null])).toBe('b');
    chooseGarage('c', [device]);
    expect(chosenGarage(['b', 'c'], [tab, device])).toBe('c');
    chooseGarage('b', [tab]);
    expect(chosenGarage(['b', 'c'], [tab, device])).toBe('b');
    expect(chosenGarage(['c'], [tab, device])).toBe('c');
    expect(chosenGarage(['d'], [tab, device])).toBe('d');
  });
});

describe('the garages of a browser', () => {
  it('are listed with what they hold, made and opened, named, and counted as copied', async () => {
    const browser = new Browser();
    const open = await browser.open('mine');
    await open.edit('a', withBag('roll', 'Roll'));
    await open.edit('b', rename('Old ute'));
    const { shelf, loaded } = shelfOf(browser, 'mine');
    expect(await shelf.make('Began', 'New truck')).toEqual({ ok: true, value: null });
    const [made] = loaded;
    expect(made).toMatch(/^garage-/);
    const list = async () => {
      const found = await shelf.list();
      return found.ok ? found.value.map((k) => [k.key, k.garage.name, k.steps, k.copiedSteps]) : null;
    };
    expect(await list()).toEqual([
      [made, 'New truck', 1, 0],
      ['mine', 'Old ute', 2, 0],
    ]);
    await shelf.noteCopy(made ?? '', 1);
    await shelf.rename(made ?? '', 'Named', 'Newer truck');
    expect(await list()).toEqual([
      [made, 'Newer truck', 2, 1],
      ['mine', 'Old ute', 2, 0],
    ]);
    const found = await shelf.list();
    expect(found.ok && found.value[1]?.garage.bags['roll']?.name).toBe('Roll');
    expect(found.ok && found.value[1]?.lastAt).toBeGreaterThan(1_700_000_000_000);
  });

  it('a new name from the list reaches the tab that has the garage open', async () => {
    const browser = new Browser();
    const there = await browser.open('mine');
    const { shelf } = shelfOf(browser, 'other');
    await shelf.rename('mine', 'Named', 'Blue');
    await until(() => there.getState().garage.name !== '');
    expect(there.getState().garage.name).toBe('Blue');
  });

  it('one that is deleted is gone, its other tab says so at once, and its own tab opens another', async () => {
    const browser = new Browser();
    const [there] = [await browser.open('mine'), await browser.open('spare')];
    await there.edit('a', rename('a'));
    const { shelf, loaded } = shelfOf(browser, 'mine');
    await shelf.remove('mine');
    await until(() => typeof there.getState().saved === 'object');
    expect(there.getState()).toMatchObject({
      garage: { name: 'a' },
      saved: { failed: expect.stringContaining('removed in another tab') as string },
    });
    expect(loaded).toEqual(['spare']);
    const left = await shelf.list();
    expect(left.ok && left.value.map(({ key }) => key)).toEqual(['spare']);
    // A copy noted too late does not bring it back.
    await shelf.noteCopy('mine', 3);
    expect((await browser.open('mine')).getState().changesSinceCopy).toBe(0);
  });
});
