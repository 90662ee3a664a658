import { nameOf } from '../scene/pieces.ts';
import type { Trade } from '../trade.ts';

/** What a stock word is called: the spare's name, or the fluid's word. */
export function stockName(of: string, { belongings }: Pick<Trade, 'belongings'>): string {
  return nameOf(belongings.find((b) => b.id === of)) ?? of.replaceAll('-', ' ');
}
