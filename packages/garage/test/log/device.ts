import type { Change } from '../../src/log/change.ts';
import { changesBetween } from '../../src/log/changes-between.ts';
import type { Conflict } from '../../src/log/conflict.ts';
import { Log } from '../../src/log/log.ts';
import type { Author } from '../../src/log/pen.ts';
import { settle } from '../../src/log/settle.ts';
import { nextStamp } from '../../src/log/stamp.ts';
import { undoOf } from '../../src/log/undo.ts';
import type { Garage } from '../../src/record/schema.ts';

/** A device of the tests: a log, a clock that may be wrong, and the next free number. */
export class Device {
  readonly log = new Log();
  readonly name: string;
  private readonly skewMs: number;
  private readonly clock: { now: number };
  private counter = 0;

  constructor(name: string, skewMs = 0, clock: { now: number } = { now: 1_700_000_000_000 }) {
    this.name = name;
    this.skewMs = skewMs;
    this.clock = clock;
  }

  author(title = 'edit'): Author {
    this.clock.now += 10;
    const time = nextStamp(this.log.lastStamp, this.clock.now + this.skewMs);
    return { device: this.name, counter: this.counter, time, title };
  }

  edit(change: (garage: Garage) => Garage, title?: string): readonly Change[] {
    return this.enter(changesBetween(this.log, change(this.log.garage), this.author(title)));
  }

  undo(step: string): readonly Change[] {
    return this.enter(undoOf(step, this.log, this.author('undo')));
  }

  settle(conflict: Pick<Conflict, 'entity' | 'field'>, value: unknown): readonly Change[] {
    return this.enter(settle(this.log, conflict, value, this.author('settle')));
  }

  hear(other: Device): void {
    this.log.add(other.log.changes());
  }

  private enter(changes: readonly Change[]): readonly Change[] {
    this.counter += changes.length;
    this.log.add(changes);
    return changes;
  }
}

/** Every pair hears each other until there is nothing new. */
export function meet(...devices: readonly Device[]): void {
  for (let round = 0; round < 2; round++)
    for (const one of devices) for (const other of devices) if (one !== other) one.hear(other);
}

export function stepOf(changes: readonly Change[]): string {
  const [first] = changes;
  if (first === undefined) throw new Error('there is no change');
  return first.step.id;
}
