import type { LoadAnswer, Margin } from '@waymend/planner/answer/plan-answer';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { loadText } from '@waymend/planner/words/mass';
import { table } from './layout.ts';

/** Axles, gross, roof, tyres and berths against their limits. */
export function loadLines(load: LoadAnswer, units: UnitStyle): string[] {
  const rows: string[][] = [];
  const add = (name: string, margin: Margin | null) => {
    if (margin === null) return;
    const limit = margin.limitKg === null ? 'no limit recorded' : `of ${loadText(margin.limitKg, units)}`;
    rows.push([name, loadText(margin.kg, units), limit, marginWords(margin.marginKg, units)]);
  };
  add('front axle', load.front);
  add('rear axle', load.rear);
  add('gross mass', load.gross);
  add('roof', load.roof);
  add('front tyres', load.tyres?.front ?? null);
  add('rear tyres', load.tyres?.rear ?? null);
  for (const berth of load.berths) if (berth.limitKg !== null) add(berth.name, berth);
  return table([{ title: '' }, { title: '', align: 'right' }, { title: '' }, { title: '' }], rows);
}

function marginWords(marginKg: number | null, units: UnitStyle): string {
  if (marginKg === null) return '';
  return marginKg < 0 ? `OVER by ${loadText(-marginKg, units)}` : `${loadText(marginKg, units)} left`;
}
