import type { SimulateAnswer, SimulatedChance, StoryAnswer } from '@waymend/planner/answer/simulate-answer';
import { aboutOneIn, grouped, percent } from '@waymend/planner/words/chance';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

/** Rows of each list; the JSON has them all. */
const ROWS = 12;

/** What happened on the drawn trips, as somebody would tell it who was there. */
export function simulateText(
  answer: SimulateAnswer,
  { units, grams, paint }: { readonly units: UnitStyle; readonly grams: number; readonly paint: Paint },
): string {
  const { unaided, against } = answer;
  const lines = [
    ...heading(
      `${grouped(answer.trips)} drawn trips with the kit of ${massText(grams, units)}: help needed on ${aboutOneIn(1 - unaided.chance)}`,
      paint,
    ),
    ...paragraph(
      `Between ${percent(1 - unaided.high)} and ${percent(1 - unaided.low)} of the trips needed help (95 % interval); the plan states ${percent(1 - answer.stated)}. ${answer.words}`,
    ),
  ];
  if (against !== null) lines.push('', ...paragraph(comparison(unaided, against, units)));
  lines.push(
    '',
    ...heading('What ended the drive', paint),
    ...table(
      [
        { title: 'trips', align: 'right' },
        { title: 'failure', grow: true },
      ],
      answer.strands.slice(0, ROWS).map((s) => [aboutOneIn(s.share), s.title]),
    ),
    '',
    ...heading('What was used most', paint),
    ...table(
      [
        { title: 'times in 100 trips', align: 'right' },
        { title: 'piece', grow: true },
      ],
      answer.used.slice(0, ROWS).map((u) => [times(u.perTrip * 100), u.name]),
    ),
    '',
    ...heading('A few of the trips', paint),
    ...answer.stories.flatMap((story) => paragraph(told(story), 2, 4)),
  );
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

function comparison(
  unaided: SimulatedChance,
  { title, massGrams, unaided: other, onlyThisKit, onlyTheOther }: NonNullable<SimulateAnswer['against']>,
  units: UnitStyle,
): string {
  return `The same trips with ${title} (${massText(massGrams, units)}): help needed on ${percent(1 - other.chance)} instead of ${percent(1 - unaided.chance)}. On ${percent(onlyThisKit)} of the trips only the planned kit came home, on ${percent(onlyTheOther)} only the other.`;
}

function told({ home, events }: StoryAnswer): string {
  const parts = events.map(({ title, job, held, ranOut, with: pieces }) => {
    const name = title.charAt(0).toUpperCase() + title.slice(1);
    if (ranOut) return `${name}: what it takes had been used up.`;
    if (job === null) return `${name}: nothing aboard could help.`;
    if (!held) return `${name}: the repair did not hold.`;
    const tools =
      pieces.length === 0
        ? ''
        : ` (${pieces.slice(0, 3).join('; ')}${pieces.length > 3 ? ` and ${pieces.length - 3} more` : ''})`;
    return `${name}: ${job.charAt(0).toLowerCase()}${job.slice(1)}${tools}.`;
  });
  return `- ${parts.join(' ')} ${home ? 'Home.' : 'Help had to come.'}`;
}

function times(n: number): string {
  return n >= 10 ? String(Math.round(n)) : n >= 0.1 ? n.toFixed(1) : 'under 0.1';
}
