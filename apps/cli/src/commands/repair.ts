import type { Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { recordReading } from '@waymend/garage/road/odometer';
import { repairLimits } from '@waymend/garage/road/repair-limits';
import { mendForGood, recordRecheck, recordRepair } from '@waymend/garage/road/repairs';
import { lastKnownKm, openRepairs } from '@waymend/planner/ready/repairs-open';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { grouped } from '@waymend/planner/words/chance';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { repairWords } from '../text/care-text.ts';
import { heading, paragraph } from '../text/layout.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse, writeText } from './garage-at.ts';
import type { Options } from './options.ts';
import { dayOption, freeId, numberOption, textOption, vehicleOption } from './options.ts';

const DOES: Readonly<Record<string, (garage: Garage, vehicle: string, options: Options) => Result<Garage>>> =
  {
    list: (garage) => ok(garage),
    record,
    look,
    mend,
    reading,
  };

/** Lists open repairs, or records one, a look at one, its permanent fix, or the odometer. */
export async function repairCommand(io: Io, path: string, what: string, options: Options): Promise<ExitCode> {
  const garage = await garageAt(io, path, 'edit');
  if (garage === null) return EXIT.refused;
  const does = Object.hasOwn(DOES, what) ? DOES[what] : undefined;
  if (does === undefined) {
    refuse(io, [
      {
        id: 'repair-what',
        message: `"${what.slice(0, 40)}" is not known here; say list, record, look, mend or reading`,
      },
    ]);
    return EXIT.usage;
  }
  const vehicle = vehicleOption(garage, options);
  const after = vehicle.ok ? does(garage, vehicle.value, options) : vehicle;
  const at = numberOption(options, 'at', 0, 'a distance in km');
  if (!vehicle.ok || !after.ok || !at.ok) {
    refuse(io, [vehicle, after, at].flatMap((r) => (r.ok ? [] : [r.error])).slice(0, 1));
    return EXIT.refused;
  }
  const write = options['write'] === true && after.value !== garage;
  if (write && !(await writeText(io, path, writeGarage(after.value)))) return EXIT.refused;
  const known = lastKnownKm(after.value, vehicle.value);
  const km = what === 'list' && at.value !== null ? at.value : known;
  const repairs = openRepairs(after.value, vehicle.value, SHIPPED_TRADE, km);
  const answer = {
    schema: 'waymend.repair/1',
    file: path,
    written: write,
    vehicle: vehicle.value,
    km,
    repairs,
  };
  if (options['json'] === true) io.out(`${JSON.stringify(answer, null, 2)}\n`);
  else {
    const name = after.value.vehicles[vehicle.value]?.name ?? vehicle.value;
    const lines = [
      ...heading(
        `${name} at ${grouped(Math.round(km))} km: ${repairs.length === 0 ? 'no repair asks for anything.' : 'repairs to watch'}`,
        paintFor(io.colour),
      ),
      ...repairs.flatMap((r) => paragraph(repairWords(r), 2, 4)),
      ...(repairs.length === 0
        ? []
        : paragraph(
            "How far a temporary repair may be trusted is an estimate: stop at the noise, and the maker's manual and a licensed mechanic come first.",
          )),
      ...(after.value === garage
        ? []
        : [
            '',
            ...paragraph(
              write ? `Written to ${path}.` : `Nothing written yet: add --write to put this into ${path}.`,
            ),
          ]),
    ];
    io.out(`${lines.join('\n')}\n`);
  }
  return EXIT.done;
}

function record(garage: Garage, vehicle: string, options: Options): Result<Garage> {
  const when = whenAndWhere(options);
  if (!when.ok) return when;
  const said = textOption(options, 'job') ?? '';
  const job = SHIPPED_TRADE.jobs.find(({ id }) => id === said);
  if (job === undefined)
    return refusal(
      'job-unknown',
      `There is no job "${said.slice(0, 40)}"; look it up with waymend tables jobs, and say --job WT-01`,
    );
  const expedient = textOption(options, 'way');
  const failure = textOption(options, 'failure');
  if (failure !== undefined && !SHIPPED_TRADE.failures.some(({ id }) => id === failure))
    return refusal(
      'failure-unknown',
      `There is no failure "${failure.slice(0, 40)}"; look it up with waymend tables failures`,
    );
  const limits = repairLimits(job, expedient);
  if (!limits.ok) return limits;
  const note = textOption(options, 'note');
  return recordRepair(
    garage,
    {
      id: textOption(options, 'id') ?? freeId(garage, 'repairs'),
      vehicle,
      job: job.id,
      ...(expedient === undefined ? {} : { expedient }),
      ...(failure === undefined ? {} : { failure }),
      ...when.value,
      ...(note === undefined ? {} : { note }),
    },
    limits.value,
  );
}

function look(garage: Garage, _: string, options: Options): Result<Garage> {
  const when = whenAndWhere(options);
  if (!when.ok) return when;
  const found = textOption(options, 'found') === 'worse' ? 'worse' : 'good';
  return recordRecheck(garage, {
    id: freeId(garage, 'rechecks'),
    repair: textOption(options, 'repair') ?? '',
    ...when.value,
    found,
  });
}

function mend(garage: Garage, _: string, options: Options): Result<Garage> {
  const on = dayOption(options, 'on');
  return on.ok ? mendForGood(garage, textOption(options, 'repair') ?? '', on.value) : on;
}

function reading(garage: Garage, vehicle: string, options: Options): Result<Garage> {
  const when = whenAndWhere(options);
  if (!when.ok) return when;
  const oldKm = numberOption(options, 'old', 0, 'a distance in km');
  if (!oldKm.ok) return oldKm;
  return recordReading(garage, {
    id: freeId(garage, 'readings', 'reading'),
    vehicle,
    km: when.value.atKm,
    on: when.value.on,
    ...(oldKm.value === null ? {} : { oldKm: oldKm.value }),
  });
}

function whenAndWhere(options: Options): Result<{ readonly on: string; readonly atKm: number }> {
  const on = dayOption(options, 'on');
  if (!on.ok) return on;
  const at = numberOption(options, 'at', 0, 'a distance in km');
  if (!at.ok) return at;
  return at.value === null
    ? refusal('odometer-missing', 'Say what the odometer shows with --at 187400')
    : ok({ on: on.value, atKm: at.value });
}
