import type {
  CardAnswer,
  CourseCard,
  ExpedientCard,
  JobCard,
  NeedCard,
  PieceRef,
  SymptomCard,
  SymptomListCard,
  WayCard,
} from '@waymend/planner/answer/card-answer';
import { percent } from '@waymend/planner/words/chance';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

/** A card for somebody cold and tired: what to do first stands first. */
export function cardText(card: CardAnswer, paint: Paint): string {
  const lines = linesOf(card, paint);
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

function linesOf(card: CardAnswer, paint: Paint): string[] {
  switch (card.kind) {
    case 'symptoms':
      return symptoms(card, paint);
    case 'symptom':
      return symptom(card, paint);
    case 'job':
      return job(card, paint);
  }
}

function symptoms({ areas }: SymptomListCard, paint: Paint): string[] {
  return [
    ...heading('What do you notice?', paint),
    ...areas.flatMap(({ area, symptoms: list }) => [
      '',
      ...heading(capital(area), paint),
      ...table(
        [{ title: '' }, { title: '', grow: true }],
        list.map(({ id, title }) => [id, title]),
      ),
    ]),
    '',
    'Then: waymend card FILE --symptom ID',
  ];
}

/** Suspects printed; the JSON has them all. */
const MOST_SUSPECTS = 6;

function symptom(card: SymptomCard, paint: Paint): string[] {
  const lines = [...heading(card.title, paint), ...bullets(card.first, '!')];
  for (const { ask, text } of card.given) lines.push(...paragraph(`${ask} ${text}.`, 2, 4));
  if (card.next !== null) {
    lines.push('', ...paragraph(card.next.ask).map(paint.strong));
    const { id: question, answers } = card.next;
    lines.push(
      ...table(
        [{ title: '' }, { title: '', grow: true }],
        answers.map(({ id, text }) => [`--answer ${question}=${id}`, text]),
      ),
    );
  }
  lines.push('', 'Most likely, for this vehicle and trip:');
  for (const suspect of card.suspects.slice(0, MOST_SUSPECTS)) {
    const doubt = suspect.against.length === 0 ? '' : ' (an answer speaks against it)';
    lines.push(...paragraph(`${percent(suspect.share)}  ${suspect.title}${doubt}`, 2, 8));
    for (const j of suspect.jobs)
      lines.push(
        ...paragraph(
          `${j.id}  ${j.title}: ${j.grade === null ? 'not now' : !j.inStock ? 'its part is not here' : GRADE_WORDS[j.grade]}`,
          8,
          12,
        ),
      );
    if (suspect.stop !== null) lines.push(...paragraph(`STOP: ${suspect.stop}`, 8, 12));
  }
  const more = card.suspects.length - MOST_SUSPECTS;
  if (more > 0) lines.push(`  and ${more} less likely (--json lists them)`);
  if (card.stop !== null) lines.push('', ...paragraph(`! ${card.stop}`, 0, 2));
  lines.push('', ...paragraph(card.basis));
  return lines;
}

const GRADE_WORDS = {
  proper: 'can be done',
  'with-care': 'can be done with care',
  'last-resort': 'can be done as a last resort',
} as const;

function job(card: JobCard, paint: Paint): string[] {
  const state = card.now ? GRADE_WORDS[card.grade ?? 'proper'] : 'NOT NOW';
  const { people, help } = card;
  const lines = [
    ...heading(`${card.id} ${card.title}: ${state}`, paint),
    ...paragraph(
      `${card.minutes[0]} to ${card.minutes[1]} minutes${card.dark ? ' in the dark' : ''}; ${people.wanted === 1 ? '1 person' : `${people.wanted} people`} of skill ${people.skill} (here: ${people.here}, best ${people.bestSkill}). ${outcome(card)} Help: ${round(help.km)} km${help.from === 'said' ? '' : ', the worst of this trip'}.`,
    ),
    ...bullets(card.why, '!'),
    ...decision(card, paint),
    ...section('Mind', card.cautions, paint),
    ...section('Do not', card.doNot, paint),
    '',
    paint.strong('You need'),
    ...card.needs.flatMap(need),
  ];
  for (const use of card.uses)
    lines.push(
      ...paragraph(
        `${use.left === null ? '-' : '+'} uses ${use.each} of ${use.name}: ${use.aboard} here${use.left === null ? ', not enough' : `, ${use.left} left`}`,
        2,
        6,
      ),
    );
  if (card.helps.length > 0) {
    lines.push('', paint.strong('Of use, and here'));
    for (const { what, with: piece } of card.helps)
      lines.push(...paragraph(`${what}: ${place(piece)}`, 2, 6));
  }
  lines.push(
    '',
    paint.strong('Steps'),
    ...card.steps.flatMap((step, n) => paragraph(`${n + 1}. ${step}`, 2, 5)),
  );
  lines.push(...torques(card, paint));
  if (card.wire !== null) lines.push('', ...paragraph(card.wire));
  if (card.after.length > 0) {
    lines.push('', paint.strong('Afterwards'));
    for (const { check, km } of card.after)
      lines.push(
        ...paragraph(
          `- ${check}${km === null || km === 0 ? ' (before driving on)' : ` (after ${round(km)} km)`}`,
          2,
          4,
        ),
      );
  }
  if (card.expedients.length > 0) {
    lines.push('', paint.strong('If that cannot be done'));
    lines.push(...card.expedients.flatMap((e) => expedient(e, help.km)));
  }
  lines.push('', ...paragraph(card.closing));
  return lines;
}

function outcome({ outcome: to, trustedKm }: JobCard): string {
  if (to === 'drive-on') return 'Then it drives on.';
  if (to === 'made-safe') return 'Then it is out of harm, and does not drive on.';
  return trustedKm === null
    ? 'Then it limps, to the end of the trip.'
    : `Then it limps, trusted for ${round(trustedKm)} km.`;
}

const COURSE_WORDS: Readonly<Record<CourseCard['course'], string>> = {
  fix: 'Fix it',
  limp: 'Limp',
  wait: 'Wait',
  call: 'Call for help',
};
const VERDICT_WORDS: Readonly<Record<CourseCard['verdict'], string>> = { first: '>', may: '-', not: 'x' };

function decision({ decision: { before, courses } }: JobCard, paint: Paint): string[] {
  return [
    '',
    paint.strong('What now (> first, - would do, x not now)'),
    ...bullets(before, '!'),
    ...courses.flatMap(({ course, verdict, reasons }) =>
      paragraph(`${VERDICT_WORDS[verdict]} ${COURSE_WORDS[course]}: ${reasons.join(' ')}`, 2, 4),
    ),
  ];
}

function need(card: NeedCard): string[] {
  const { best, others } = card;
  const lines = paragraph(
    `${best === null ? '-' : '+'} ${card.what}: ${best === null ? 'NOTHING HERE DOES IT' : pieces(best)}`,
    2,
    6,
  );
  if (best?.pull) lines.push(...paragraph(best.pull.words, 6));
  if (others.length > 0) lines.push(...paragraph(`or: ${others.map(pieces).join('; or ')}`, 6));
  for (const wanted of card.wanted) lines.push(...paragraph(`would do it: ${wanted}`, 6, 8));
  lines.push(...card.doNot.flatMap((s) => paragraph(`x ${s}`, 6, 8)));
  return lines;
}

function pieces({ grade, pieces: list }: WayCard): string {
  const said = list.map(place).join(' + ');
  return grade === 'proper' ? said : `${said} (${grade === 'with-care' ? 'with care' : 'last resort'})`;
}

function place({ name, where }: PieceRef): string {
  return where === 'kit' ? name : `${name} [${where}]`;
}

function torques(card: JobCard, paint: Paint): string[] {
  if (card.torques.length === 0) return [];
  return [
    '',
    paint.strong('Do up to'),
    ...card.torques.flatMap((t) => [
      ...paragraph(`${t.place}: ${round(t.nm)} N m (${round(t.from)} to ${round(t.to)}; ${t.basis})`, 2, 4),
      ...t.sentences.flatMap((s) => paragraph(s, 4)),
    ]),
  ];
}

function expedient(e: ExpedientCard, helpKm: number): string[] {
  const trust =
    e.trustedKm === null
      ? 'to the end of the trip'
      : `${round(e.trustedKm)} km of the ${round(helpKm)} to help: ${e.reachesHelp ? 'it reaches' : 'it does NOT reach'}`;
  const pace = e.speedKmh === null ? '' : `, at most ${e.speedKmh} km/h`;
  const again = e.lookAgainKm === null ? '' : `, look again every ${round(e.lookAgainKm)} km`;
  return [
    ...paragraph(`${e.possible ? '+' : '-'} ${e.title}: ${trust}${pace}${again}`, 2, 4),
    ...(e.missing.length > 0 ? paragraph(`missing: ${e.missing.join('; ')}`, 6) : []),
    ...(e.possible && e.with.length > 0 ? paragraph(`with ${e.with.map(place).join(', ')}`, 6) : []),
    ...(e.possible ? e.steps.flatMap((s) => paragraph(`. ${s}`, 6, 8)) : []),
    ...paragraph(e.limits, 6),
  ];
}

function section(title: string, list: readonly string[], paint: Paint): string[] {
  return list.length === 0 ? [] : ['', paint.strong(title), ...bullets(list, '-')];
}

function bullets(list: readonly string[], mark: string): string[] {
  return list.flatMap((s) => paragraph(`${mark} ${s}`, 2, 4));
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function round(n: number): number {
  return Math.round(n * 10) / 10;
}
