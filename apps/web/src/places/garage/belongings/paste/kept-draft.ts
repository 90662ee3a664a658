import type { Decision } from './paper-lines.ts';
import type { Draft } from './draft.ts';

const KEY = 'waymend.draft';
const KINDS = ['thing', 'set', 'right', 'strike', 'own'] as const;

type Small = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
type Kept = Pick<Draft, 'text' | 'decisions' | 'taught'>;

/** Keeps what was typed for this tab, so that loading the page again loses nothing. A table from a file is not: it can be dropped again. */
export function keepDraft(store: Small | null, garage: string, { text, decisions, taught }: Kept): void {
  const isBlank = text === '' && decisions.size === 0 && Object.keys(taught).length === 0;
  try {
    if (isBlank) store?.removeItem(KEY);
    else
      store?.setItem(
        KEY,
        JSON.stringify({ garage, text, decisions: [...decisions], taught: Object.entries(taught) }),
      );
  } catch {
    // Too long for the browser's small store: it lasts until the page is closed.
  }
}

/** What was typed in this tab for this garage; null when there is nothing, or nothing that can be read. */
export function keptDraft(store: Small | null, garage: string): Kept | null {
  let found: unknown;
  try {
    found = JSON.parse(store?.getItem(KEY) ?? 'null');
  } catch {
    return null;
  }
  const text = part(found, 'text');
  if (typeof text !== 'string' || part(found, 'garage') !== garage) return null;
  return {
    text,
    decisions: new Map(
      pairs(part(found, 'decisions')).flatMap(([key, value]) => {
        const decision = decisionOf(value);
        return decision === null ? [] : [[key, decision] as const];
      }),
    ),
    taught: Object.fromEntries(
      pairs(part(found, 'taught')).flatMap(([word, value]) => {
        const means = part(value, 'means');
        return typeof means === 'string' ? [[word, { means }] as const] : [];
      }),
    ),
  };
}

function decisionOf(value: unknown): Decision | null {
  const kind = KINDS.find((one) => one === part(value, 'kind'));
  if (kind === undefined) return null;
  if (kind !== 'thing' && kind !== 'set') return { kind };
  const id = part(value, 'id');
  return typeof id === 'string' ? { kind, id } : null;
}

function pairs(value: unknown): readonly (readonly [string, unknown])[] {
  if (!Array.isArray(value)) return [];
  return value.flatMap((pair: unknown) => {
    if (!Array.isArray(pair)) return [];
    const [key, of] = pair as readonly unknown[];
    return typeof key === 'string' ? [[key, of] as const] : [];
  });
}

function part(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined;
}
