import { FRESH_DAYS, RESTOCK_DAYS } from '@waymend/catalogue/care/at-stake';
import { CARE_RULE_BY_ID, CARE_RULES } from '@waymend/catalogue/care/all';
import { SELF_DISCHARGES } from '@waymend/catalogue/care/self-discharge-of';
import { addDays } from '@waymend/core/caring/calendar';
import type { CareThing, CareTime } from '@waymend/core/caring/care-input';
import type { CareDue } from '@waymend/core/caring/due';
import { duesOf } from '@waymend/core/caring/due';
import type { Garage } from '@waymend/garage/record/schema';
import { nameOf } from '../scene/pieces.ts';
import type { Trade } from '../trade.ts';

/** When it is asked, when the vehicle leaves, and where the kit is kept until then. */
export interface CareAsk {
  readonly today: string;
  /** Absent: today. */
  readonly leaveOn?: string;
  /** Days of the trip. */
  readonly days: number;
  /** Degrees C where the kit is kept; 25 when nothing is said (estimate: a shed in summer). */
  readonly keptAtC?: number;
  readonly hottestC?: number;
}

const KEPT_AT_C = 25;

/** The id that dues of the whole kit go by. */
export const WHOLE_KIT = '';

export function careTime(ask: CareAsk): CareTime {
  const leaveOn = ask.leaveOn ?? ask.today;
  return {
    today: ask.today,
    leaveOn,
    homeOn: addDays(leaveOn, Math.max(0, Math.ceil(ask.days) - 1)),
    keptAtC: ask.keptAtC ?? KEPT_AT_C,
    ...(ask.hottestC === undefined ? {} : { hottestC: ask.hottestC }),
    freshDays: FRESH_DAYS,
    restockDays: RESTOCK_DAYS,
    selfDischarge: new Map(SELF_DISCHARGES.map((s) => [s.rule, s])),
  };
}

/** A belonging as the care rules see it; null for an id that is not there. */
export function careThing(garage: Garage, id: string, trade: Trade): CareThing | null {
  const thing = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (thing === undefined) return null;
  const entry = thing.is === undefined ? undefined : trade.belongings.find((b) => b.id === thing.is);
  const { expiresOn, openedOn, madeOn } = thing;
  return {
    id,
    name: thing.name ?? nameOf(entry, thing) ?? id,
    rules: (entry?.care ?? []).flatMap((rule) => CARE_RULE_BY_ID.get(rule) ?? []),
    ...(expiresOn === undefined ? {} : { expiresOn }),
    ...(openedOn === undefined ? {} : { openedOn }),
    ...(madeOn === undefined ? {} : { madeOn }),
    seen: seenOf(garage, id),
  };
}

/** Everything that care asks of these belongings and of the kit as a whole, soonest first. */
export function careDues(
  garage: Garage,
  belongings: readonly string[],
  ask: CareAsk,
  trade: Trade,
): readonly CareDue[] {
  const time = careTime(ask);
  const kit: CareThing = {
    id: WHOLE_KIT,
    name: 'the whole kit',
    // Loans and what follows a repair have lists of their own.
    rules: CARE_RULES.filter((r) => r.applies === 'kit' && r.afterEveryJob !== true && r.id !== 'loans'),
    seen: seenOf(garage, undefined),
  };
  const things = [kit, ...belongings.flatMap((id) => careThing(garage, id, trade) ?? [])];
  return things
    .flatMap((thing) => duesOf(thing, time))
    .sort((a, b) => {
      const [x, y] = [a.on ?? '9999', b.on ?? '9999'];
      return x < y
        ? -1
        : x > y
          ? 1
          : a.thing < b.thing
            ? -1
            : a.thing > b.thing
              ? 1
              : a.rule < b.rule
                ? -1
                : 1;
    });
}

function seenOf(garage: Garage, belonging: string | undefined): CareThing['seen'] {
  return Object.values(garage.careMarks).flatMap((mark) =>
    mark.belonging === belonging
      ? [
          {
            rule: mark.rule,
            on: mark.on,
            ...(mark.chargePct === undefined ? {} : { chargePct: mark.chargePct }),
          },
        ]
      : [],
  );
}
