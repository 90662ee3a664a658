import { nameOf } from '@waymend/planner/scene/pieces';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { sizeTable } from '@waymend/planner/views/size-table';
import type { Errand } from '../answer.ts';
import { keptPlan } from './planning.ts';
import type { KitRequest, ShopItem } from './protocol.ts';

/** Answers what the kit screens ask beside the plan itself. */
export function kit(request: Exclude<KitRequest, { kind: 'kit/sure' }>, { say }: Errand): void {
  switch (request.kind) {
    case 'kit/sizes': {
      const plan = keptPlan(request.garage, request.trip, request.question);
      if (plan === undefined)
        say(
          {
            kind: 'refused',
            refusals: [
              { id: 'plan-missing', message: 'The kit is not planned yet; wait for it, then ask again' },
            ],
          },
          true,
        );
      else say({ kind: 'kit/sizes', rows: sizeTable(plan.prepared, plan.solved) }, true);
      return;
    }
    case 'kit/shop':
      say({ kind: 'kit/shop', items: request.items.flatMap(shopItem) }, true);
      return;
    case 'kit/renewal': {
      const renew = SHIPPED_TRADE.failures.find((f) => f.id === request.failure)?.renew;
      if (renew === undefined)
        say(
          {
            kind: 'refused',
            refusals: [
              { id: 'renewal-unknown', message: 'Nothing can be renewed at home against this failure' },
            ],
          },
          true,
        );
      else say({ kind: 'kit/renewal', what: renew.what, rateFactor: renew.rateFactor }, true);
    }
  }
}

/** Only what is sold singly; its id is the catalogue's behind 'buy:'. */
function shopItem(item: string): readonly ShopItem[] {
  const is = item.replace(/^buy:/, '');
  const entry = item.startsWith('buy:') ? SHIPPED_TRADE.belongings.find((b) => b.id === is) : undefined;
  if (entry === undefined) return [];
  return [{ item, is, name: nameOf(entry) ?? is, grams: entry.grams, cents: SHIPPED_TRADE.priceOf(entry) }];
}
