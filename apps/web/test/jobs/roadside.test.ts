import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { hasWords } from '../../src/places/jobs/find/find-words.ts';
import { readSaid, symptomPath } from '../../src/places/jobs/find/said-path.ts';
import { readLastCard, writeLastCard } from '../../src/places/jobs/last-card.ts';
import { CALM, readRoadside } from '../../src/places/jobs/roadside.ts';
import { readTicks, writeTicks } from '../../src/places/jobs/ticks.ts';
import { keepKit, keptKit } from '../../src/shell/kept-kit.ts';

function store(): Storage {
  const held = new Map<string, string>();
  return {
    get length() {
      return held.size;
    },
    clear: () => held.clear(),
    getItem: (key) => held.get(key) ?? null,
    key: (n) => [...held.keys()][n] ?? null,
    removeItem: (key) => void held.delete(key),
    setItem: (key, value) => void held.set(key, value),
  };
}

beforeEach(() => vi.stubGlobal('localStorage', store()));
afterEach(() => vi.unstubAllGlobals());

describe('what this device keeps at the roadside', () => {
  it('ticks of a card come back after a reload, apart for each trip and job', () => {
    writeTicks('loop', 'SS-04@rear', new Set([0, 2]));
    expect(readTicks('loop', 'SS-04@rear')).toEqual(new Set([0, 2]));
    expect(readTicks('loop', 'SS-04@front').size).toBe(0);
    expect(readTicks('other', 'SS-04@rear').size).toBe(0);
    writeTicks('loop', 'SS-04@rear', new Set());
    expect(localStorage.length).toBe(0);
  });

  it('distances, water and light of yesterday count no longer', () => {
    localStorage.setItem(
      'waymend.roadside.loop',
      JSON.stringify({ ...CALM, helpKm: 40, dark: true, day: '2026-07-04' }),
    );
    expect(readRoadside('loop', '2026-07-04')).toEqual({ ...CALM, helpKm: 40, dark: true });
    expect(readRoadside('loop', '2026-07-05')).toEqual(CALM);
  });

  it('what is kept is read with care: nothing of a wrong kind gets through', () => {
    const odd = { day: 'd', among: 'all', away: [1, 'wren'], dark: 'yes', helpKm: -3, waterDays: 'two' };
    localStorage.setItem('waymend.roadside.loop', JSON.stringify(odd));
    expect(readRoadside('loop', 'd')).toEqual({ ...CALM, away: ['wren'] });
    localStorage.setItem('waymend.steps.loop.A', '{"a":1}');
    expect(readTicks('loop', 'A').size).toBe(0);
    localStorage.setItem('waymend.kit.loop', '[{"id":"bar","copies":1,"name":"x"},{"id":3},null]');
    expect(keptKit('loop')).toEqual([{ id: 'bar', copies: 1 }]);
    localStorage.setItem('waymend.card', '{"job":1}');
    expect(readLastCard()).toBeNull();
  });

  it('the kit and the card that were last open are at hand before anything is planned', () => {
    expect(keptKit('loop')).toBeNull();
    keepKit('loop', [{ id: 'bar', copies: 2 }]);
    expect(keptKit('loop')).toEqual([{ id: 'bar', copies: 2 }]);
    writeLastCard({ job: 'WT-01', title: 'Change a wheel' });
    expect(readLastCard()).toEqual({ job: 'WT-01', title: 'Change a wheel' });
  });

  it('a browser that forbids its store only forgets', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => {
        throw new Error('forbidden');
      },
      setItem: () => {
        throw new Error('forbidden');
      },
      removeItem: () => {
        throw new Error('forbidden');
      },
    });
    keepKit('loop', []);
    writeTicks('loop', 'A', new Set([1]));
    writeLastCard({ job: 'A', title: 'a' });
    expect(keptKit('loop')).toBeNull();
    expect(readTicks('loop', 'A').size).toBe(0);
    expect(readLastCard()).toBeNull();
    expect(readRoadside('loop', 'd')).toEqual(CALM);
  });
});

describe('the way from a sign to its jobs', () => {
  it('keeps every answer in the address, so that the way back loses none', () => {
    const given = [
      ['fluid', 'falls'],
      ['wet', 'cannot-tell'],
    ] as const;
    const path = symptomPath('pedal-soft', given);
    expect(path).toBe('/jobs/find/pedal-soft/fluid=falls/wet=cannot-tell');
    expect(readSaid(path.replace('/jobs/find/pedal-soft/', ''))).toEqual(given);
    expect(readSaid('nonsense//a=/=b')).toEqual([]);
  });

  it('finds by any words, in any order', () => {
    expect(hasWords('BR-01 Replace brake pads, front', 'front PAD')).toBe(true);
    expect(hasWords('BR-01 Replace brake pads, front', 'br-01')).toBe(true);
    expect(hasWords('BR-01 Replace brake pads, front', 'rear pad')).toBe(false);
  });
});
