import type { StowAnswer, StowedBag, StowedItem, StowedPocket } from '@waymend/planner/answer/stow-answer';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { loadText, massText } from '@waymend/planner/words/mass';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';
import { widthOf } from './width.ts';

/** The pocket map of a whole kit: by berth, bag and pocket; what to do first; what is broken; what it does to the axles. */
export function stowLines(answer: StowAnswer, units: UnitStyle, paint: Paint): string[] {
  const pieces = answer.bags.reduce((sum, bag) => sum + inBag(bag).length, 0);
  const loose = answer.berths.reduce((sum, berth) => sum + berth.loose.length, 0);
  const total = answer.berths.reduce((sum, berth) => sum + berth.grams, 0);
  const lines = [
    ...heading(
      `${answer.trip.name}: ${pieces} ${pieces === 1 ? 'piece' : 'pieces'} in ${answer.bags.length} ${answer.bags.length === 1 ? 'bag' : 'bags'}, ${loose} loose, ${massText(total, units)} with the bags`,
      paint,
    ),
    ...paragraph(proof(answer)),
  ];
  if (answer.first.length > 0) {
    lines.push('', ...heading('Do first', paint));
    for (const sentence of answer.first) lines.push(...paragraph(`- ${sentence}`, 2, 4));
  }
  for (const berth of answer.berths) {
    const bags = answer.bags.filter((bag) => bag.berth === berth.id);
    if (bags.length === 0 && berth.loose.length === 0) continue;
    const room =
      berth.limitGrams === null
        ? ''
        : `, ${massText(berth.limitGrams - berth.grams, units)} more may ride here`;
    lines.push(
      '',
      ...heading(
        `${berth.name}${berth.atHand ? ', at hand' : ''}: ${massText(berth.grams, units)}${room}`,
        paint,
      ),
    );
    for (const bag of bags) lines.push(...bagLines(bag, units));
    if (berth.loose.length > 0) {
      lines.push('  loose');
      lines.push(...itemLines(berth.loose, units, 4));
    }
  }
  if (answer.emptyBags.length > 0)
    lines.push(
      '',
      ...paragraph(`Empty, stays home: ${answer.emptyBags.map(({ name }) => name).join(', ')}.`),
    );
  if (answer.broken.length > 0) {
    lines.push('', ...heading(`Not as it should be: ${answer.broken.length}`, paint));
    for (const { sentence, byHand } of answer.broken)
      lines.push(...paragraph(`! ${sentence}${byHand ? ' (put there by hand)' : ''}`, 2, 4));
  }
  lines.push('', ...heading('What it does to the axles, bags counted', paint), ...axleLines(answer, units));
  return lines;
}

function proof(answer: StowAnswer): string {
  const wrong = answer.levels
    .filter(({ level }) => level === 'danger' || level === 'order')
    .every(({ value }) => value === 0);
  const kept = wrong ? 'Every rule is kept. ' : '';
  if (answer.status === 'proven')
    return `${kept}Proven: with the bags where they ride, nothing goes in better.`;
  const open = answer.levels.filter(({ value, bound }) => value > bound);
  return `${kept}At most ${(100 * answer.gap).toFixed(1)} % is left to gain, in ${open.map(({ words }) => words).join('; ')}${answer.stoppedBy === null ? '' : '; the search was stopped early'}.`;
}

function inBag(bag: StowedBag): readonly StowedItem[] {
  return [...bag.pockets.flatMap(({ items }) => items), ...bag.items];
}

function bagLines(bag: StowedBag, units: UnitStyle): string[] {
  const marks = [
    bag.firstGrab ? 'first grab' : '',
    bag.spillproof ? 'holds spills' : '',
    bag.proposed ? 'proposed' : '',
    bag.moved ? 'moved here' : '',
  ].filter((word) => word !== '');
  const free =
    bag.roomMl === null
      ? ''
      : `, ${(Math.max(0, bag.roomMl - bag.usedMl) / 1000).toFixed(1)} of ${(bag.roomMl / 1000).toFixed(1)} l free`;
  const more = bag.limitGrams === null ? '' : `, ${massText(bag.limitGrams - bag.grams, units)} more allowed`;
  const lines = paragraph(
    `${bag.name}${marks.length > 0 ? ` (${marks.join(', ')})` : ''}: ${massText(bag.grams, units)}${free}${more}`,
    2,
    4,
  );
  for (const pocket of bag.pockets) {
    if (pocket.items.length === 0) continue;
    lines.push(`    ${scale(bag, pocket)} ${pocket.name}, ${fill(pocket)}`);
    lines.push(...itemLines(pocket.items, units, 8));
  }
  const free_ = bag.pockets.filter(({ items }) => items.length === 0);
  if (free_.length > 0)
    lines.push(
      ...paragraph(`free: ${free_.map(({ name, widthMm }) => `${name} (${widthMm} mm)`).join(', ')}`, 4, 6),
    );
  if (bag.items.length > 0 && bag.pockets.length > 0) lines.push('    in its room');
  lines.push(...itemLines(bag.items, units, bag.pockets.length > 0 ? 8 : 4));
  return lines;
}

function fill({ takes, used, room }: StowedPocket): string {
  return takes === 'mm'
    ? `${used} of ${room} mm`
    : `${(used / 1000).toFixed(2)} of ${(room / 1000).toFixed(2)} l`;
}

/** A slot to scale, one column for 5 mm of its flat width: full, then free. */
function scale(bag: StowedBag, { takes, used, room }: StowedPocket): string {
  if (takes !== 'mm') return '';
  const widest = Math.max(...bag.pockets.map((p) => (p.takes === 'mm' ? p.room : 0)));
  const columns = (mm: number): number => Math.round(mm / Math.max(5, widest / 20));
  const full = Math.min(columns(used), columns(room));
  const bar = `[${'#'.repeat(full)}${'.'.repeat(columns(room) - full)}]`;
  return `${bar}${' '.repeat(Math.max(0, columns(widest) + 2 - widthOf(bar)))}`;
}

function itemLines(items: readonly StowedItem[], units: UnitStyle, indent: number): string[] {
  return table(
    [
      { title: '', align: 'right' },
      { title: '', grow: true },
    ],
    items.map((item) => [massText(item.grams, units), `${item.name}${remarks(item)}`]),
    indent,
  );
}

function remarks({ firstGrab, byHand, cameFrom, standsOutMm }: StowedItem): string {
  const words = [
    firstGrab ? 'first grab' : '',
    byHand ? 'put by hand' : '',
    cameFrom === null ? '' : 'moved here',
    standsOutMm > 0 ? `stands out ${standsOutMm} mm` : '',
  ].filter((word) => word !== '');
  return words.length === 0 ? '' : ` (${words.join(', ')})`;
}

function axleLines({ load, loadAsPlanned }: StowAnswer, units: UnitStyle): string[] {
  const row = (
    name: string,
    now: StowAnswer['load']['front'],
    before: StowAnswer['load']['front'],
  ): string[] => {
    const change = now.kg - before.kg;
    const left =
      now.marginKg === null
        ? ''
        : now.marginKg < 0
          ? `OVER by ${loadText(-now.marginKg, units)}`
          : `${loadText(now.marginKg, units)} left`;
    return [
      name,
      loadText(now.kg, units),
      `${change < 0 ? '-' : '+'}${massText(Math.round(Math.abs(change) * 1000), units)}`,
      left,
    ];
  };
  return table(
    [
      { title: '' },
      { title: 'as stowed', align: 'right' },
      { title: 'to the plan', align: 'right' },
      { title: '' },
    ],
    [
      row('front axle', load.front, loadAsPlanned.front),
      row('rear axle', load.rear, loadAsPlanned.rear),
      row('gross mass', load.gross, loadAsPlanned.gross),
    ],
  );
}
