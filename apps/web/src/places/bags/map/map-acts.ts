import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { removeEntity } from '@waymend/garage/remove';
import type { StowAnswer, StowedBag } from '@waymend/planner/answer/stow-answer';

export type Bag = Garage['bags'][string];

/** Where a belonging is put by hand. */
export interface Spot {
  /** Null: in no bag. */
  readonly bag: string | null;
  readonly pocket: string | null;
}

/**
 * Puts a belonging into a bag or pocket, or takes it out of all; a berth of its own gives way to the bag's. What is put there
 * `byHand` stays there, whatever a stowage would rather.
 */
export function moveTo(garage: Garage, belonging: string, { bag, pocket }: Spot, byHand: boolean): Garage {
  const thing = garage.belongings[belonging];
  if (thing === undefined || (bag !== null && garage.bags[bag] === undefined)) return garage;
  const { bag: _bag, pocket: _pocket, fixed: _fixed, berth, ...rest } = thing;
  const kept = bag === null && berth !== undefined ? { berth } : {};
  const inPocket = pocket !== null && garage.pockets[pocket]?.bag === bag ? { pocket } : {};
  const next =
    bag === null ? { ...rest, ...kept } : { ...rest, bag, ...inPocket, ...(byHand ? { fixed: true } : {}) };
  return { ...garage, belongings: { ...garage.belongings, [belonging]: next } };
}

/**
 * Writes a stowage into the record in one step: bags that were proposed become bags of the garage, bags that ride better
 * elsewhere are set down there, and every owned belonging gets its bag and pocket, or none where it rides loose. Of several
 * copies that lie apart the first decides: the record has one place for a belonging.
 */
export function putAway(garage: Garage, stow: StowAnswer, newId: (wish: string) => string): Garage {
  const next = stow.proposed
    ? withProposed(garage, stow.bags, newId)
    : { garage, ids: new Map<string, string>() };
  const { ids } = next;
  const idOf = (id: string): string => ids.get(id) ?? id;
  let after = next.garage;
  for (const bag of stow.bags) {
    const record = after.bags[idOf(bag.id)];
    if (record !== undefined && bag.moved && after.berths[bag.berth] !== undefined)
      after = { ...after, bags: { ...after.bags, [idOf(bag.id)]: { ...record, berth: bag.berth } } };
  }
  const placed = new Set<string>();
  const place = (belonging: string, spot: Spot): void => {
    if (placed.has(belonging)) return;
    placed.add(belonging);
    after = moveTo(after, belonging, spot, garage.belongings[belonging]?.fixed === true);
  };
  for (const bag of stow.bags) {
    for (const pocket of bag.pockets)
      for (const { belonging } of pocket.items)
        place(belonging, { bag: idOf(bag.id), pocket: idOf(pocket.id) });
    for (const { belonging } of bag.items) place(belonging, { bag: idOf(bag.id), pocket: null });
  }
  for (const berth of stow.berths)
    for (const { belonging } of berth.loose) place(belonging, { bag: null, pocket: null });
  return after;
}

function withProposed(
  garage: Garage,
  proposed: readonly StowedBag[],
  newId: (wish: string) => string,
): { readonly garage: Garage; readonly ids: Map<string, string> } {
  const ids = new Map<string, string>();
  const bags: Record<string, Bag> = { ...garage.bags };
  const pockets = { ...garage.pockets };
  for (const bag of proposed) {
    const id = newId(bag.name);
    ids.set(bag.id, id);
    const inside = [...bag.items, ...bag.pockets.flatMap(({ items }) => items)];
    bags[id] = {
      name: bag.name,
      kind: bag.kind,
      grams: Math.max(0, bag.grams - inside.reduce((sum, { grams }) => sum + grams, 0)),
      ...(garage.berths[bag.berth] === undefined ? {} : { berth: bag.berth }),
      ...(bag.lengthMm === null ? {} : { lengthMm: bag.lengthMm }),
      ...(bag.widthMm === null ? {} : { widthMm: bag.widthMm }),
      ...(bag.heightMm === null ? {} : { heightMm: bag.heightMm }),
      ...(bag.firstGrab ? { firstGrab: true } : {}),
      ...(bag.spillproof ? { spillproof: true } : {}),
    };
    bag.pockets.forEach((pocket, order) => {
      const pocketId = newId(pocket.name);
      ids.set(pocket.id, pocketId);
      pockets[pocketId] = {
        bag: id,
        name: pocket.name,
        order,
        widthMm: pocket.widthMm,
        lengthMm: pocket.lengthMm,
        openEnded: false,
        ...(pocket.depthMm === null ? {} : { depthMm: pocket.depthMm }),
      };
    });
  }
  return { garage: { ...garage, bags, pockets }, ids };
}

/** Takes everything that lies in a bag out of it, so that the next stowage is free; things with a berth of their own keep it. */
export function takeAllOut(garage: Garage): Garage {
  let next = garage;
  for (const [id, { bag, pocket }] of Object.entries(garage.belongings))
    if (bag !== undefined || pocket !== undefined)
      next = moveTo(next, id, { bag: null, pocket: null }, false);
  return next;
}

/** A new bag, or an old one as it is now. */
export function saveBag(garage: Garage, id: string, bag: Bag): Garage {
  return { ...garage, bags: { ...garage.bags, [id]: bag } };
}

/** What was in it is in no bag then. */
export function removeBag(garage: Garage, id: string): Result<Garage> {
  return garage.bags[id] === undefined ? ok(garage) : removeEntity(garage, 'bags', id);
}
