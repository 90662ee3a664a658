import type { Metres } from '../quantity/units.ts';
import type { Grade } from '../repairing/scene.ts';

/** What one has to know before choosing what to do about a breakdown. */
export interface Situation {
  /** Somebody is hurt or ill. */
  readonly hurt: boolean;
  /** Traffic, water, fire, falling ground: the place itself is dangerous. */
  readonly danger: boolean;
  readonly help: Metres;
  readonly dark: boolean;
  /** Hours of daylight left; null when nobody said. Without meaning in the dark. */
  readonly daylightHours: number | null;
  readonly people: number;
  /** Another vehicle is here, or will pass by plan. */
  readonly convoy: boolean;
  /** For everybody, at rest in this heat; null when nobody has counted. */
  readonly waterDays: number | null;
  readonly foodDays: number | null;
  readonly fix: {
    /** Everything needed is aboard, and so is somebody who can. */
    readonly possible: boolean;
    readonly why: string;
    /** Whether it leaves a vehicle that drives: a mere "made safe" does not. */
    readonly drives: boolean;
    readonly trusted: Metres;
    readonly minutes: readonly [number, number];
    /** Somebody reaches under it, or a wheel comes off the ground. */
    readonly beneath: boolean;
    /** How well the pieces here do it (M2); null where it is not possible. */
    readonly grade: Grade | null;
  };
  /** The temporary repair that is possible and trusted furthest; null when none is. */
  readonly limp: {
    readonly title: string;
    readonly trusted: Metres;
    readonly speedKmh: number | null;
  } | null;
}

export type Course = 'fix' | 'limp' | 'wait' | 'call';

export interface Weighed {
  readonly course: Course;
  /** `first`: what is suggested; `may`: it would do; `not`: it would not, or not yet. */
  readonly verdict: 'first' | 'may' | 'not';
  readonly reasons: readonly string[];
}

export interface Decision {
  /** Before anything else; may be empty. */
  readonly before: readonly string[];
  /** All four courses, the suggested one first. */
  readonly courses: readonly Weighed[];
}

/** Fewer days of water than this, and help is asked for before tools are touched (estimate). */
const LEAST_WATER_DAYS = 2;
/** Where no speed is given for a temporary repair (estimate, on tracks), km/h. */
const SLOW_KMH = 30;
/** A repair takes this much longer by torchlight (estimate). */
export const DARK_FACTOR = 1.5;

/**
 * Fix, limp, wait or call: rules in a fixed order, each with its reason in a sentence, and no score. People come first, then
 * water, then a repair that is possible, then a limp that reaches help, then calling. Nothing here says that anything is free
 * of danger: it says what counts for and against each course.
 */
export function decide(now: Situation): Decision {
  const fix = weighFix(now);
  const limp = weighLimp(now);
  const call = weighCall(now);
  const wait = weighWait(now);
  const order: readonly Course[] =
    now.hurt || now.danger || isShortOfWater(now)
      ? ['call', 'fix', 'limp', 'wait']
      : waitsForLight(now)
        ? ['wait', 'fix', 'limp', 'call']
        : ['fix', 'limp', 'call', 'wait'];
  const weighed = new Map([fix, limp, call, wait].map((w) => [w.course, w]));
  const first = order.find((course) => weighed.get(course)?.verdict !== 'not') ?? 'call';
  const courses = [first, ...order.filter((c) => c !== first)].flatMap((course): Weighed[] => {
    const found = weighed.get(course);
    return found === undefined ? [] : [course === first ? { ...found, verdict: 'first' } : found];
  });
  return { before: before(now), courses };
}

function before(now: Situation): readonly string[] {
  const out: string[] = [];
  if (now.danger)
    out.push(
      'Leave the dangerous place first: everybody out, away from the road, the water or the fire, then think.',
    );
  if (now.hurt)
    out.push('Somebody is hurt: look after them and call for help before the vehicle is thought of.');
  if (now.waterDays === null)
    out.push('Nobody has said how much water there is: count it now, for everybody, in litres.');
  return out;
}

function weighFix(now: Situation): Weighed {
  const { fix, help } = now;
  if (!fix.possible) return { course: 'fix', verdict: 'not', reasons: [fix.why] };
  if (!fix.drives)
    return {
      course: 'fix',
      verdict: 'not',
      reasons: ['The repair makes it less dangerous; the vehicle does not drive on with it.'],
    };
  if (fix.trusted < help)
    return {
      course: 'fix',
      verdict: 'not',
      reasons: [`The repair is trusted for ${km(fix.trusted)} and help is ${km(help)} away.`],
    };
  const time = `It takes about ${minutes(fix.minutes, now.dark)}${now.dark ? ' by torchlight' : ''}.`;
  const reasons = [`Everything it needs is here. ${time}`];
  if (now.hurt || now.danger)
    return { course: 'fix', verdict: 'not', reasons: ['People come first.', ...reasons] };
  if (waitsForLight(now))
    return {
      course: 'fix',
      verdict: 'not',
      reasons: [
        now.dark
          ? 'Not in the dark: it means working at or beneath a raised vehicle. Everything it needs is here for the morning.'
          : `Not before dark: it takes longer than the ${hours(now.daylightHours)} of daylight left, and half done the vehicle is worse off.`,
      ],
    };
  if (fix.grade === 'last-resort')
    reasons.push(
      'Some of it only as a last resort: a piece may be spoiled, so try what spoils nothing first.',
    );
  if (now.dark && fix.beneath)
    reasons.push(
      'It is work at a raised vehicle in the dark: two lights, and only because the water does not wait.',
    );
  if (now.people < 2 && fix.beneath)
    reasons.push(
      'You are alone: nobody would lift it off you. Tell somebody by radio or phone before you start, and when you are done.',
    );
  return { course: 'fix', verdict: 'may', reasons };
}

function weighLimp(now: Situation): Weighed {
  const { limp, help } = now;
  if (limp === null)
    return {
      course: 'limp',
      verdict: 'not',
      reasons: ['No temporary repair is possible with what is here.'],
    };
  const what = `"${limp.title}" is trusted for ${km(limp.trusted)}${limp.speedKmh === null ? '' : ` at no more than ${limp.speedKmh} km/h`}`;
  if (limp.trusted < help)
    return {
      course: 'limp',
      verdict: 'not',
      reasons: [
        `${what}, and help is ${km(help)} away: it does not get there.`,
        limp.trusted > 0
          ? 'It may move the vehicle to shade, signal or a better place to wait.'
          : 'It moves nobody.',
      ],
    };
  if (now.hurt || now.danger)
    return {
      course: 'limp',
      verdict: 'not',
      reasons: ['People come first.', `${what}; help is ${km(help)} away.`],
    };
  const drive = help / 1000 / (limp.speedKmh ?? SLOW_KMH);
  const reasons = [`${what}; help is ${km(help)} away, about ${Math.max(1, Math.ceil(drive))} h of driving.`];
  if (now.dark) {
    reasons.push('Not in the dark: what fails again would fail unseen.');
    return { course: 'limp', verdict: isShortOfWater(now) ? 'may' : 'not', reasons };
  }
  if (!now.convoy)
    reasons.push(
      'You are one vehicle: say where you go and when you will be there, and stop to look at the distances given.',
    );
  return { course: 'limp', verdict: 'may', reasons };
}

function weighWait(now: Situation): Weighed {
  const reasons: string[] = [];
  if (now.hurt || now.danger)
    return { course: 'wait', verdict: 'not', reasons: ['Not while people are hurt or in danger.'] };
  if (isShortOfWater(now))
    return {
      course: 'wait',
      verdict: 'not',
      reasons: [`Water for ${days(now.waterDays)} is too little to wait on.`],
    };
  if (waitsForLight(now)) reasons.push('Daylight makes the repair surer: rest, and start then.');
  if (now.convoy) reasons.push('Another vehicle is here or comes by: it may carry the piece, or you.');
  else reasons.push('Nobody comes by plan: waiting alone is for daylight or for help that has been called.');
  if (now.waterDays !== null)
    reasons.push(
      `Water lasts ${days(now.waterDays)}${now.foodDays === null ? '' : `, food ${days(now.foodDays)}`}.`,
    );
  return { course: 'wait', verdict: waitsForLight(now) || now.convoy ? 'may' : 'not', reasons };
}

function weighCall(now: Situation): Weighed {
  const reasons = [`Help is ${km(now.help)} away.`];
  if (now.hurt) reasons.push('Somebody is hurt.');
  if (now.danger) reasons.push('The place is dangerous.');
  if (isShortOfWater(now))
    reasons.push(`Water lasts ${days(now.waterDays)}: call while everybody is well, and repair meanwhile.`);
  reasons.push(
    'Stay with the vehicle: it is found long before a walker is. Shade, water, a signal that can be seen.',
  );
  return { course: 'call', verdict: 'may', reasons };
}

function isShortOfWater({ waterDays }: Situation): boolean {
  return waterDays !== null && waterDays < LEAST_WATER_DAYS;
}

/** Work at a raised vehicle is not begun in the dark, nor when the light goes before it can be done. */
function waitsForLight(now: Situation): boolean {
  const { fix, hurt, danger } = now;
  if (hurt || danger || !fix.possible || !fix.drives || fix.trusted < now.help || !fix.beneath) return false;
  if (isShortOfWater(now)) return false;
  return now.dark || (now.daylightHours !== null && now.daylightHours * 60 < fix.minutes[1]);
}

function km(distance: Metres): string {
  if (distance >= 1e8) return 'the rest of the trip';
  const n = distance / 1000;
  return `${n >= 10 ? Math.round(n) : Math.round(n * 10) / 10} km`;
}

function minutes([least, most]: readonly [number, number], dark: boolean): string {
  const factor = dark ? DARK_FACTOR : 1;
  return `${Math.round(least * factor)} to ${Math.round(most * factor)} minutes`;
}

function hours(n: number | null): string {
  return n === null ? 'hours' : `${n} h`;
}

function days(n: number | null): string {
  return n === null ? 'nobody knows how long' : n === 1 ? '1 day' : `${n} days`;
}
