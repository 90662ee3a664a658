#!/usr/bin/env node
// The bundle is made by `npm start` or `npm test`; a checkout that has run neither is told so in a sentence.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const bundle = new URL('../dist/waymend.mjs', import.meta.url);
if (!existsSync(fileURLToPath(bundle))) {
  console.error('Waymend is not built yet: run `npm start` once in the checkout.');
  process.exit(2);
}
await import(bundle.href);
