import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Io } from '../../apps/cli/src/io.ts';
import { run } from '../../apps/cli/src/run.ts';

const DEMO = 'examples/demo.garage.yaml';

/**
 * docs/demo-plan.txt: what `waymend plan examples/demo.garage.yaml` prints; null while there is no demo. The proof takes
 * seconds, so the text is kept beside the bundle for as long as neither a line of the code nor the demo has changed.
 */
export async function demoPlan(root: string): Promise<string | null> {
  if (!existsSync(join(root, DEMO))) return null;
  const kept = join(root, 'node_modules', '.cache', 'waymend', 'demo-plan', `${everythingIn(root)}.txt`);
  if (existsSync(kept)) return readFileSync(kept, 'utf8');
  const text = await planned(root);
  mkdirSync(dirname(kept), { recursive: true });
  writeFileSync(kept, text);
  return text;
}

/** A sum of all that the text follows from: this bundle, which holds the whole program, the packages and the demo. */
function everythingIn(root: string): string {
  const sum = createHash('sha256').update(process.version);
  for (const file of [fileURLToPath(import.meta.url), join(root, 'package-lock.json'), join(root, DEMO)])
    sum.update(readFileSync(file));
  return sum.digest('hex');
}

async function planned(root: string): Promise<string> {
  const out: string[] = [];
  const err: string[] = [];
  const io: Io = {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    interactive: false,
    colour: false,
    read: (path) => Promise.resolve({ kind: 'bytes', bytes: readFileSync(join(root, path)) }),
    write: () => Promise.resolve({ kind: 'unwritable', why: 'a plan writes nothing' }),
    clock: () => performance.now(),
    stopAsked: () => false,
  };
  // To proof, however long that takes on this machine: a plan that stopped early is another one on a faster machine.
  const code = await run(['plan', DEMO, '--seconds', '3600'], io);
  if (code !== 0) throw new Error(`The demo has no plan (exit code ${code}): ${err.join('')}`);
  return out.join('');
}
