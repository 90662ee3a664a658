// `npm run bench`: bundles and runs bench/bench.ts.
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle } from './bundle.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const out = join(root, 'node_modules', '.cache', 'waymend-bench.mjs');
mkdirSync(dirname(out), { recursive: true });
await bundle(join(root, 'bench', 'bench.ts'), out);
const done = spawnSync(process.execPath, [out, ...process.argv.slice(2)], { cwd: root, stdio: 'inherit' });
process.exit(done.status ?? 1);
