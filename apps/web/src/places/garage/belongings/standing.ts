import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { Belonging } from '@waymend/garage/record/schema';
import type { Standing } from './rows.ts';

type Told = Pick<PlanAnswer, 'kit' | 'stayHome'>;

/** What the plan says of each belonging, by id. */
export type Standings = (id: string, belonging: Belonging) => Standing;

const UNKNOWN: Standing = { kind: 'unknown' };

/** Looks a belonging up in a plan; without a plan nothing is known. */
export function standingsOf(answer: Told | null): Standings {
  if (answer === null) return (_, { forSale }) => (forSale ? { kind: 'buy', chosen: false } : UNKNOWN);
  const along = new Map(answer.kit.items.map((item) => [item.id, item.copies]));
  const home = new Map(answer.stayHome.map((item) => [item.id, item]));
  return (id, { forSale }) => {
    const come = along.get(id) ?? 0;
    if (forSale) return { kind: 'buy', chosen: come > 0 };
    const stay = home.get(id);
    if (come > 0 && stay !== undefined) return { kind: 'some', copies: come, of: come + stay.copies };
    if (come > 0) return { kind: 'along', copies: come };
    return stay === undefined ? UNKNOWN : { kind: 'home', why: stay.why };
  };
}
