import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';

/** What an option that counts something was given. */
export function wholeNumber(given: unknown, name: string, least: number, most: number): Result<number> {
  const value = Number(given);
  return Number.isInteger(value) && value >= least && value <= most
    ? ok(value)
    : refuse(
        `${name}-unclear`,
        `--${name} wants a whole number from ${least} to ${most}, not "${String(given).slice(0, 20)}"`,
      );
}
