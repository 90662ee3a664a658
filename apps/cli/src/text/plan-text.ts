import type { ComparisonAnswer, GapAnswer, KitItem, PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { aboutOneIn, grouped, percent } from '@waymend/planner/words/chance';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { moneyText } from '@waymend/planner/words/money';
import { heading, paragraph, table } from './layout.ts';
import { loadLines } from './load-text.ts';
import type { Paint } from './paint.ts';

export interface PlanTextOptions {
  readonly units: UnitStyle;
  readonly currency: string;
  /** Print every line of every list. */
  readonly all: boolean;
  readonly paint: Paint;
}

/** How many lines of a long list a person reads before asking for all of it. */
const SHORT_LIST = 12;
const SHORT_GAPS = 8;
/** A bound off by less than this (1 trip in 500) is not worth a line. */
const LEAST_BOUND = 0.002;

/** The plan as its owner would read it aloud: the answer first, then what comes, what stays, what is missing. */
export function planText(answer: PlanAnswer, options: PlanTextOptions): string {
  const { paint, units } = options;
  const lines: string[] = [];
  const say = (...more: readonly string[]) => lines.push(...more);
  const { trip, kit, unaided } = answer;

  say(...heading(`${trip.name}, with ${trip.vehicle}`, paint));
  say(...paragraph(`${grouped(trip.km)} km in ${grouped(trip.days)} days; ${crew(answer)}.`));
  say('');
  say(...paragraph(unaided.words).map(paint.strong));
  say(...paragraph(proof(answer, options)));
  say(
    ...paragraph(
      `Nobody knows the rates well: 9 in 10 beliefs about them put it between ${aboutOneIn(1 - unaided.high)} and ${aboutOneIn(1 - unaided.low)}.`,
    ),
  );
  if (unaided.sparesBound > LEAST_BOUND)
    say(
      ...paragraph(
        `Spares that several repairs share are counted low, to be safe: the true chance is up to ${percent(unaided.sparesBound)} better.`,
      ),
    );
  say('');
  say(...comparison(answer.comparisons, units));
  for (const warning of answer.warnings) say('', ...paragraph(`! ${warning}`, 0, 2));

  say(
    '',
    paint.strong(`Comes along: ${massText(kit.massGrams, units)}, ${counted(pieces(kit.items), 'piece')}`),
  );
  if (kit.estimatedGrams > 0) {
    say(
      ...paragraph(
        `${massText(kit.estimatedGrams, units)} of it is estimated (~): weigh what is heavy, the plan follows.`,
        2,
      ),
    );
  }
  say(...kitTable(kit.items, units));

  say('', ...staysHome(answer, options));
  say('', ...gaps(answer, options));
  say(...shopping(answer, options));
  if (answer.swaps.length > 0) {
    say('', paint.strong('Lighter for the same work'));
    for (const s of shorten(answer.swaps, options.all, SHORT_GAPS)) {
      const price = s.owned ? 'already yours' : `about ${moneyText(s.cents, options.currency)}`;
      say(
        ...paragraph(
          `${s.withName} instead of ${s.name}: ${massText(s.savedGrams, units)} less, ${price}.`,
          2,
          4,
        ),
      );
    }
  }
  say('', paint.strong('Load as you set out'), ...loadLines(answer.load, units));
  say(
    '',
    paint.strong('Where you stand'),
    ...paragraph(`${answer.standing.words} ${answer.standing.step}`, 2),
  );
  say('', ...paragraph(CAUTION, 0));
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

const CAUTION =
  "Rates and chances are estimates; sizes and torques must be your own. The maker's manual, local law and a licensed mechanic come first, " +
  'and nobody goes under a vehicle that only a jack holds.';

function crew(answer: PlanAnswer): string {
  return answer.trip.people.map((p) => `${p.name} (skill ${p.skill})`).join(' and ');
}

function proof(answer: PlanAnswer, { units, currency }: PlanTextOptions): string {
  const { budgetCents } = answer.shop;
  const limits = [
    ...(answer.aim.kind === 'best-chance' && answer.aim.limitGrams !== null
      ? [massText(answer.aim.limitGrams, units)]
      : []),
    ...(budgetCents > 0 ? [moneyText(budgetCents, currency)] : []),
  ];
  const within = limits.length === 0 ? '' : ` within ${limits.join(' and ')}`;
  if (answer.status === 'proven') {
    if (answer.aim.kind === 'best-chance')
      return `Proven: no other choice from what is on the table does better${within}.`;
    return 'Proven: no lighter choice does it.';
  }
  const [what, how] =
    answer.aim.kind === 'best-chance' ? ['the remaining risk', 'avoided'] : ['its mass', 'saved'];
  return `Not proven: at most ${percent(answer.gap)} of ${what} could still be ${how} (${answer.stoppedBy ?? 'stopped early'}).`;
}

function comparison(rows: readonly ComparisonAnswer[], units: UnitStyle): string[] {
  const lines = table(
    [
      { title: 'if you took', grow: true },
      { title: 'mass', align: 'right' },
      { title: 'pieces', align: 'right' },
      { title: 'limits broken', align: 'right' },
      { title: 'trips that need help', align: 'right' },
    ],
    rows.map((r) => [
      r.title,
      massText(r.massGrams, units),
      grouped(r.pieces),
      r.breaks.length > 0 ? `${r.breaks.length} *` : 'none',
      `${aboutOneIn(1 - r.unaided).replace('about ', '')} (${((1 - r.unaided) * 100).toFixed(1)} %)`,
    ]),
  );
  for (const r of rows)
    if (r.breaks.length > 0) lines.push(...paragraph(`* ${r.title}: ${r.breaks.join('; ')}`, 2, 4));
  return lines;
}

/** "1 in 45": how many trips it takes, on average, for the piece to save one. */
function saved(worth: number): string {
  return worth > 1e-6 ? `1 in ${grouped(roundTo2(1 / worth))}` : '-';
}

function roundTo2(n: number): number {
  if (n < 10) return Math.round(n * 10) / 10;
  const scale = 10 ** Math.max(0, Math.floor(Math.log10(n)) - 1);
  return Math.round(n / scale) * scale;
}

function kitTable(items: readonly KitItem[], units: UnitStyle): string[] {
  return table(
    [
      { title: 'mass', align: 'right' },
      { title: 'trips saved', align: 'right' },
      { title: 'what', most: 46 },
      { title: 'for', grow: true },
    ],
    items.map((item) => [
      `${item.weighed ? '' : '~'}${massText(item.grams, units)}`,
      item.worth > 1e-6 ? saved(item.worth) : reasonWord(item.reason),
      `${item.bought ? '(buy) ' : ''}${item.copies > 1 ? `${item.copies} x ` : ''}${item.name}`,
      jobsInBrief(item),
    ]),
  );
}

function reasonWord(reason: KitItem['reason']): string {
  switch (reason) {
    case 'floor':
      return 'floor';
    case 'pinned':
      return 'always';
    case 'must-do':
      return 'must-do';
    case 'in-set':
      return 'in its set';
    case 'worth':
      return 'small';
  }
}

function jobsInBrief(item: KitItem): string {
  const [first, ...others] = item.jobs;
  if (first === undefined) return item.reason === 'floor' ? 'safety, on every trip' : '';
  return others.length === 0 ? first.title : `${first.title}, and ${others.length} more`;
}

function staysHome(answer: PlanAnswer, options: PlanTextOptions): string[] {
  const { units, paint, all } = options;
  const home = answer.stayHome;
  const mass = home.reduce((sum, h) => sum + h.grams, 0);
  const lines = [
    paint.strong(
      `Stays home: ${massText(mass, units)}, ${counted(
        home.reduce((n, h) => n + h.copies, 0),
        'piece',
      )}`,
    ),
  ];
  if (home.length === 0) return [...lines, '  Nothing: everything you own earns its place.'];
  const shown = all
    ? home
    : [...home].sort((a, b) => b.couldAdd - a.couldAdd || b.grams - a.grams).slice(0, SHORT_LIST);
  lines.push(
    ...table(
      [
        { title: 'mass', align: 'right' },
        { title: 'what', most: 46 },
        { title: 'why it stays', grow: true },
      ],
      shown.map((h) => [
        massText(h.grams, units),
        `${h.copies > 1 ? `${h.copies} x ` : ''}${h.name}`,
        homeWhy(h),
      ]),
    ),
  );
  if (shown.length < home.length)
    lines.push(`  ... and ${home.length - shown.length} more (--all lists them).`);
  return lines;
}

function homeWhy(h: PlanAnswer['stayHome'][number]): string {
  switch (h.why) {
    case 'not-ready':
      return 'not ready: counts for nothing until it is';
    case 'not-understood':
      return 'not understood: teach Waymend what it is';
    case 'never':
      return 'you said never';
    case 'double':
      return 'does what another piece already does';
    case 'does-not-fit':
      return 'does not fit this vehicle';
    case 'over-the-limit':
      return `would save ${oneTripIn(h.couldAdd)}, but not for its mass`;
    case 'adds-nothing':
      return h.needs.length > 0
        ? `helps only together with ${h.needs.slice(0, 2).join(' and ')}`
        : 'no job here needs it';
  }
}

function shopping(answer: PlanAnswer, options: PlanTextOptions): string[] {
  const { units, paint, currency, all } = options;
  const { shop, buy } = answer;
  const price = { title: 'price', align: 'right' } as const;
  const mass = { title: 'mass', align: 'right' } as const;
  const lines: string[] = [];
  if (buy.length > 0) {
    const money = `${moneyText(shop.spentCents, currency)} of the ${moneyText(shop.budgetCents, currency)} you allow`;
    lines.push(
      '',
      paint.strong(`To buy: ${money}`),
      ...table(
        [price, mass, { title: 'trips saved', align: 'right' }, { title: 'what', grow: true }],
        buy.map((b) => [moneyText(b.cents, currency), massText(b.grams, units), saved(b.worth), b.name]),
      ),
    );
  }
  if (shop.left.length === 0) return lines;
  const shown = shorten(shop.left, all, SHORT_LIST);
  lines.push(
    '',
    paint.strong(`Stays in the shop: ${counted(shop.left.length, 'thing')} you thought of buying`),
    ...table(
      [price, mass, { title: 'what', most: 46 }, { title: 'why it stays', grow: true }],
      shown.map((l) => [moneyText(l.cents, currency), massText(l.grams, units), l.name, shopWhy(l)]),
    ),
  );
  if (shown.length < shop.left.length)
    lines.push(`  ... and ${shop.left.length - shown.length} more (--all lists them).`);
  return lines;
}

function shopWhy(left: PlanAnswer['shop']['left'][number]): string {
  switch (left.why) {
    case 'over-a-limit':
      return `would save ${oneTripIn(left.couldAdd)}, but not for its price and mass`;
    case 'adds-nothing-here':
      return left.needs.length > 0
        ? `helps only together with ${left.needs.slice(0, 2).join(' and ')}`
        : 'adds nothing to this kit';
    case 'no-job-needs-it':
      return 'no job here needs it';
  }
}

function oneTripIn(worth: number): string {
  return `1 trip in ${grouped(roundTo2(1 / Math.max(worth, 1e-9)))}`;
}

function gaps(answer: PlanAnswer, options: PlanTextOptions): string[] {
  const { paint } = options;
  if (answer.gaps.length === 0) return [paint.strong('Gaps: none that anything could close')];
  const lines = [paint.strong(`Gaps: ${counted(answer.gaps.length, 'failure')} without an answer`)];
  const shown = shorten(answer.gaps, options.all, SHORT_GAPS);
  for (const gap of shown) lines.push(...gapLines(gap, options));
  if (shown.length < answer.gaps.length)
    lines.push(`  ... and ${answer.gaps.length - shown.length} smaller ones (waymend gaps lists them).`);
  return lines;
}

export function gapLines(gap: GapAnswer, options: Pick<PlanTextOptions, 'units' | 'currency'>): string[] {
  const lines = paragraph(
    `${gap.title}: ${gap.words} Costs ${gap.worth > 1e-6 ? `1 trip in ${grouped(roundTo2(1 / gap.worth))}` : 'next to nothing'}.`,
    2,
    4,
  );
  for (const cure of gap.cures) {
    const cost = [
      cure.grams > 0 ? massText(cure.grams, options.units) : 'no mass',
      ...(cure.cents > 0 ? [`about ${moneyText(cure.cents, options.currency)}`] : []),
    ].join(', ');
    lines.push(...paragraph(`- ${cure.words} (${cost})`, 4, 6));
  }
  return lines;
}

function pieces(items: readonly KitItem[]): number {
  return items.reduce((sum, i) => sum + i.copies, 0);
}

function counted(n: number, word: string): string {
  return `${grouped(n)} ${word}${n === 1 ? '' : 's'}`;
}

function shorten<T>(list: readonly T[], all: boolean, most: number): readonly T[] {
  return all ? list : list.slice(0, most);
}
