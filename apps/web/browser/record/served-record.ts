import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { serve } from '../../../../scripts/serve.mjs';

/** Serves the page of the record under the same headers as the planner. */
export async function serveRecord(): Promise<{ readonly address: string; readonly end: () => void }> {
  const folder = mkdtempSync(join(tmpdir(), 'waymend-record-'));
  mkdirSync(join(folder, 'assets'));
  await build({
    entryPoints: [fileURLToPath(new URL('./record-page.ts', import.meta.url))],
    outfile: join(folder, 'assets', 'record.js'),
    bundle: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'warning',
  });
  writeFileSync(
    join(folder, 'index.html'),
    '<!doctype html><html lang="en"><title>Record</title><link rel="icon" href="/assets/record.js"><script type="module" src="/assets/record.js"></script>',
  );
  const { server, address } = await serve(folder);
  return {
    address,
    end: () => {
      server.close();
      server.closeAllConnections();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
