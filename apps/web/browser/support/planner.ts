import { fileURLToPath } from 'node:url';
import type { BrowserContext } from '@playwright/test';
import { test as base, expect } from '@playwright/test';
import { serve } from '../../../../scripts/serve.mjs';

declare global {
  interface Window {
    /** Told of every breach of the policy while a test listens. */
    breach?: (text: string) => void;
  }
}

/** The folder of the built planner. */
export const BUILT = fileURLToPath(new URL('../../dist', import.meta.url));

interface Served {
  /** Of the planner as it is built, ending in a slash. */
  readonly address: string;
}

/**
 * What must never happen on any screen, in any test: a breach of the policy, an error, a request to anybody else. Each
 * test that ends has shown that too.
 */
export interface Offences {
  readonly found: string[];
}

export const test = base.extend<{ offences: Offences }, { served: Served }>({
  served: [
    // eslint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const { server, address } = await serve(BUILT);
      await use({ address });
      server.close();
      server.closeAllConnections();
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ served }, use) => use(served.address),
  offences: [
    async ({ context }, use) => {
      const offences: Offences = { found: [] };
      await watch(context, offences);
      await use(offences);
      expect(offences.found).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

/** Listens on every page of a context, also those that are still to be opened. */
export async function watch(context: BrowserContext, offences: Offences): Promise<void> {
  const say = (text: string): void => {
    offences.found.push(text);
  };
  await context.exposeBinding('breach', (_source, text: string) => say(`policy: ${text}`));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      window.breach?.(
        `${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      );
    });
  });
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith('http://127.0.0.1:') && !/^(data|blob):/.test(url)) say(`third party: ${url}`);
  });
  context.on('weberror', (error) => say(`error: ${error.error().message}`));
  context.on('console', (message) => {
    if (message.type() === 'error' && !message.text().includes('ERR_CONNECTION_REFUSED'))
      say(`console: ${message.text()}`);
  });
}
