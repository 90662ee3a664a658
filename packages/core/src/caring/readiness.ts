/** Something to do before leaving. */
export interface ReadyTask {
  /** Stable: kind and what it is about. */
  readonly id: string;
  readonly kind:
    | 'floor'
    | 'muster'
    | 'repair'
    | 'look'
    | 'recent-work'
    | 'loan'
    | 'unready'
    | 'incomplete'
    | 'care';
  /** Id of the belonging, repair or muster; null for the kit or the vehicle. */
  readonly about: string | null;
  readonly title: string;
  readonly words: string;
  /** Chance of driving home unaided that is lost if it is left undone, 0..1 (M10). */
  readonly chanceLost: number;
  /** Nobody should leave before it is done. */
  readonly blocks: boolean;
  /** Minutes for one person; null where it cannot be said. */
  readonly minutes: number | null;
  readonly takes: readonly string[];
}

export type ReadyStatus = 'ready' | 'ready-with-gaps' | 'not-ready';

export interface Readiness {
  readonly status: ReadyStatus;
  /** What blocks first, then in the order of chance lost; the quicker one first where they are equal. */
  readonly tasks: readonly ReadyTask[];
  /** Of all tasks whose time is known. */
  readonly minutes: number;
  readonly takes: readonly string[];
}

/** A look that risks less than one trip in 10,000 is worth doing, but no gap. */
const LEAST_LOST = 1e-4;

/** Whether a kit is ready, and the things to do in the order of the risk they take away. */
export function readinessOf(tasks: readonly ReadyTask[]): Readiness {
  const ordered = [...tasks].sort(
    (a, b) =>
      Number(b.blocks) - Number(a.blocks) ||
      b.chanceLost - a.chanceLost ||
      (a.minutes ?? Number.MAX_VALUE) - (b.minutes ?? Number.MAX_VALUE) ||
      (a.id < b.id ? -1 : 1),
  );
  return {
    status: ordered.some((t) => t.blocks)
      ? 'not-ready'
      : ordered.some((t) => t.kind !== 'care' || t.chanceLost >= LEAST_LOST)
        ? 'ready-with-gaps'
        : 'ready',
    tasks: ordered,
    minutes: ordered.reduce((sum, t) => sum + (t.minutes ?? 0), 0),
    takes: [...new Set(ordered.flatMap((t) => t.takes))],
  };
}
