import type { Page } from '@playwright/test';

declare global {
  interface Window {
    observed: { shift: number; shifts: string[]; interactions: Map<number, { ms: number; what: string }> };
  }
  interface PerformanceEntry {
    readonly hadRecentInput?: boolean;
    readonly value?: number;
    readonly interactionId?: number;
    readonly target?: Node | null;
    readonly sources?: readonly { readonly node?: Node | null }[];
  }
  interface PerformanceObserverInit {
    durationThreshold?: number;
  }
}

/** Lets every page that opens from now on count what moves under the reader, and how long each press takes to be seen. */
export async function observe(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.observed = { shift: 0, shifts: [], interactions: new Map() };
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        if (entry.hadRecentInput === true) continue;
        window.observed.shift += entry.value ?? 0;
        const nodes = (entry.sources ?? []).map(({ node }) =>
          node instanceof Element
            ? `${node.tagName.toLowerCase()}.${node.className}`
            : (node?.textContent ?? ''),
        );
        window.observed.shifts.push(
          `${(entry.value ?? 0).toFixed(4)} at ${location.hash}: ${nodes.join(', ')}`,
        );
      }
    }).observe({ type: 'layout-shift', buffered: true });
    new PerformanceObserver((list) => {
      for (const { interactionId = 0, duration, name, target } of list.getEntries()) {
        if (interactionId === 0) continue;
        const on = target instanceof Element ? target.textContent.slice(0, 24) : '';
        const before = window.observed.interactions.get(interactionId)?.ms ?? 0;
        if (duration >= before)
          window.observed.interactions.set(interactionId, {
            ms: duration,
            what: `${name} on '${on}' at ${location.hash}`,
          });
      }
    }).observe({ type: 'event', durationThreshold: 16, buffered: true });
  });
}

export interface Felt {
  readonly count: number;
  readonly p95: number;
  readonly slowest: readonly string[];
}

/** Time from each press to the next paint. What took under 16 ms is not reported by the browser and counts as 16. */
export async function felt(page: Page): Promise<Felt> {
  // The last entries come after their paint.
  await page.waitForTimeout(300);
  return page.evaluate(() => {
    const known = [...window.observed.interactions.values()].sort((a, b) => a.ms - b.ms);
    const count = Math.max(performance.interactionCount, known.length);
    const unseen = count - known.length;
    const at = Math.ceil(count * 0.95) - 1;
    const p95 = at < unseen ? 16 : (known[at - unseen]?.ms ?? 0);
    return { count, p95, slowest: known.slice(-8).map(({ ms, what }) => `${ms} ms ${what}`) };
  });
}
