import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A modest garage: one old wagon, two people, some fifty belongings, nothing to spend. */
export const WAGON = readFileSync(
  fileURLToPath(new URL('../fixtures/wagon.garage.yaml', import.meta.url)),
  'utf8',
);
export const WAGON_FILE = 'wagon.garage.yaml';

/** The wagon with one passage of its file changed; the passage must be there, once. */
export function wagonWith(passage: string, instead: string): string {
  const parts = WAGON.split(passage);
  if (parts.length !== 2) throw new Error(`"${passage}" stands ${parts.length - 1} times in the fixture`);
  return parts.join(instead);
}

/** 1-based line of a passage in a text. */
export function lineOf(text: string, passage: string): number {
  const at = text.indexOf(passage);
  if (at < 0) throw new Error(`"${passage}" is not in the text`);
  return text.slice(0, at).split('\n').length;
}
