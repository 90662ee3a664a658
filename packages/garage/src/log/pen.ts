import type { Change, Step } from './change.ts';
import { changeId } from './change.ts';

/** Who writes a step, when, and what it is called. */
export interface Author {
  readonly device: string;
  /** The next free number of this device. */
  readonly counter: number;
  /** Later than every stamp of the log: `nextStamp(log.lastStamp, now)`. */
  readonly time: string;
  readonly title: string;
}

/** Writes the changes of one step: numbered on, one stamp, one step. */
export class Pen {
  readonly written: Change[] = [];
  private readonly author: Author;
  private readonly step: Step;

  constructor(author: Author, undoes?: string) {
    const { device, counter, title } = author;
    this.author = author;
    this.step = { id: changeId(device, counter), title, ...(undoes === undefined ? {} : { undoes }) };
  }

  write(entity: string, field: string, value: unknown, replaced: Iterable<Change>): Change {
    const { device, counter, time } = this.author;
    const change: Change = {
      id: changeId(device, counter + this.written.length),
      device,
      time,
      entity,
      field,
      value,
      replaces: [...replaced].map(({ id }) => id),
      step: this.step,
    };
    this.written.push(change);
    return change;
  }
}
