import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Browser, EMPTY, rename, until, withBag } from './browser.ts';

/** A database whose page can be killed: what runs is aborted, and nothing more begins. */
class Mortal {
  private dead = false;
  private readonly live = new Set<IDBTransaction>();
  readonly factory: IDBFactory;

  constructor(real: IDBFactory) {
    this.factory = Object.assign(new IDBFactory(), {
      open: (name: string, version?: number) => {
        const request = real.open(name, version);
        request.addEventListener('success', () => this.watch(request.result));
        return request;
      },
    });
  }

  kill(): void {
    this.dead = true;
    for (const tx of this.live) tx.abort();
  }

  private watch(database: IDBDatabase): void {
    const begin = database.transaction.bind(database);
    database.transaction = (...args) => {
      if (this.dead) throw new DOMException('the page is gone', 'InvalidStateError');
      const tx = begin(...args);
      this.live.add(tx);
      for (const end of ['complete', 'abort']) tx.addEventListener(end, () => this.live.delete(tx));
      return tx;
    };
  }
}

const edit = fc.oneof(
  fc.record({ bag: fc.constantFrom('a', 'b', 'c'), name: fc.string({ maxLength: 3 }) }),
  fc.record({ rename: fc.string({ maxLength: 3 }) }),
  fc.constant('undo' as const),
);
const pauses = fc.nat(4);

it('[M15] whatever is interrupted, an edit that was said to be saved is there afterwards, and no edit by halves', async () => {
  let cut = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.record({ edit, pause: pauses }), { minLength: 1, maxLength: 12 }),
      fc.nat(12),
      async (edits, lastPause) => {
        const browser = new Browser();
        const real = browser.factory;
        const mortal = new Mortal(real);
        browser.factory = mortal.factory;
        const record = await browser.open();
        const seen = [EMPTY];
        let saved = 0;
        for (const { edit: one, pause } of edits) {
          const before = record.getState().history.length;
          const written =
            one === 'undo'
              ? record.undo()
              : record.edit('edit', 'bag' in one ? withBag(one.bag, one.name) : rename(one.rename));
          if (record.getState().history.length > before) {
            const mine = seen.push(record.getState().garage) - 1;
            void written.then(() => {
              saved = Math.max(saved, mine);
            });
          }
          for (let i = 0; i < pause; i++) await new Promise(setImmediate);
        }
        for (let i = 0; i < lastPause; i++) await new Promise(setImmediate);
        mortal.kill();
        const said = saved;
        for (let i = 0; i < 20; i++) await new Promise(setImmediate);
        expect(saved).toBe(said);

        browser.factory = real;
        const after = (await browser.open()).getState();
        const kept = after.history.length;
        expect(kept).toBeGreaterThanOrEqual(said);
        expect(after.garage).toEqual(seen[kept]);
        if (kept < seen.length - 1) cut += 1;
      },
    ),
    { numRuns: 200 },
  );
  // The interruptions did hit: some runs lost edits that nobody had called saved.
  expect(cut).toBeGreaterThan(20);
});

it('[M15] a write that fails leaves the edit on the page, says so, and is tried again until it is on the disk', async () => {
  const browser = new Browser();
  const real = browser.factory;
  let full = false;
  browser.factory = Object.assign(new IDBFactory(), {
    open: (name: string, version?: number) => {
      const request = real.open(name, version);
      request.addEventListener('success', () => {
        const begin = request.result.transaction.bind(request.result);
        request.result.transaction = (...args) => {
          if (full) throw new DOMException('full', 'QuotaExceededError');
          return begin(...args);
        };
      });
      return request;
    },
  });
  const record = await browser.open();
  full = true;
  let saved = 0;
  const edits = [record.edit('a', rename('a')), record.edit('b', withBag('b', 'B'))];
  for (const written of edits) void written.then(() => saved++);
  await until(() => typeof record.getState().saved === 'object');
  expect(record.getState()).toMatchObject({
    garage: { name: 'a', bags: { b: { name: 'B' } } },
    saved: { failed: expect.stringContaining('no room left') as string },
  });
  browser.ring();
  await until(() => typeof record.getState().saved === 'object' && browser.waiting.length === 1);
  expect(saved).toBe(0);
  full = false;
  browser.ring();
  await Promise.all(edits);
  expect(record.getState().saved).toBe('saved');
  browser.factory = real;
  expect((await browser.open()).getState().garage).toEqual(record.getState().garage);
});
