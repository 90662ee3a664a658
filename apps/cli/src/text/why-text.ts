import type { BelongingWhy, FailureWhy, JobWhy, WhyAnswer } from '@waymend/planner/answer/why-answer';
import { percent } from '@waymend/planner/words/chance';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { moneyText } from '@waymend/planner/words/money';
import { heading, paragraph } from './layout.ts';
import type { Paint } from './paint.ts';

export interface WhyTextOptions {
  readonly units: UnitStyle;
  readonly currency: string;
  readonly paint: Paint;
}

export function whyText(story: WhyAnswer, options: WhyTextOptions): string {
  const lines = linesOf(story, options);
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

function linesOf(story: WhyAnswer, options: WhyTextOptions): string[] {
  switch (story.kind) {
    case 'belonging':
      return belonging(story, options);
    case 'job':
      return job(story, options);
    case 'failure':
      return failure(story, options);
  }
}

function belonging(story: BelongingWhy, { paint, units, currency }: WhyTextOptions): string[] {
  const lines = heading(story.words, paint);
  if (story.jobs.length > 0) {
    lines.push('', `Only with it (${story.jobs.length} jobs or grades of jobs):`);
    for (const j of story.jobs) lines.push(...paragraph(`${j.id}  ${j.title}`, 2, 4));
  }
  if (story.comes) {
    lines.push('', 'In its place, best first:');
    if (story.substitutes.length === 0) lines.push('  nothing that is owned or sold singly does its work');
    for (const s of story.substitutes) {
      const price = s.owned ? 'already yours' : `about ${moneyText(s.cents, currency)}`;
      lines.push(
        ...paragraph(
          `${s.name}: ${massText(s.grams, units)}, ${price}, loses ${percent(s.chanceLost)}`,
          2,
          4,
        ),
      );
    }
  }
  return lines;
}

function job(story: JobWhy, { paint }: WhyTextOptions): string[] {
  const can = story.possible
    ? `can be done${story.grade === 'proper' ? '' : story.grade === 'with-care' ? ', with care' : ', as a last resort'}`
    : 'cannot be done with this kit and crew';
  const lines = heading(`${story.id} ${story.title}: ${can}`, paint);
  lines.push(
    `  skill ${story.skill} (best aboard ${story.bestSkill}), ${story.people} ${story.people === 1 ? 'person' : 'people'}`,
  );
  for (const n of story.needs) {
    lines.push(
      ...paragraph(
        `${n.met ? '+' : '-'} ${n.need}: ${n.met ? `${n.with.join(' with ')}${n.grade === 'proper' ? '' : ` (${n.grade === 'with-care' ? 'with care' : 'last resort'})`}` : 'missing'}`,
        2,
        6,
      ),
    );
  }
  for (const u of story.uses)
    lines.push(`  ${u.aboard >= u.each ? '+' : '-'} uses ${u.each} of ${u.of}; ${u.aboard} aboard`);
  if (story.cautions.length > 0) lines.push('', 'Mind:');
  for (const c of story.cautions) lines.push(...paragraph(`- ${c}`, 2, 4));
  if (story.after.length > 0) lines.push('', 'Afterwards:');
  for (const a of story.after) lines.push(...paragraph(`- ${a}`, 2, 4));
  return lines;
}

function failure(story: FailureWhy, { paint, units, currency }: WhyTextOptions): string[] {
  const lines = paragraph(
    `${story.title}: expected ${figure(story.expected)} times on this trip, ${figure(story.stopping)} times so that it stops the drive`,
  ).map(paint.strong);
  const notes = new Notes();
  for (const p of story.parts) {
    lines.push(
      ...paragraph(
        `${p.on}: ${p.title}, ${figure(p.base)} for the group ${notes.mark(p.basis)} x share ${percent(p.share)}${p.factors
          .map((f) => ` x ${figure(f.factor)} ${f.title.toLowerCase()} ${notes.mark(f.basis)}`)
          .join('')} = ${figure(p.events)}`,
        2,
        4,
      ),
    );
  }
  lines.push('', story.answers.length > 0 ? 'With this kit:' : 'With this kit: nothing answers it.');
  for (const a of story.answers) {
    lines.push(
      ...paragraph(`${a.job}  ${a.title} (${a.grade}): restores it in ${percent(a.chance)} of cases`, 2, 4),
    );
  }
  for (const c of story.cures) {
    lines.push(
      ...paragraph(
        `cure: ${c.words} (${massText(c.grams, units)}${c.cents > 0 ? `, about ${moneyText(c.cents, currency)}` : ''})`,
        2,
        4,
      ),
    );
  }
  lines.push('', 'Where the figures come from:', ...notes.lines());
  return lines;
}

/** Each source once, by number. */
class Notes {
  private readonly known: string[] = [];

  mark(basis: string): string {
    const at = this.known.indexOf(basis);
    if (at < 0) this.known.push(basis);
    return `[${at < 0 ? this.known.length : at + 1}]`;
  }

  lines(): string[] {
    return this.known.flatMap((basis, i) => paragraph(`[${i + 1}] ${basis}`, 2, 6));
  }
}

function figure(n: number): string {
  return n === 0 ? '0' : n >= 100 ? String(Math.round(n)) : String(Number(n.toPrecision(2)));
}
