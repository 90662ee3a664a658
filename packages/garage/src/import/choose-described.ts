import type { Choice } from './choose-sized.ts';
import type { Clause, ClauseValue } from './clause.ts';
import { isDriveSize } from './clause.ts';
import { gramsBetween } from './sizes.ts';
import type { Traits } from './traits.ts';
import { isModifier, stem } from './words.ts';

/** Sizes are given loosely: 10 in for 255 mm, 18 in for 470 mm. */
const LOOSELY = 0.06;
const SMALL = new Set(['small', 'little', 'short', 'mini'].map(stem));
const LARGE = new Set(['large', 'big', 'long', 'heavy', 'wide'].map(stem));

/**
 * Chooses among things of one name that differ by drive, length, capacity or description: 'locking pliers 180', '4 t
 * bottle jack', '3/8 ratchet'. `candidates` come the usual one first.
 */
export function chooseDescribed(
  clause: Clause,
  candidates: readonly Traits[],
  phrase: readonly string[],
  weightOf: (word: string) => number,
): Choice {
  const byDrive = withDrive(clause, candidates);
  const values = byDrive.values.filter(({ code }) => code !== 'T' && code !== 'E');
  const words = new Set(clause.words.map(({ form }) => form));
  // Words of the name itself tell nothing about which of its things is meant.
  const telling = [...words].filter((word) => !phrase.includes(word));
  const describes = ({ words: own }: Traits): number => {
    const told = telling.reduce((sum, word) => sum + (own.has(word) ? weightOf(word) : 0), 0);
    const untold = [...own].filter((word) => isModifier(word) && !words.has(word)).length;
    return told === 0 ? 0 : told - 0.5 * untold;
  };

  const fractions = clause.values.flatMap(({ fraction, toFraction }) =>
    [fraction, toFraction].filter((one) => one !== null),
  );
  // 'two tyre levers' are the pair rather than two of the single one.
  const lead = values.find((value) => value.leads && isCount(value))?.value ?? null;
  const said = clause.copies ?? lead;
  const together = said !== null && said > 1 ? said : clause.pair ? 2 : null;
  const scored = byDrive.candidates.map((traits, order) => {
    const met = values.filter((value) => meets(traits, value));
    const masses = clause.grams !== null && massOf(traits, clause.grams) ? 1 : 0;
    const inOrder = fractions.length > 1 && fractions.join() === traits.drives.join() ? 2 : 0;
    const pack = together !== null && traits.pack === together ? 2 : 0;
    return { traits, order, met, score: 3 * (met.length + masses + inOrder) + pack + describes(traits) };
  });
  const bySize = sizeWord(telling);
  const weigh = (traits: Traits): number => bySize * traits.entry.grams;
  const best = [...scored].sort(
    (a, b) => b.score - a.score || weigh(b.traits) - weigh(a.traits) || a.order - b.order,
  )[0];
  if (best === undefined) return { missing: 'nothing of that name has this drive; check the drive' };

  // 'extensions 75 125 250': each number chooses its own.
  const several = severalOf(values, byDrive.candidates, best.met.length);
  if (several !== null)
    return { items: several.map(({ entry }) => ({ id: entry.id })), sureness: byDrive.sureness };

  const { traits, met } = best;
  const open = values.filter((value) => !met.includes(value));
  const length = open.find(
    ({ unit, value, fraction, to }) =>
      (unit === 'mm' || (unit === null && value >= 60)) && fraction === null && to === null,
  );
  const asLength = length === undefined ? null : ownLength(length.value, byDrive.candidates);
  if (asLength !== null) return { items: [asLength], sureness: 0.85 * byDrive.sureness };

  const count = open.find((value) => isCount(value)) ?? null;
  const copies = clause.copies === null && count !== null ? count.value : countOfVolume(open, traits);
  const strange = open.filter((value) => value !== count && !(copies !== null && value.unit === 'ml'));
  const against = strange.filter((value) => contradicts(traits, value));
  const among = new Set(byDrive.candidates.map(({ entry }) => entry.id)).size;
  const told = met.length > 0 || byDrive.told || describes(traits) > 0 || bySize !== 0 || among === 1;
  return {
    items: [{ id: traits.entry.id }],
    sureness:
      byDrive.sureness *
      (told ? 1 : 0.92) *
      0.9 ** Math.min(strange.length, 3) *
      (against.length === 0 ? 1 : isExact(traits) ? 0.6 : 0.85),
    ...(against.length === 0
      ? {}
      : { why: `the catalogue has it as ${traits.entry.size ?? traits.entry.name}; look at the size again` }),
    ...(copies === null ? {} : { copies }),
  };
}

/** Keeps the candidates of the stated drive, and takes the drive out of the numbers. */
function withDrive(
  clause: Clause,
  candidates: readonly Traits[],
): {
  readonly candidates: readonly Traits[];
  readonly values: readonly ClauseValue[];
  readonly sureness: number;
  readonly told: boolean;
} {
  const fraction = clause.values.find((value) => isDriveSize(value.fraction) && value.to === null);
  const drive = clause.drive ?? fraction?.fraction ?? null;
  const driven = candidates.filter(({ drives }) => drives.length > 0);
  if (drive === null || driven.length === 0)
    return { candidates, values: clause.values, sureness: 1, told: false };
  const values =
    clause.drive === null
      ? clause.values.filter((value) => value.to !== null || !isDriveSize(value.fraction))
      : clause.values;
  const drives = new Set(
    clause.values.flatMap(({ fraction: one, to }) => (isDriveSize(one) && to === null ? [one] : [])),
  );
  // 'ratchet 3/8 and ratchet 1/4' are two things; an adapter has two drives.
  const one = drives.size <= 1 || driven.some(({ drives: own }) => own.length > 1);
  const kept = driven.filter(({ drives }) => drives.includes(drive));
  return kept.length === 0
    ? { candidates: driven, values, sureness: 0.6, told: false }
    : { candidates: kept, values, sureness: one ? 1 : 0.7, told: true };
}

/** Whether a typed number is one of the thing's own: same unit, or none; lengths loosely, ranges within. */
function meets({ measures, entry }: Traits, { value, unit, to, code }: ClauseValue): boolean {
  if (code === 'M') return new RegExp(`\\bM${value}\\b`).test(`${entry.name} ${entry.size ?? ''}`);
  if (code === '#') return (entry.size ?? '').includes(`cross ${value}`);
  const near = (number: number): boolean =>
    measures.some(
      (measure) =>
        (measure.unit === null ||
          unit === measure.unit ||
          (unit === null && (number >= 20 || (measure.unit === 'mm' && number === measure.value)))) &&
        Math.abs(measure.value - number) <= LOOSELY * measure.value,
    );
  return near(value) && (to === null || near(to));
}

/** Whether a number with a unit stands against one of the thing's own: a 35 mm head and a socket for 52 to 54 mm. */
function contradicts({ measures }: Traits, { unit, code }: ClauseValue): boolean {
  return code === null && unit !== null && measures.some((measure) => measure.unit === unit);
}

/** Things that are of no use in another size. */
function isExact({ entry }: Traits): boolean {
  return entry.offers.some(({ kind }) => kind === 'locknut-socket' || kind === 'socket');
}

function massOf({ measures }: Traits, grams: number): boolean {
  return measures.some(({ unit, value }) => unit === 'g' && Math.abs(value - grams) <= 0.12 * value);
}

/** Whether a stated mass is part of what the thing is called ('1 kg extinguisher', '450 g hammer') rather than its mass. */
export function isNominalMass(traits: Traits, grams: number): boolean {
  return massOf(traits, grams);
}

function sizeWord(words: readonly string[]): -1 | 0 | 1 {
  if (words.some((word) => SMALL.has(word))) return -1;
  return words.some((word) => LARGE.has(word)) ? 1 : 0;
}

function severalOf(
  values: readonly ClauseValue[],
  candidates: readonly Traits[],
  byOne: number,
): readonly Traits[] | null {
  const [first, ...others] = values;
  // '2 shifters, 6" and 12"': the first number says how many follow.
  const counts = first !== undefined && isCount(first) && first.leads && others.length === first.value;
  const telling = counts ? others : values;
  if (telling.length < 2 || byOne >= telling.length) return null;
  const [one] = telling;
  if (!telling.every(({ unit, value }) => unit === one?.unit && (unit !== null || value >= 20))) return null;
  const each = telling.map((value) => candidates.find((traits) => meets(traits, value)));
  const found = each.filter((traits) => traits !== undefined);
  const different = new Set(found.map(({ entry }) => entry.id)).size;
  return found.length === telling.length && different === found.length ? found : null;
}

/** A length that none has: the nearest one, with its real length and a mass in proportion. */
function ownLength(
  mm: number,
  candidates: readonly Traits[],
): { id: string; handleMm: number; grams?: number } | null {
  const among = candidates.flatMap(({ entry, lengthMm }) =>
    lengthMm === null ? [] : [{ entry, value: lengthMm }],
  );
  const off = (value: number): number => Math.abs(Math.log(value / mm));
  const [near] = [...among].sort((a, b) => off(a.value) - off(b.value));
  if (near === undefined || off(near.value) > 0.7) return null;
  const grams = gramsBetween(
    mm,
    among.map(({ entry, value }) => ({ value, grams: entry.grams })),
  );
  return { id: near.entry.id, handleMm: Math.round(mm), ...(grams === null ? {} : { grams }) };
}

function isCount({ value, unit, code, fraction, to }: ClauseValue): boolean {
  return (
    unit === null &&
    code === null &&
    fraction === null &&
    to === null &&
    Number.isInteger(value) &&
    value >= 1 &&
    value <= 20
  );
}

/** '20 l water' are four cans of five. */
function countOfVolume(values: readonly ClauseValue[], { measures }: Traits): number | null {
  const typed = values.find(({ unit, to }) => unit === 'ml' && to === null);
  const one = measures.find(({ unit }) => unit === 'ml');
  if (typed === undefined || one === undefined || one.value <= 0) return null;
  const times = typed.value / one.value;
  return times >= 2 && times <= 20 && Math.abs(times - Math.round(times)) < 0.01 ? Math.round(times) : null;
}
