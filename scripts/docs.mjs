// Writes the documents that are made from the code; `--check` says instead which of them no longer agree with it.
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const built = join(root, 'node_modules', '.cache', 'waymend', 'docs.mjs');
mkdirSync(dirname(built), { recursive: true });
await bundle(join(root, 'scripts', 'docs.ts'), built);
const { docs } = await import(pathToFileURL(built).href);
process.exitCode = await docs(root, process.argv.includes('--check'));
