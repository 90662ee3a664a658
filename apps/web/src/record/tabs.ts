import { field } from './rows.ts';

/** What tabs tell each other: what was written, and that a copy was made. */
export type TabNews =
  | { readonly kind: 'written'; readonly keys: readonly string[] }
  | { readonly kind: 'copied'; readonly steps: number };

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage(message: unknown): void;
  close(): void;
  onmessage: ((event: MessageEvent) => unknown) | null;
}

export function readNews(data: unknown): TabNews | null {
  const keys = field(data, 'keys');
  if (field(data, 'kind') === 'written' && Array.isArray(keys))
    return { kind: 'written', keys: keys.filter((key) => typeof key === 'string') };
  const steps = field(data, 'steps');
  if (field(data, 'kind') === 'copied' && typeof steps === 'number') return { kind: 'copied', steps };
  return null;
}
