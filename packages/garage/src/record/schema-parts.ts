import { z } from 'zod';
import type { KeyUnit } from './quantity-text.ts';
import { amountIn } from './quantity-text.ts';

/** What the tables of a garage are made of. */

export const id = z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/);
export const text = z.string().max(200);
export const note = z.string().max(2000);

/** A day of the calendar, '2026-03-05'. */
export const date = z.string().refine(isDay, { message: 'is not a day; write it like "2026-03-05"' });

function isDay(written: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written);
  if (match === null) return false;
  const [year, month, day] = match.slice(1).map(Number);
  const days = new Date(Date.UTC(year ?? 0, month ?? 0, 0)).getUTCDate();
  return (month ?? 0) >= 1 && (month ?? 0) <= 12 && (day ?? 0) >= 1 && (day ?? 0) <= days;
}

/** A number in the unit its key names, or text with a unit of its own ('1.2 kg', '12 oz'). */
export function amount(unit: KeyUnit) {
  return z.union([
    z.number(),
    z
      .string()
      .max(80)
      .transform((written, context) => {
        const value = amountIn(unit, written);
        if (value.ok) return value.value;
        const { id, message } = value.error;
        context.addIssue({ code: 'custom', message, params: { id } });
        return z.NEVER;
      }),
  ]);
}
