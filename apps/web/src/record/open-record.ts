import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Change } from '@waymend/garage/log/change';
import { deviceOf } from '@waymend/garage/log/change';
import { changesBetween } from '@waymend/garage/log/changes-between';
import type { Conflict } from '@waymend/garage/log/conflict';
import { undoAndRedo } from '@waymend/garage/log/history';
import type { StepTaken } from '@waymend/garage/log/log';
import { Log } from '@waymend/garage/log/log';
import type { Author } from '@waymend/garage/log/pen';
import { settle } from '@waymend/garage/log/settle';
import { nextStamp } from '@waymend/garage/log/stamp';
import { undoOf } from '@waymend/garage/log/undo';
import type { Garage } from '@waymend/garage/record/schema';
import { ChangeStore, REMOVED } from './change-store.ts';
import type { Channel, TabNews } from './tabs.ts';
import { channelOf, readNews } from './tabs.ts';
import type { Saved } from './writer.ts';
import { Writer } from './writer.ts';

export interface OpenRecordState {
  readonly garage: Garage;
  /** Values that were written apart; the garage shows one of each until they are settled. */
  readonly conflicts: readonly Conflict[];
  /** Every step, oldest first. */
  readonly history: readonly StepTaken[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly saved: Saved;
  /** Steps since a copy was last kept elsewhere; an import counts as one. */
  readonly changesSinceCopy: number;
}

export interface RecordSurroundings {
  /** Which of the browser's garages; made if there is none of the name. */
  readonly name: string;
  readonly indexedDB: IDBFactory;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Letters and digits, long enough never to come twice. */
  readonly randomId: () => string;
  /** Makes the channel between tabs; null where the browser has none. */
  readonly channel: (name: string) => Channel | null;
  readonly later: (ms: number, then: () => void) => void;
}

/** Opens a garage of this browser; refuses, and touches nothing, when what is kept cannot be read by this version. */
export async function openRecord(around: RecordSurroundings): Promise<Result<OpenRecord>> {
  const store = new ChangeStore(around.indexedDB, around.name);
  const kept = await store.open(around.randomId);
  if (!kept.ok) return kept;
  const { installation, changes, copiedSteps } = kept.value;
  const devices = new Set(changes.map(({ device }) => device));
  let device: string;
  do device = deviceOf(installation, around.randomId());
  while (devices.has(device));
  return ok(new OpenRecord(around, store, device, changes, copiedSteps));
}

/**
 * One garage in one tab. Every tab numbers its changes under a name of its own, so that they never collide and need no lock. A store for
 * React's useSyncExternalStore: `getState` gives the same object until something changes.
 */
export class OpenRecord {
  private readonly around: RecordSurroundings;
  private readonly store: ChangeStore;
  private readonly device: string;
  private readonly log = new Log();
  private readonly writer: Writer;
  private readonly channel: Channel | null;
  private readonly listeners = new Set<() => void>();
  private counter = 0;
  private copiedSteps: number;
  private saved: Saved = 'saved';
  private state: OpenRecordState;

  constructor(
    around: RecordSurroundings,
    store: ChangeStore,
    device: string,
    changes: readonly Change[],
    copiedSteps: number,
  ) {
    this.around = around;
    this.store = store;
    this.device = device;
    this.copiedSteps = copiedSteps;
    this.log.add(changes);
    this.channel = around.channel(channelOf(around.name));
    if (this.channel !== null)
      this.channel.onmessage = ({ data }: MessageEvent<unknown>) => void this.hear(readNews(data));
    this.writer = new Writer(
      store,
      around.later,
      (saved) => this.show(saved),
      (keys) => this.tell({ kind: 'written', keys }),
    );
    this.state = this.look();
  }

  readonly getState = (): OpenRecordState => this.state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** One step: shown at once, resolved when it is on the disk. `change` must not alter the garage it is given. */
  readonly edit = (title: string, change: (garage: Garage) => Garage): Promise<void> =>
    this.enter(changesBetween(this.log, change(this.log.garage), this.author(title)));

  /** Puts a garage in the place of the whole (a file, the demo) as one step that can be undone. */
  readonly replace = (title: string, garage: Garage): Promise<void> => this.edit(title, () => garage);

  /** Ends a conflict with a value, see settle in the garage's log. */
  readonly settle = (
    title: string,
    conflict: Pick<Conflict, 'entity' | 'field'>,
    value: unknown,
  ): Promise<void> => this.enter(settle(this.log, conflict, value, this.author(title)));

  readonly undo = (): Promise<void> => this.takeBack(undoAndRedo(this.log, this.device).undo);

  readonly redo = (): Promise<void> => this.takeBack(undoAndRedo(this.log, this.device).redo);

  readonly exportGarage = (): Garage => this.log.garage;

  /** The owner has a copy of what is shown now outside this browser. */
  readonly noteCopyMade = async (): Promise<void> => {
    const steps = this.log.stepCount;
    try {
      await this.store.noteCopied(steps);
    } catch {
      // The count of changes without a copy stays: rather one copy too many.
      return;
    }
    this.copied(steps);
    this.tell({ kind: 'copied', steps });
  };

  /** Looks for changes of other tabs that were not heard of, after the page was asleep. */
  readonly refresh = async (): Promise<void> => {
    try {
      const keys = await this.store.keys();
      await this.fetch(keys.filter((key) => this.log.change(key) === undefined));
    } catch {
      // Nothing is lost: they are in the database and come with the next look.
    }
  };

  readonly close = (): void => {
    this.writer.stop();
    this.channel?.close();
    this.store.close();
    this.listeners.clear();
  };

  private takeBack(step: StepTaken | null): Promise<void> {
    if (step === null) return Promise.resolve();
    return this.enter(undoOf(step.id, this.log, this.author(step.title)));
  }

  private author(title: string): Author {
    const time = nextStamp(this.log.lastStamp, this.around.now());
    return { device: this.device, counter: this.counter, time, title };
  }

  private enter(changes: readonly Change[]): Promise<void> {
    if (changes.length === 0) return Promise.resolve();
    this.counter += changes.length;
    this.log.add(changes);
    // The writer says that it is saving, which shows the change too.
    return this.writer.write(changes);
  }

  private async hear(news: TabNews | null): Promise<void> {
    if (news?.kind === 'written') {
      try {
        await this.fetch(news.keys);
      } catch {
        await this.refresh();
      }
    } else if (news?.kind === 'copied') this.copied(news.steps);
    else if (news?.kind === 'removed') this.show({ failed: REMOVED });
  }

  private async fetch(keys: readonly string[]): Promise<void> {
    const found = await this.store.read(keys);
    if (this.log.add(found.flatMap((changes) => changes ?? [])) > 0) this.show(this.saved);
  }

  private copied(steps: number): void {
    this.copiedSteps = Math.max(this.copiedSteps, steps);
    this.show(this.saved);
  }

  private tell(news: TabNews): void {
    this.channel?.postMessage(news);
  }

  private show(saved: Saved): void {
    this.saved = saved;
    this.state = this.look();
    for (const listener of this.listeners) listener();
  }

  private look(): OpenRecordState {
    const { undo, redo } = undoAndRedo(this.log, this.device);
    return {
      garage: this.log.garage,
      conflicts: this.log.conflicts,
      history: this.log.steps,
      canUndo: undo !== null,
      canRedo: redo !== null,
      saved: this.saved,
      changesSinceCopy: Math.max(0, this.log.stepCount - this.copiedSteps),
    };
  }
}
