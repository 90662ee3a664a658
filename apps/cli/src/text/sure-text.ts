import type { MeasureNext, SureAnswer, SureItem, WhatIf } from '@waymend/planner/answer/sure-answer';
import { aboutOneIn, percent } from '@waymend/planner/words/chance';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

/** Rows of each list; the JSON has them all. */
const ROWS = 15;
/** Less than one trip in 10,000 is not worth a line. */
const LEAST_GAIN = 1e-4;

/** How sure the plan is, as one would say it to somebody about to pack by it. */
export function sureText(answer: SureAnswer, units: UnitStyle, paint: Paint): string {
  const { items, planned, together } = answer;
  const worthwhile = answer.measureNext.filter((one) => one.gain >= LEAST_GAIN);
  const is = (how: SureItem['how'], inKit: boolean) =>
    items.filter((i) => i.how === how && i.inKit === inKit);
  const lines = [
    ...heading('How sure', paint),
    ...paragraph(answer.words),
    ...paragraph(
      `If the route is worse or kinder than thought in every way at once, between ${aboutOneIn(1 - together.high)} and ${aboutOneIn(1 - together.low)}.`,
    ),
    ...answer.whatIf.flatMap((one) => paragraph(whatIf(one), 2, 4)),
    '',
    ...heading(`In the best kit whatever the rates (${planned} beliefs about them)`, paint),
    ...paragraph(
      `Sure, in at least 90 of 100: ${is('sure', true).length} of what comes along. Likely, in at least half: ${is('likely', true).length}. The other ${is('taste', true).length} are a matter of taste: as good a kit goes without.`,
    ),
    ...shares('Comes along by a hair', is('taste', true), units, paint),
    ...shares('Stays home by a hair', [...is('sure', false), ...is('likely', false)], units, paint),
    '',
    ...heading('Measure next', paint),
    ...(worthwhile.length === 0
      ? paragraph('No assumed size that was looked into would save a trip in 10,000 by being known.')
      : worthwhile.slice(0, ROWS).flatMap((one) => paragraph(measure(one), 0, 4))),
    ...(answer.notLookedInto === 0
      ? []
      : paragraph(
          `${answer.notLookedInto} more assumed sizes were not looked into, because less hangs on them; --sizes asks for more.`,
        )),
    '',
    ...heading('See to it at home instead of carrying', paint),
    ...table(
      [
        { title: 'trips saved', align: 'right' },
        { title: 'what', grow: true },
      ],
      answer.prevent.slice(0, ROWS).map((p) => [`1 in ${oneIn(p.gain)}`, `${p.title}: ${p.what}`]),
    ),
  ];
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

function whatIf({ words, chance, best, joins, leaves }: WhatIf): string {
  const then = `- With ${words}, this kit needs help on ${percent(1 - chance)}`;
  if (best === null) return `${then}; no kit can be planned then.`;
  if (joins.length === 0 && leaves.length === 0) return `${then}, and it is still the best kit.`;
  const change = [
    ...(joins.length === 0 ? [] : [`${few(joins)} would come`]),
    ...(leaves.length === 0 ? [] : [`${few(leaves)} would stay`]),
  ];
  return `${then}; the best kit then, on ${percent(1 - best)}: ${change.join('; ')}.`;
}

function measure({ title, assumed, gain, how, others }: MeasureNext): string {
  const [worst] = [...others].sort(
    (a, b) => b.likely * (b.best - b.planned) - a.likely * (a.best - a.planned),
  );
  const then =
    worst === undefined || worst.joins.length === 0
      ? ''
      : ` If it is ${worst.size}, the better kit brings ${few(worst.joins)}.`;
  return `${title}, assumed ${assumed}: knowing it saves one trip in ${oneIn(gain)}.${then} How: ${how}.`;
}

function oneIn(chance: number): string {
  return aboutOneIn(chance).replace(/^(about|less than) 1 in /, '');
}

function shares(title: string, items: readonly SureItem[], units: UnitStyle, paint: Paint): string[] {
  if (items.length === 0) return [];
  return [
    '',
    ...heading(title, paint),
    ...table(
      [
        { title: 'best kits', align: 'right' },
        { title: 'mass', align: 'right' },
        { title: 'what', grow: true },
      ],
      items
        .slice(0, ROWS)
        .map((i) => [
          percent(i.share),
          massText(i.grams, units),
          i.owned ? i.name : `${i.name} (to be bought)`,
        ]),
    ),
  ];
}

function few(names: readonly string[]): string {
  const shown = names.slice(0, 3);
  return names.length > 3 ? `${shown.join(', ')} and ${names.length - 3} more` : shown.join(', ');
}
