import type { Day } from './calendar.ts';
import { addDays, addMonths, addYears, daysBetween, earlier } from './calendar.ts';
import type { CareRuleFacts, CareThing, CareTime } from './care-input.ts';
import type { Charge } from './self-discharge.ts';
import { chargeAfter } from './self-discharge.ts';

export type CareKind =
  | 'expiry'
  | 'charge'
  | 'replace'
  | 'pressure'
  | 'service'
  | 'calibration'
  | 'check'
  | 'storage';

/** 'unknown': no date is recorded to count from. */
export type DueWhen = 'overdue' | 'before-leaving' | 'on-trip' | 'after-trip' | 'later' | 'unknown';

export interface CareDue {
  readonly thing: string;
  readonly name: string;
  readonly rule: string;
  readonly kind: CareKind;
  /** Null where no date is recorded to count from. */
  readonly on: Day | null;
  readonly when: DueWhen;
  /** One plain sentence without its full stop: what is due and why. */
  readonly words: string;
  /** What to do: the rule's own text. */
  readonly advice: string;
  readonly minutes: number;
  readonly takes: readonly string[];
  /** State of charge on the day of leaving, where it is known. */
  readonly charge?: Charge;
}

type Found = Pick<CareDue, 'kind' | 'on' | 'words'> & Partial<Pick<CareDue, 'when' | 'charge'>>;

/** Everything that care asks for a thing, from each of its rules and its dates. */
export function duesOf(thing: CareThing, time: CareTime): readonly CareDue[] {
  const printed = printedDate(thing);
  const byRule = thing.rules.flatMap((rule) =>
    [shelf(thing, rule), age(thing, rule), regular(thing, rule, time), storage(rule, time)].flatMap(
      (found) => (found === null ? [] : [due(thing, rule, found, time)]),
    ),
  );
  const [first] = thing.rules;
  if (printed === null) return byRule;
  const dated = { id: first?.id ?? 'printed-date', text: first?.text ?? 'Read the date on it.', minutes: 1 };
  return [due(thing, dated, printed, time), ...byRule];
}

function due(
  thing: CareThing,
  rule: Pick<CareRuleFacts, 'id' | 'text' | 'minutes' | 'takes'>,
  found: Found,
  time: CareTime,
): CareDue {
  return {
    thing: thing.id,
    name: thing.name,
    rule: rule.id,
    when: whenOf(found.on, time),
    advice: rule.text,
    minutes: rule.minutes,
    takes: rule.takes ?? [],
    ...found,
  };
}

function whenOf(on: Day | null, { today, leaveOn, homeOn }: CareTime): DueWhen {
  if (on === null) return 'unknown';
  if (on < today) return 'overdue';
  if (on <= leaveOn) return 'before-leaving';
  return on <= homeOn ? 'on-trip' : 'later';
}

function printedDate(thing: CareThing): Found | null {
  const on = thing.expiresOn;
  return on === undefined ? null : { kind: 'expiry', on, words: `the date printed on it is ${on}` };
}

/** A printed date speaks for a sealed thing better than years on the shelf; an opened one keeps as long as opened ones do. */
function shelf(thing: CareThing, rule: CareRuleFacts): Found | null {
  if (rule.shelfYears === undefined) return null;
  const { sealed, openedYears } = rule.shelfYears;
  const [years] = sealed;
  const made = thing.madeOn === undefined ? null : addYears(thing.madeOn, years);
  const opened =
    thing.openedOn === undefined || openedYears === undefined ? null : addYears(thing.openedOn, openedYears);
  if (opened !== null && (made === null || opened <= made || thing.expiresOn !== undefined))
    return {
      kind: 'expiry',
      on: opened,
      words: `opened on ${thing.openedOn ?? ''}, it keeps ${yearsText(openedYears ?? 0)} from then`,
    };
  if (thing.expiresOn !== undefined) return null;
  if (made === null)
    return {
      kind: 'expiry',
      on: null,
      words: 'no date is recorded: read it off the pack, or look how it is',
    };
  return { kind: 'expiry', on: made, words: `made on ${thing.madeOn ?? ''}, it keeps ${yearsText(years)}` };
}

function age(thing: CareThing, rule: CareRuleFacts): Found | null {
  if (rule.replaceYears === undefined) return null;
  const renewed = rule.renews === true ? lastSeen(thing, rule)?.on : undefined;
  const from = renewed === undefined || (thing.madeOn ?? '') > renewed ? thing.madeOn : renewed;
  if (from === undefined) return { kind: 'replace', on: null, words: 'nobody has noted how old it is' };
  const [years] = rule.replaceYears;
  return {
    kind: 'replace',
    on: addYears(from, years),
    words: `it is due for a new one ${yearsText(years)} after ${from}`,
  };
}

/** The look that a rule asks for every so many months, and around a trip. */
function regular(thing: CareThing, rule: CareRuleFacts, time: CareTime): Found | null {
  const kind = rule.look ?? 'check';
  if (rule.everyTrip === 'after') {
    const on = addDays(time.homeOn, time.restockDays);
    return { kind, on, when: 'after-trip', words: `${rule.title.toLowerCase()}: once home again` };
  }
  if (kind === 'charge') return charging(thing, rule, time);
  const { everyMonths, everyTrip } = rule;
  if (everyMonths === undefined && everyTrip === undefined) return null;
  const last = lastSeen(thing, rule, time.today)?.on;
  if (last === undefined) return { kind, on: time.leaveOn, words: 'it has not been noted as seen to' };
  const byMonths = everyMonths === undefined ? null : addMonths(last, everyMonths);
  const fresh = daysBetween(last, time.leaveOn) <= time.freshDays;
  const byTrip = everyTrip === undefined || fresh ? null : time.leaveOn;
  const on = byMonths === null ? byTrip : byTrip === null ? byMonths : earlier(byMonths, byTrip);
  if (on === null) return null;
  const words =
    on === byMonths
      ? `last seen to on ${last}, every ${everyMonths ?? 0} months`
      : `last seen to on ${last}, and again before every trip`;
  return { kind, on, words };
}

/** Whether there is charge enough to leave with: as it was last left, less what it has lost by itself. */
function charging(thing: CareThing, rule: CareRuleFacts, time: CareTime): Found {
  const wanted = rule.storage?.leaveAtPct ?? 100;
  const charged = thing.seen
    .filter(({ rule: of, on, chargePct }) => of === rule.id && on <= time.today && chargePct !== undefined)
    .reduce<CareThing['seen'][number] | null>((a, b) => (a === null || b.on >= a.on ? b : a), null);
  const facts = time.selfDischarge.get(rule.id);
  if (charged?.chargePct === undefined || facts === undefined)
    return {
      kind: 'charge',
      on: time.leaveOn,
      words: `nobody has noted its charge; fill it to ${wanted} % or more`,
    };
  const charge = chargeAfter(charged.chargePct, daysBetween(charged.on, time.leaveOn), time.keptAtC, facts);
  const words = `at ${time.keptAtC} C about ${Math.round(charge.pct)} % by the day you leave`;
  // A lead battery is never left at exactly full for a day; what rounds to the wanted charge is it.
  if (Math.round(charge.low) < wanted)
    return { kind: 'charge', on: time.leaveOn, words: `${words}; top it up to ${wanted} %`, charge };
  const on = addMonths(charged.on, rule.everyMonths ?? 12);
  return { kind: 'charge', on, words: `${words}; that is enough`, charge };
}

function storage(rule: CareRuleFacts, { hottestC, leaveOn }: CareTime): Found | null {
  const maxC = rule.storage?.maxC;
  if (maxC === undefined || hottestC === undefined || hottestC < maxC) return null;
  return {
    kind: 'storage',
    on: leaveOn,
    words: `it is kept below ${maxC} C and the trip reaches ${hottestC} C: stow it low, shaded and insulated`,
  };
}

function lastSeen(
  thing: CareThing,
  rule: CareRuleFacts,
  today = '9999-12-31',
): CareThing['seen'][number] | undefined {
  return thing.seen
    .filter((seen) => seen.rule === rule.id && seen.on <= today)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
    .at(-1);
}

function yearsText(years: number): string {
  return years === 1 ? 'one year' : `${years} years`;
}
