import type { Clause, ClauseValue } from './clause.ts';
import { isDriveSize } from './clause.ts';
import { gramsBetween, inchLabel, mmLabel } from './sizes.ts';
import type { SizedClass, Traits } from './traits.ts';

/** One thing found; `size` or `handleMm` where it differs from the catalogue entry. */
export interface Item {
  readonly id: string;
  readonly size?: string;
  readonly handleMm?: number;
  /** Worked out for an own size. */
  readonly grams?: number;
}

/** The things of a clause and how far the choice among things of one name may be trusted (0..1), or what is missing. */
export type Choice =
  | {
      readonly items: readonly Item[];
      readonly sureness: number;
      readonly why?: string;
      /** Taken from a number that stood for a count. */
      readonly copies?: number;
    }
  | { readonly missing: string };

const HAS_DRIVE: ReadonlySet<SizedClass> = new Set([
  'socket',
  'plug-socket',
  'hex-bit',
  'lobe-bit',
  'external-lobe',
]);
const BY_CODE: Readonly<Partial<Record<SizedClass, 'T' | 'E' | '#'>>> = {
  'lobe-bit': 'T',
  'external-lobe': 'E',
  'cross-driver': '#',
};
/** Classes that people own in sizes between and beyond those of the catalogue. */
const ANY_SIZE: ReadonlySet<SizedClass> = new Set([
  'socket',
  'combination',
  'ratcheting',
  'hex-key',
  'hex-bit',
  'plug-socket',
]);
/** Where nothing says the drive, the one most own. */
const USUAL_DRIVES = ['3/8', '1/2', '1/4', '3/4'];
/** Widest head that hand tools of a size list go to, mm. */
const WIDEST = 80;

interface Wanted {
  readonly value: number;
  readonly inch: boolean;
}

/** Chooses among all things of a class by the sizes of a clause. `pool` is every entry of the class. */
export function chooseSized(clause: Clause, of: SizedClass, pool: readonly Traits[]): Choice {
  const { drive, rest, copies } = driveAndSizes(clause, of);
  if (drive === 'ambiguous') {
    return { missing: 'it may be the drive or the size; write both, like "1/2 drive socket 13 mm"' };
  }
  const deep = of === 'socket' ? pool.filter(({ depth }) => depth === (clause.depth ?? 'shallow')) : pool;
  const ofDrive = drive === null ? deep : deep.filter(({ drives }) => drives.includes(drive));
  const noSuchDrive = ofDrive.length === 0;
  const candidates = noSuchDrive ? deep : ofDrive;
  const wanted = expand(rest, clause, of, pool, candidates);
  if (wanted.length === 0) return { missing: `no size is given; write one, like "${EXAMPLE[of]}"` };
  const stated = drive !== null || !HAS_DRIVE.has(of) || of !== 'socket';
  const order = driveOrder(wanted, candidates);
  const items: Item[] = [];
  let sureness = (stated ? 1 : 0.85) * (noSuchDrive ? 0.7 : 1);
  const strange: string[] = [];
  for (const one of of === 'flare' ? pairs(wanted) : wanted) {
    const exact = order
      .map((d) => candidates.find((t) => matches(t, one) && (d === null || t.drives.includes(d))))
      .find((t) => t !== undefined);
    if (exact !== undefined) {
      items.push({ id: exact.entry.id });
      continue;
    }
    const own = ANY_SIZE.has(of) ? ownSize(one, candidates, drive) : null;
    if (own === null) strange.push(labelOf(one, of));
    else {
      items.push(own);
      sureness *= 0.9;
    }
  }
  if (items.length === 0) {
    return { missing: `no ${NAMES[of]} of size ${strange.join(', ')} is known; check the size` };
  }
  if (strange.length > 0) sureness *= 0.6;
  return {
    items,
    sureness: Math.max(sureness, 0.3),
    ...(strange.length > 0 ? { why: `size ${strange.join(', ')} is not known and was left out` } : {}),
    // '3 sockets 10 12 13' are three in all.
    ...(copies === null || copies === wanted.length ? {} : { copies }),
  };
}

const NAMES: Readonly<Record<SizedClass, string>> = {
  socket: 'socket',
  'plug-socket': 'spark-plug socket',
  combination: 'combination wrench',
  ratcheting: 'ratcheting wrench',
  flare: 'flare-nut wrench',
  'hex-key': 'hex key',
  'hex-bit': 'hex bit socket',
  'lobe-bit': 'lobe bit socket',
  'external-lobe': 'external-lobe socket',
  'cross-driver': 'cross-head screwdriver',
  'slot-driver': 'slotted screwdriver',
};
const EXAMPLE: Readonly<Record<SizedClass, string>> = {
  socket: '1/2 drive sockets 17 19 21',
  'plug-socket': 'spark plug socket 16 mm',
  combination: 'combination wrenches 8-19',
  ratcheting: 'ratcheting wrenches 10 12 13',
  flare: 'flare-nut wrench 10x11',
  'hex-key': 'hex keys 3-10',
  'hex-bit': 'hex bit socket 8 mm',
  'lobe-bit': 'T-bits T20-T50',
  'external-lobe': 'sockets E10 E12',
  'cross-driver': 'cross-head screwdriver no. 2',
  'slot-driver': 'slotted screwdriver 6.5 mm',
};

/** Tells the drive, the sizes and a leading count apart. */
function driveAndSizes(
  clause: Clause,
  of: SizedClass,
): { readonly drive: string | null; readonly rest: readonly ClauseValue[]; readonly copies: number | null } {
  const code = BY_CODE[of];
  const fits = ({ unit, value, code: own, inch }: ClauseValue): boolean =>
    code !== undefined
      ? own === code || (own === null && unit === null && of === 'cross-driver')
      : own === null && (unit === null || unit === 'mm') && (value <= WIDEST || inch);
  let drive = clause.drive;
  let values = clause.values;
  if (drive === null && HAS_DRIVE.has(of)) {
    const fractions = values.filter(({ fraction, to }) => isDriveSize(fraction) && to === null);
    const others = values.filter((v) => !fractions.includes(v) && fits(v));
    const [only] = fractions;
    if (only !== undefined) {
      const plainOthers = others.filter(({ inch, leads }) => !inch && !(leads && others.length > 1));
      if (others.length === 0 && fractions.length === 1) {
        return { drive: code === undefined ? 'ambiguous' : only.fraction, rest: [], copies: null };
      }
      const first = values[0];
      const alone = only === first && only.leads && values.filter(({ leads }) => leads).length === 1;
      if ((plainOthers.length === others.length && plainOthers.length > 0) || alone) {
        drive = only.fraction;
        values = values.filter((v) => v !== only);
      }
    }
  }
  const sizes = values.filter(fits);
  const [first] = sizes;
  // '3 sockets 10 mm' counts; '10 mm socket' and '13 spanners' do not.
  const counts =
    clause.copies === null &&
    first !== undefined &&
    first.leads &&
    first.unit === null &&
    first.to === null &&
    first.code === null &&
    first.fraction === null &&
    Number.isInteger(first.value) &&
    first.value <= 12 &&
    sizes.length > 1 &&
    sizes.slice(1).every(({ leads, unit }) => !leads || unit !== null);
  return { drive, rest: counts ? sizes.slice(1) : sizes, copies: counts ? first.value : null };
}

/** Sizes of a list with its ranges filled in and its exceptions taken out. */
function expand(
  values: readonly ClauseValue[],
  clause: Clause,
  of: SizedClass,
  pool: readonly Traits[],
  candidates: readonly Traits[],
): readonly Wanted[] {
  const marks = (from: readonly Traits[], inch: boolean): readonly number[] => [
    ...new Set(from.flatMap(({ mark }) => (mark?.inch === inch ? [mark.value] : []))),
  ];
  const out: Wanted[] = [];
  const push = (wanted: Wanted): void => {
    if (!out.some((one) => Math.abs(one.value - wanted.value) < 0.02 && one.inch === wanted.inch))
      out.push(wanted);
  };
  for (const { value, to, inch } of values) {
    if (to === null || of === 'flare') {
      out.push({ value, inch });
      if (to !== null) out.push({ value: to, inch });
      continue;
    }
    const [low, high] = value <= to ? [value, to] : [to, value];
    const isInch = inch || clause.inchHint;
    // A range means the sizes that are usual: in inches and for keys and bits those of the class, for wrenches and
    // sockets in mm those of any drive, since a run of 8 to 19 has no gaps.
    const usual = isInch
      ? marks(candidates, true)
      : of === 'socket' || of === 'combination' || of === 'ratcheting'
        ? USUAL_WIDTHS
        : marks(pool, false);
    const inside = usual.filter((mark) => mark > low - 0.02 && mark < high + 0.02);
    for (const mark of [low, ...[...inside].sort((a, b) => a - b), high]) push({ value: mark, inch: isInch });
  }
  return out.filter(
    (one) =>
      !clause.except.some(({ value, to }) =>
        to === null
          ? Math.abs(value - one.value) < 0.02
          : one.value >= value - 0.02 && one.value <= to + 0.02,
      ),
  );
}

/** Widths that runs of wrenches and sockets go through, mm (common practice). */
const USUAL_WIDTHS = [
  4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 27, 30, 32, 34, 36,
  38, 41,
];

function matches({ mark }: Traits, wanted: Wanted & { readonly second?: number }): boolean {
  if (mark === null) return false;
  if (wanted.second !== undefined) {
    return (
      mark.second !== undefined &&
      [mark.value, mark.second].every((v) => v === wanted.value || v === wanted.second)
    );
  }
  const same = Math.abs(mark.value - wanted.value) < 0.02 || mark.second === wanted.value;
  return same && mark.inch === wanted.inch;
}

function pairs(wanted: readonly Wanted[]): readonly (Wanted & { readonly second?: number })[] {
  const out: (Wanted & { second?: number })[] = [];
  for (let i = 0; i < wanted.length; i += 2) {
    const [one, other] = [wanted[i], wanted[i + 1]];
    if (one !== undefined) out.push({ ...one, ...(other === undefined ? {} : { second: other.value }) });
  }
  return out;
}

/** One drive for the whole list where there is one that has all of it, else each size in the usual drive. */
function driveOrder(wanted: readonly Wanted[], candidates: readonly Traits[]): readonly (string | null)[] {
  const has = (drive: string): boolean =>
    wanted.every((one) => candidates.some((t) => t.drives.includes(drive) && matches(t, one)));
  return [...USUAL_DRIVES.filter(has), ...USUAL_DRIVES.filter((drive) => !has(drive)), null];
}

/** The nearest size of the same kind, with the real size and a mass in proportion. */
function ownSize(wanted: Wanted, candidates: readonly Traits[], drive: string | null): Item | null {
  const usual = wanted.value < 8 ? '1/4' : wanted.value <= 22 ? '3/8' : '1/2';
  const sameDrive = candidates.filter(({ drives }) => drives.includes(drive ?? usual));
  const among = (sameDrive.length > 0 ? sameDrive : candidates).flatMap((t) =>
    t.mark === null ? [] : [{ entry: t.entry, value: t.mark.value, inch: t.mark.inch }],
  );
  const off = (value: number): number => Math.abs(Math.log(value / wanted.value));
  // Metric beside metric: the owner looks for it there.
  const [near] = [...among].sort(
    (a, b) => Number(a.inch !== wanted.inch) - Number(b.inch !== wanted.inch) || off(a.value) - off(b.value),
  );
  if (near === undefined || off(near.value) > 0.25) return null;
  const grams = gramsBetween(
    wanted.value,
    among.map(({ entry, value }) => ({ value, grams: entry.grams })),
  );
  return {
    id: near.entry.id,
    size: wanted.inch ? inchLabel(wanted.value) : mmLabel(wanted.value),
    ...(grams === null ? {} : { grams }),
  };
}

function labelOf({ value, inch }: Wanted, of: SizedClass): string {
  const code = BY_CODE[of];
  if (code !== undefined) return `${code === '#' ? 'no. ' : code}${value}`;
  return inch ? inchLabel(value) : mmLabel(value);
}
