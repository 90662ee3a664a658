/** Where a value comes from. Every value the catalogue ships carries one, and the screens show it. */
export type Basis =
  | { readonly kind: 'source'; readonly cite: string }
  | { readonly kind: 'computed'; readonly from: string }
  | { readonly kind: 'common-practice' }
  | { readonly kind: 'estimate'; readonly why: string }
  | { readonly kind: 'recalled'; readonly of: string };

export const COMMON_PRACTICE: Basis = { kind: 'common-practice' };

/** Read in the named source, not from memory. */
export function source(cite: string): Basis {
  return { kind: 'source', cite };
}

/** A judgement of ours; `why` says what it leans on. */
export function estimate(why: string): Basis {
  return { kind: 'estimate', why };
}

/** Remembered from a standard or handbook, not re-read: shown as such, never silently decides a forbidden question. */
export function recalled(of: string): Basis {
  return { kind: 'recalled', of };
}
