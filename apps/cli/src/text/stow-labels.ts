import type { StowAnswer, StowedItem } from '@waymend/planner/answer/stow-answer';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { paragraph } from './layout.ts';

/** One label for each bag and each pocket that holds something, to print and cut: name, count, then what belongs in it. */
export function labelLines(answer: StowAnswer, units: UnitStyle): string[] {
  const lines: string[] = [];
  for (const bag of answer.bags) {
    const count = bag.items.length + bag.pockets.reduce((sum, { items }) => sum + items.length, 0);
    lines.push(
      ...paragraph(`${bag.name} - ${bag.berthName} - ${pieces(count)}, ${massText(bag.grams, units)}`),
    );
    for (const pocket of bag.pockets)
      if (pocket.items.length > 0)
        lines.push(
          ...paragraph(`${pocket.name} - ${pieces(pocket.items.length)}: ${names(pocket.items)}`, 2, 4),
        );
    if (bag.items.length > 0)
      lines.push(...paragraph(`inside - ${pieces(bag.items.length)}: ${names(bag.items)}`, 2, 4));
    lines.push('-'.repeat(40));
  }
  return lines;
}

function pieces(count: number): string {
  return count === 1 ? '1 piece' : `${count} pieces`;
}

/** Equal names once, with how many. */
function names(items: readonly StowedItem[]): string {
  const counts = new Map<string, number>();
  for (const { name } of items) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, n]) => (n === 1 ? name : `${n} x ${name}`)).join('; ');
}
