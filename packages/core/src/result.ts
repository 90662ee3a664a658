/** Expected failure is a value: an id, a plain sentence, and the place in the input it is about. Only bugs throw. */
export interface Refusal {
  /** Stable, kebab-case: 'mass-negative'. Screens and tests key on it. */
  readonly id: string;
  /** One plain sentence, and what to do about it. */
  readonly message: string;
  /** Where in the input: a path ('belongings.w17.grams'), a line number, or both. */
  readonly path?: string;
  readonly line?: number;
}

export type Result<T, E = Refusal> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value };
}

export function refuse(
  id: string,
  message: string,
  where: { path?: string; line?: number } = {},
): Result<never> {
  return { ok: false, error: { id, message, ...where } };
}

/** Closes an exhaustive switch: a new union member fails to compile here. */
export function unreachable(value: never): never {
  throw new Error(`Unreachable value: ${JSON.stringify(value)}`);
}
