import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { grouped } from '@waymend/planner/words/chance';
import { paragraph } from '../text/layout.ts';
import { garageAt } from './garage-at.ts';

/** Reads a garage as a plan would, and says what was found. */
export async function checkCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const garage = await garageAt(io, path);
  if (garage === null) return EXIT.refused;
  const fittings = Object.values(garage.fittings);
  const belongings = Object.values(garage.belongings);
  const counts = {
    vehicles: Object.keys(garage.vehicles).length,
    people: Object.keys(garage.people).length,
    trips: Object.keys(garage.trips).length,
    legs: Object.keys(garage.legs).length,
    fittings: fittings.length,
    assumedFittings: fittings.filter((f) => f.status === 'assumed').length,
    belongings: belongings.length,
    notUnderstood: belongings.filter((b) => b.is === undefined && b.set === undefined).length,
    weighed: belongings.filter((b) => b.weighed).length,
    notReady: belongings.filter((b) => b.state !== 'ready').length,
    words: Object.keys(garage.words).length,
  };
  if (options['json'] === true) {
    io.out(
      `${JSON.stringify({ schema: 'waymend.check/1', file: path, version: garage.waymend, counts }, null, 2)}\n`,
    );
    return EXIT.done;
  }
  const n = (count: number, one: string, many = `${one}s`) => `${grouped(count)} ${count === 1 ? one : many}`;
  const lines = [
    `${path} is in order (version ${garage.waymend}).`,
    `${n(counts.vehicles, 'vehicle')}, ${n(counts.people, 'person', 'people')}, ${n(counts.trips, 'trip')} of ${n(counts.legs, 'leg')}.`,
    `${n(counts.fittings, 'fitting')}, of which ${grouped(counts.assumedFittings)} are only assumed.`,
    `${n(counts.belongings, 'belonging')}: ${grouped(counts.weighed)} weighed, ${grouped(counts.notReady)} not ready, ${grouped(counts.notUnderstood)} not understood.`,
  ];
  io.out(`${lines.flatMap((line) => paragraph(line)).join('\n')}\n`);
  return EXIT.done;
}
