import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { Garage } from '@waymend/garage/record/schema';
import type { PieceRef } from '../answer/card-answer.ts';
import { berthOf } from '../scene/pieces.ts';

/** Where a belonging is looked for: 'tool roll, slot 4 (drawer)', 'tool box (drawer)', 'drawer', or 'kit'. */
export function whereIs(garage: Garage, belonging: string): string {
  const record = Object.hasOwn(garage.belongings, belonging) ? garage.belongings[belonging] : undefined;
  if (record === undefined) return 'kit';
  const berthId = berthOf(garage, belonging);
  const berth = berthId === null ? undefined : garage.berths[berthId]?.name;
  const bag = record.bag === undefined ? undefined : garage.bags[record.bag];
  const pocket = record.pocket === undefined ? undefined : garage.pockets[record.pocket];
  const box = record.inside === undefined ? undefined : garage.belongings[record.inside];
  const holder = bag?.name ?? box?.name;
  if (holder === undefined) return berth ?? 'kit';
  const inside = pocket === undefined || pocket.bag !== record.bag ? holder : `${holder}, ${pocket.name}`;
  return berth === undefined ? inside : `${inside} (${berth})`;
}

export function pieceRef(garage: Garage, piece: ScenePiece): PieceRef {
  const id = piece.belonging.replace(/^buy:/, '');
  const where = isBought(garage, piece.belonging)
    ? 'kit, still to be bought'
    : whereIs(garage, piece.belonging);
  return { id, name: piece.name, where };
}

/** A planned kit counts on what it buys; nobody looks for it in a drawer. */
function isBought(garage: Garage, belonging: string): boolean {
  const record = Object.hasOwn(garage.belongings, belonging) ? garage.belongings[belonging] : undefined;
  const set = record?.inside === undefined ? undefined : garage.belongings[record.inside];
  return record === undefined || record.forSale || (set?.forSale ?? false);
}
