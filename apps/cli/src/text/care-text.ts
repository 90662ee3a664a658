import type { ReadyAnswer } from '@waymend/planner/answer/ready-answer';
import { grouped, percent } from '@waymend/planner/words/chance';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

/** Lines of a list before it says "and so many more". */
const SHOWN = 12;

/** Readiness, what to do in the order of risk, and what the record knows of repairs, loans and its own log. */
export function careText(answer: ReadyAnswer, paint: Paint, all: boolean): string {
  const { trip, today, leaveOn, homeOn, words, tasks, minutes } = answer;
  const lines = [
    ...heading(`${trip}: on ${today}, leaving on ${leaveOn}, home on ${homeOn}.`, paint),
    ...paragraph(words),
  ];
  if (tasks.length > 0) {
    const shown = all ? tasks : tasks.slice(0, SHOWN);
    lines.push('', ...heading(`To do before leaving: about ${grouped(minutes)} minutes (estimate)`, paint));
    lines.push(
      ...table(
        [
          { title: 'chance lost', align: 'right' },
          { title: 'min', align: 'right' },
          { title: 'what', most: 32 },
          { title: 'why', grow: true },
        ],
        shown.map((t) => [
          t.blocks ? 'stay' : t.chanceLost > 0 ? percent(t.chanceLost) : '-',
          t.minutes === null ? '?' : String(t.minutes),
          t.title,
          `${t.words}${t.takes.length === 0 ? '' : ` (takes: ${t.takes.join(', ')})`}`,
        ]),
      ),
    );
    if (shown.length < tasks.length) lines.push(`  and ${tasks.length - shown.length} more (--all)`);
  }
  const later = answer.dues.filter((d) => d.when === 'later' && d.on !== null);
  const unknown = answer.dues.filter((d) => d.when === 'unknown');
  if (later.length > 0) {
    lines.push('', ...heading('Due later', paint));
    const shown = all ? later : later.slice(0, SHOWN);
    lines.push(
      ...table(
        [{ title: '' }, { title: '', most: 36 }, { title: '', grow: true }],
        shown.map((d) => [d.on ?? '', d.name, d.words]),
      ),
    );
    if (shown.length < later.length) lines.push(`  and ${later.length - shown.length} more (--all)`);
  }
  if (unknown.length > 0) {
    const names = [...new Set(unknown.map((d) => d.name))];
    lines.push(
      '',
      ...paragraph(
        `No date is recorded for ${names.length} of the things that grow old: ${names.slice(0, 5).join('; ')}${names.length > 5 ? ' and more' : ''}. Read the dates off them once.`,
      ),
    );
  }
  if (answer.repairs.length > 0) {
    lines.push('', ...heading('Repairs to watch', paint));
    for (const r of answer.repairs) lines.push(...paragraph(repairWords(r), 2, 4));
  }
  const out = answer.loans.filter((l) => l.backOn === null);
  if (out.length > 0) {
    lines.push('', ...heading('Lent', paint));
    for (const l of out)
      lines.push(
        ...paragraph(
          `${l.copies > 1 ? `${l.copies} x ` : ''}${l.name}, to ${l.to} since ${l.on}${l.daysLate > 0 ? `, ${l.daysLate} days late` : ''}`,
          2,
          4,
        ),
      );
  }
  lines.push(...logLines(answer, paint));
  lines.push(
    '',
    ...paragraph(
      "Intervals and shelf lives are defaults: the maker's manual, the label and local law come first.",
    ),
  );
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

/** One repair in a sentence: how fast, how far, when to look. */
export function repairWords(r: ReadyAnswer['repairs'][number]): string {
  const parts = [
    `${r.title} (${r.id}, ${r.on})`,
    r.lasts === 'permanent' ? 'permanent' : r.lasts === 'temporary' ? 'temporary' : 'only made safe',
    ...(r.speedKmh === null ? [] : [`${r.speedKmh} km/h at most`]),
    ...(r.trustLeftKm === null
      ? []
      : [
          r.trustLeftKm < 0
            ? `trusted no longer: ${grouped(Math.round(-r.trustLeftKm))} km too far`
            : `trusted for ${grouped(Math.round(r.trustLeftKm))} km more`,
        ]),
    ...(r.lookInKm === null
      ? []
      : [r.lookInKm <= 0 ? 'a look is due now' : `look again in ${grouped(Math.round(r.lookInKm))} km`]),
    ...(r.worse ? ['found worse at the last look'] : []),
  ];
  return `${parts.join('; ')}.${r.limits === null ? '' : ` ${r.limits}`}`;
}

function logLines({ ownLog }: ReadyAnswer, paint: Paint): string[] {
  if (ownLog.groups.length === 0) return [];
  const range = (b: { readonly mean: number; readonly low: number; readonly high: number }) =>
    `${b.mean.toFixed(2)} (${b.low.toFixed(2)} to ${b.high.toFixed(2)})`;
  return [
    '',
    ...heading(`What your own log teaches: ${grouped(ownLog.km)} km`, paint),
    ...paragraph(
      'Rates as multiples of the usual ones, with the range they lie in with 90 % belief, before and after.',
      2,
      2,
    ),
    ...table(
      [
        { title: 'group', grow: true },
        { title: 'happened', align: 'right' },
        { title: 'expected', align: 'right' },
        { title: 'before' },
        { title: 'now' },
      ],
      ownLog.groups.map((g) => [
        g.title,
        String(g.events),
        g.expected.toFixed(2),
        range(g.prior),
        range(g.posterior),
      ]),
    ),
  ];
}
