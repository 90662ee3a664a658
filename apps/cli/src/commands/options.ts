import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Collection } from '@waymend/garage/record/collections';
import { ONE_OF } from '@waymend/garage/record/collections';
import { date } from '@waymend/garage/record/schema-parts';
import type { Garage } from '@waymend/garage/record/schema';

export type Options = Readonly<Record<string, unknown>>;

/** A day that was asked for with an option; refused when it is none, or is missing. */
export function dayOption(options: Options, name: string): Result<string> {
  const said = options[name];
  if (typeof said !== 'string')
    return refuse('day-missing', `Say the day with --${name} 2026-03-05; no clock is read`);
  return date.safeParse(said).success
    ? ok(said)
    : refuse('day-unreadable', `"${said.slice(0, 40)}" is not a day; write --${name} 2026-03-05`);
}

/** A number of an option, or null where it was not given. */
export function numberOption(
  options: Options,
  name: string,
  least: number,
  unit: string,
): Result<number | null> {
  const said = options[name];
  if (said === undefined) return ok(null);
  const value = typeof said === 'string' && said.trim() !== '' ? Number(said) : Number.NaN;
  return value >= least && Number.isFinite(value)
    ? ok(value)
    : refuse('number-unreadable', `What --${name} says is not ${unit}; write it as a number`);
}

export function textOption(options: Options, name: string): string | undefined {
  const said = options[name];
  return typeof said === 'string' ? said : undefined;
}

/** The values of an option that may be given several times. */
export function listOption(options: Options, name: string): readonly string[] {
  const said = options[name];
  return Array.isArray(said) ? said.map(String) : [];
}

/** 'wrench=2' -> wrench and 2; 'wrench' -> wrench and 1. */
export function countedOption(said: string): Result<{ readonly id: string; readonly count: number }> {
  const at = said.lastIndexOf('=');
  const id = at < 0 ? said : said.slice(0, at);
  const count = at < 0 ? 1 : Number(said.slice(at + 1));
  return id !== '' && Number.isFinite(count) && (at < 0 || said.slice(at + 1).trim() !== '')
    ? ok({ id, count })
    : refuse('count-unreadable', `"${said.slice(0, 60)}" is not a count; write it like wrench-13=2`);
}

/** The only vehicle, or the one that --vehicle names. */
export function vehicleOption(garage: Garage, options: Options): Result<string> {
  const said = textOption(options, 'vehicle');
  if (said !== undefined)
    return Object.hasOwn(garage.vehicles, said)
      ? ok(said)
      : refuse(
          'vehicle-unknown',
          `There is no vehicle "${said.slice(0, 64)}"; this garage has ${Object.keys(garage.vehicles).join(', ')}`,
        );
  const own = Object.entries(garage.vehicles).flatMap(([id, v]) => (v.kind === 'vehicle' ? [id] : []));
  const [only] = own;
  return only !== undefined && own.length === 1
    ? ok(only)
    : refuse('vehicle-unclear', `Say which vehicle with --vehicle: ${own.join(', ')}`);
}

/** An id that nothing has yet: 'muster-1', 'muster-2' ... */
export function freeId(garage: Garage, table: Collection, wish = ONE_OF[table].replaceAll(' ', '-')): string {
  for (let n = 1; ; n++) {
    const id = `${wish.slice(0, 56)}-${n}`;
    if (!Object.hasOwn(garage[table], id)) return id;
  }
}
