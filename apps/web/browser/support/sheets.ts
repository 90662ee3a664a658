import { readFileSync } from 'node:fs';

/** A sheet that has an address of its own. */
export interface SheetOfThePlanner {
  readonly name: string;
  readonly path: string;
}

/** Every sheet there is; sheets.spec.ts compares the list with the links that the planner shows. */
export const SHEETS = JSON.parse(
  readFileSync(new URL('./sheets.json', import.meta.url), 'utf8'),
) as readonly SheetOfThePlanner[];

export const PHONE = { width: 390, height: 844 };
export const DESK = { width: 1440, height: 900 };
export const SIZES = [
  { name: 'phone', viewport: PHONE },
  { name: 'desk', viewport: DESK },
] as const;
