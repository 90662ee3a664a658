import type { Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { closeMuster, missingPieces } from '@waymend/garage/road/close-muster';
import { calledBy, countsOf, insideBag } from '@waymend/garage/road/count-pieces';
import { countIn, countInAllBut, countOut, countSealedBag, openMuster } from '@waymend/garage/road/muster';
import type { ChangedChance } from '@waymend/planner/ready/changed-chance';
import { changedChance } from '@waymend/planner/ready/changed-chance';
import { piecesForJob } from '@waymend/planner/ready/job-pieces';
import { restockList, stockOf } from '@waymend/planner/ready/restock';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { musterText } from '../text/muster-text.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse, writeText } from './garage-at.ts';
import type { Options } from './options.ts';
import { countedOption, dayOption, freeId, listOption, textOption, vehicleOption } from './options.ts';
import { planned } from './planned.ts';

const STOCK_OF = stockOf(SHIPPED_TRADE);

/** What a muster looks like in an answer. */
export interface MusterLine {
  readonly id: string;
  readonly openedOn: string;
  readonly closedOn: string | null;
  readonly job: string | null;
  readonly trip: string | null;
  readonly counts: readonly {
    readonly belonging: string;
    readonly name: string;
    readonly out: number;
    readonly back: number;
    readonly lost: number;
    readonly damaged: number;
    readonly used: number;
    readonly missing: number;
  }[];
}

/** Lists, opens, counts or closes a muster; writes the garage only with --write, and then all or nothing. */
export async function musterCommand(io: Io, path: string, what: string, options: Options): Promise<ExitCode> {
  const garage = await garageAt(io, path, 'edit');
  if (garage === null) return EXIT.refused;
  let carried: ReadonlySet<string> | null = null;
  if (
    (what === 'open' && textOption(options, 'job') !== undefined) ||
    (what === 'close' && tripOf(garage, options) !== null)
  ) {
    // What a job's card asks for, and what a loss does to the chance, hang on the kit that is aboard: the planned one.
    const trip = what === 'open' ? textOption(options, 'trip') : (tripOf(garage, options) ?? undefined);
    const made = await planned(io, path, { ...options, ...(trip === undefined ? {} : { trip }) });
    if (made.kind === 'code') return made.code;
    const { prepared, solved } = made.planned;
    carried = new Set(solved.choice.carried.flatMap((p) => prepared.reading.pieces[p]?.id ?? []));
    if (what === 'open') {
      const cards = piecesForJob(prepared, carried, textOption(options, 'job') ?? '');
      return finish(io, path, options, garage, openIt(garage, options, cards), null);
    }
  }
  if (what === 'list') return finish(io, path, { ...options, write: undefined }, garage, ok(garage), null);
  if (what === 'open') return finish(io, path, options, garage, openIt(garage, options, []), null);
  if (what === 'count') return finish(io, path, options, garage, countIt(garage, options), null);
  if (what !== 'close') {
    refuse(io, [
      {
        id: 'muster-what',
        message: `"${what.slice(0, 40)}" is not known here; say list, open, count or close`,
      },
    ]);
    return EXIT.usage;
  }
  const closed = closeIt(garage, options);
  const trip = tripOf(garage, options);
  if (!closed.ok || carried === null || trip === null) return finish(io, path, options, garage, closed, null);
  const changed = changedChance(garage, closed.value, trip, [...carried], SHIPPED_TRADE);
  if (!changed.ok) {
    refuse(io, [changed.error]);
    return EXIT.refused;
  }
  return finish(io, path, options, garage, closed, changed.value);
}

async function finish(
  io: Io,
  path: string,
  options: Options,
  before: Garage,
  after: Result<Garage>,
  chance: ChangedChance | null,
): Promise<ExitCode> {
  if (!after.ok) {
    refuse(io, [after.error]);
    return EXIT.refused;
  }
  const write = options['write'] === true && after.value !== before;
  if (write && !(await writeText(io, path, writeGarage(after.value)))) return EXIT.refused;
  const answer = {
    schema: 'waymend.muster/1' as const,
    file: path,
    written: write,
    musters: Object.keys(after.value.musters).map((id) => lineOf(after.value, id)),
    restock: restockList(after.value, textOption(options, 'trip') ?? null, SHIPPED_TRADE),
    chance,
  };
  if (options['json'] === true) io.out(`${JSON.stringify(answer, null, 2)}\n`);
  else io.out(musterText(answer, after.value.currency, after.value !== before, paintFor(io.colour)));
  return EXIT.done;
}

function lineOf(garage: Garage, id: string): MusterLine {
  const muster = garage.musters[id];
  const missing = new Map(
    muster?.closedOn === undefined ? missingPieces(garage, id, STOCK_OF).map((m) => [m.count, m.pieces]) : [],
  );
  return {
    id,
    openedOn: muster?.openedOn ?? '',
    closedOn: muster?.closedOn ?? null,
    job: muster?.job ?? null,
    trip: muster?.trip ?? null,
    counts: countsOf(garage, id).map(([count, { belonging, out, back, lost, damaged, used }]) => ({
      belonging,
      name: calledBy(garage, belonging),
      out,
      back,
      lost,
      damaged,
      used,
      missing: missing.get(count) ?? 0,
    })),
  };
}

function openIt(
  garage: Garage,
  options: Options,
  cards: readonly { readonly belonging: string; readonly pieces: number }[],
): Result<Garage> {
  const on = dayOption(options, 'on');
  if (!on.ok) return on;
  const vehicle = vehicleOption(garage, options);
  if (!vehicle.ok) return vehicle;
  const trip = textOption(options, 'trip');
  const job = textOption(options, 'job');
  if (job !== undefined && cards.length === 0)
    return refusal(
      'job-without-pieces',
      `Nothing of the planned kit serves a job "${job.slice(0, 40)}"; look it up with waymend tables jobs`,
    );
  const id = textOption(options, 'id') ?? freeId(garage, 'musters');
  const start = {
    id,
    vehicle: vehicle.value,
    on: on.value,
    ...(trip === undefined ? {} : { trip }),
    ...(job === undefined ? {} : { job }),
  };
  const opened = openMuster(garage, { ...start, out: [] });
  if (!opened.ok) return opened;
  const bags = listOption(options, 'bag').flatMap((bag) => insideBag(garage, bag));
  const wanted = [
    ...cards,
    ...bags.map((belonging) => ({ belonging, pieces: garage.belongings[belonging]?.copies ?? 1 })),
  ];
  let next = opened.value;
  for (const { belonging, pieces } of wanted) {
    const out = countOut(next, id, { id: freeId(next, 'counts'), belonging, pieces });
    if (!out.ok) return out;
    next = out.value;
  }
  return countThemOut(next, id, listOption(options, 'out'));
}

function countThemOut(garage: Garage, muster: string, said: readonly string[]): Result<Garage> {
  let next = garage;
  for (const one of said) {
    const counted = countedOption(one);
    if (!counted.ok) return counted;
    const { id, count } = counted.value;
    const out = countOut(next, muster, { id: freeId(next, 'counts'), belonging: id, pieces: count });
    if (!out.ok) return out;
    next = out.value;
  }
  return ok(next);
}

function countIt(garage: Garage, options: Options): Result<Garage> {
  const muster = openMusterOf(garage, options);
  if (!muster.ok) return muster;
  const out = countThemOut(garage, muster.value, listOption(options, 'out'));
  if (!out.ok) return out;
  let next = out.value;
  for (const bag of listOption(options, 'sealed')) {
    let n = 0;
    const taken = next;
    const sealed = countSealedBag(next, muster.value, bag, () => freeId(taken, 'counts', `sealed-${++n}`));
    if (!sealed.ok) return sealed;
    next = sealed.value;
  }
  for (const how of ['back', 'lost', 'damaged', 'used'] as const) {
    for (const one of listOption(options, how)) {
      const counted = countedOption(one);
      if (!counted.ok) return counted;
      const { id, count } = counted.value;
      const found = countsOf(next, muster.value).find(([, c]) => c.belonging === id);
      if (found === undefined)
        return refusal(
          'count-unknown',
          `${calledBy(next, id)} did not go out in this muster; look at its list`,
        );
      const after = countIn(next, found[0], { [how]: count }, STOCK_OF);
      if (!after.ok) return after;
      next = after.value;
    }
  }
  if (options['allBut'] === undefined) return ok(next);
  return countInAllBut(next, muster.value, listOption(options, 'allBut'), STOCK_OF);
}

function closeIt(garage: Garage, options: Options): Result<Garage> {
  const on = dayOption(options, 'on');
  if (!on.ok) return on;
  const muster = openMusterOf(garage, options);
  if (!muster.ok) return muster;
  const taken = new Set<string>();
  return closeMuster(garage, muster.value, on.value, STOCK_OF, (wish) => {
    let id = freeId(garage, 'belongings', wish);
    for (let n = 2; taken.has(id); n++) id = freeId(garage, 'belongings', `${wish.slice(0, 50)}-${n}`);
    taken.add(id);
    return id;
  });
}

/** The muster that --muster names, or the only open one. */
function openMusterOf(garage: Garage, options: Options): Result<string> {
  const said = textOption(options, 'muster');
  if (said !== undefined) return ok(said);
  const open = Object.entries(garage.musters).flatMap(([id, m]) => (m.closedOn === undefined ? [id] : []));
  const [only] = open;
  if (only !== undefined && open.length === 1) return ok(only);
  return refusal(
    'muster-unclear',
    only === undefined
      ? 'No muster is open; open one first'
      : `Say which muster with --muster: ${open.join(', ')}`,
  );
}

/** The trip whose chance a closing changes: the muster's own. */
function tripOf(garage: Garage, options: Options): string | null {
  const muster = openMusterOf(garage, options);
  return muster.ok && Object.hasOwn(garage.musters, muster.value)
    ? (garage.musters[muster.value]?.trip ?? null)
    : null;
}
