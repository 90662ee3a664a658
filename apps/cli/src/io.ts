/** Exit codes, documented in docs/commands.md. */
export const EXIT = { done: 0, refused: 1, usage: 2, noPlan: 3 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The machine, passed in, so that every command can be tested without one. */
export interface Io {
  /** Answers. Lines end in a newline of their own. */
  readonly out: (text: string) => void;
  /** Progress and refusals. */
  readonly err: (text: string) => void;
  /** Progress may be redrawn on one line. */
  readonly interactive: boolean;
  readonly colour: boolean;
  readonly read: (path: string) => Promise<ReadOutcome>;
  /** All or nothing: the old file or the whole new one. */
  readonly write: (path: string, data: string) => Promise<WriteOutcome>;
  /** Milliseconds, monotone; for progress only, never for answers. */
  readonly clock: () => number;
  /** True once the person has asked to stop. */
  readonly stopAsked: () => boolean;
}

export type WriteOutcome =
  | { readonly kind: 'written' }
  | { readonly kind: 'unwritable'; readonly why: string };

export type ReadOutcome =
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array }
  | { readonly kind: 'missing' }
  | { readonly kind: 'too-big'; readonly bytes: number }
  | { readonly kind: 'unreadable'; readonly why: string };
