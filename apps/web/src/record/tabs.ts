import { field } from './rows.ts';

/** What tabs tell each other: what was written, that a copy was made, and that the garage is no more. */
export type TabNews =
  | { readonly kind: 'written'; readonly keys: readonly string[] }
  | { readonly kind: 'copied'; readonly steps: number }
  | { readonly kind: 'removed' };

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage(message: unknown): void;
  close(): void;
  onmessage: ((event: MessageEvent) => unknown) | null;
}

/** The name of the channel between tabs that have the same garage open. */
export const channelOf = (garage: string): string => `waymend ${garage}`;

export function readNews(data: unknown): TabNews | null {
  if (field(data, 'kind') === 'removed') return { kind: 'removed' };
  const keys = field(data, 'keys');
  if (field(data, 'kind') === 'written' && Array.isArray(keys))
    return { kind: 'written', keys: keys.filter((key) => typeof key === 'string') };
  const steps = field(data, 'steps');
  if (field(data, 'kind') === 'copied' && typeof steps === 'number') return { kind: 'copied', steps };
  return null;
}
