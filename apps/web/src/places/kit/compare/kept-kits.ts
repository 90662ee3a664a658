import { useSyncExternalStore } from 'react';
import type { KitCopy } from './differ.ts';

/**
 * Kits kept under a name to compare with. They are numbers of a moment, not part of the garage: this browser tab keeps them
 * until it is closed. What should last is a trip of its own.
 */
const KEY = 'waymend.kept-kits';
/** More than this nobody compares. */
const MOST = 12;

let kits: readonly KitCopy[] | null = null;
const listeners = new Set<() => void>();

export function useKeptKits(): readonly KitCopy[] {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => (kits ??= read()),
  );
}

/** A kit kept under a name that is there already takes its place. */
export function keepKit(kit: KitCopy): void {
  set([kit, ...(kits ?? read()).filter(({ name }) => name !== kit.name)].slice(0, MOST));
}

export function dropKit(name: string): void {
  set((kits ?? read()).filter((kit) => kit.name !== name));
}

function set(next: readonly KitCopy[]): void {
  kits = next;
  try {
    sessionStorage.setItem(KEY, JSON.stringify(next));
  } catch {
    // A browser that forbids it keeps them while the page is open.
  }
  for (const listener of listeners) listener();
}

function read(): readonly KitCopy[] {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? '[]');
    return Array.isArray(found) ? found.filter(isKit) : [];
  } catch {
    return [];
  }
}

function isKit(value: unknown): value is KitCopy {
  if (typeof value !== 'object' || value === null) return false;
  const of = (key: string): unknown => Reflect.get(value, key);
  return (
    typeof of('name') === 'string' &&
    ['unaided', 'grams', 'pieces', 'spentCents', 'gaps'].every((key) => typeof of(key) === 'number') &&
    Array.isArray(of('items'))
  );
}
