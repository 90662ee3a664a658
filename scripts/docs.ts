import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sourcesMarkdown } from '@waymend/catalogue/sources';
import { garageJsonSchema } from '@waymend/garage/file/json-schema';
import { answersJsonSchema } from '../apps/cli/src/schemas/answers.ts';
import { answersMarkdown } from './docs/answers.ts';
import { BASIS_LISTS } from './docs/bases.ts';
import { commandsMarkdown } from './docs/commands.ts';
import { demoPlan } from './docs/demo-plan.ts';
import { drift } from './docs/drift.ts';
import { modelTestsMarkdown } from './docs/model-tests.ts';
import { withDemo } from './docs/readme.ts';

/** Documents made from the code, by their path below the root. */
async function pages(root: string): Promise<ReadonlyMap<string, string>> {
  const json = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;
  const made = new Map([
    ['docs/sources.md', sourcesMarkdown(BASIS_LISTS)],
    ['docs/garage.schema.json', json(garageJsonSchema())],
    ['docs/answers.schema.json', json(answersJsonSchema())],
    ['docs/answers.md', answersMarkdown(answersJsonSchema())],
    ['docs/commands.md', commandsMarkdown()],
    ['docs/model-tests.md', modelTestsMarkdown(root)],
  ]);
  const demo = await demoPlan(root);
  if (demo === null) return made;
  const readme = readOrNothing(join(root, 'README.md'));
  if (readme !== null) made.set('README.md', withDemo(readme, demo));
  return made.set('docs/demo-plan.txt', demo);
}

/** Writes the documents, or with `check` compares them; returns the exit code. */
export async function docs(root: string, check: boolean): Promise<number> {
  let drifted = 0;
  for (const [path, text] of await pages(root)) {
    const file = join(root, path);
    const said = drift(path, readOrNothing(file), text);
    if (said === null) continue;
    drifted += 1;
    if (check) console.error(said);
    else {
      writeFileSync(file, text);
      console.log(`wrote ${path}`);
    }
  }
  if (check && drifted > 0) console.error('node scripts/docs.mjs writes them anew.');
  if (drifted === 0) console.log('The documents agree with the code.');
  return check && drifted > 0 ? 1 : 0;
}

function readOrNothing(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').replaceAll('\r\n', '\n');
  } catch {
    return null;
  }
}
