import type { StowAnswer, StowedBag, StowedItem, StowedPocket } from '../answer/stow-answer.ts';

/** A rectangle in millimetres, from the left and the top of the bag. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece in silhouette: its outline in place, long side across. */
export interface DrawnPiece extends Box {
  readonly item: StowedItem;
  /** Its part beyond the pocket's end, mm. */
  readonly outMm: number;
}

/** One row of the map: a pocket, or the room of the bag, with the pieces that lie in it. */
export interface DrawnPlace extends Box {
  /** Null: the room of the bag. */
  readonly pocket: StowedPocket | null;
  readonly title: string;
  /** From 1, as it stands in the balloon beside the row. */
  readonly number: number;
  readonly pieces: readonly DrawnPiece[];
}

/** A bag to scale, its places one under the other (M14). Millimetres; every place at least `leastMm` high. */
export interface PocketMap {
  readonly bag: StowedBag;
  readonly width: number;
  readonly height: number;
  readonly places: readonly DrawnPlace[];
}

/** Between pieces and round them, mm. */
const GAP = 4;

/**
 * Draws a bag as rows: each pocket as long as it is, pieces side by side along it, in further lines where they do not fit
 * beside each other. A room has the bag's length where that is known, else that of its longest piece.
 *
 * @param leastMm Least height of a row: what a thumb needs at the scale of the drawing.
 */
export function pocketMap(bag: StowedBag, leastMm = 0): PocketMap {
  const room = bag.items.length > 0 || bag.pockets.length === 0 ? [null] : [];
  const longest = Math.max(
    1,
    ...[...bag.items, ...bag.pockets.flatMap((p) => p.items)].map((i) => i.lengthMm),
  );
  const inner = bag.lengthMm ?? longest + 2 * GAP;
  const places: DrawnPlace[] = [];
  let y = 0;
  for (const pocket of [...bag.pockets, ...room]) {
    const width = pocket?.lengthMm ?? inner;
    const items = pocket?.items ?? bag.items;
    const drawn = rows(items, width, y);
    const height = Math.max(leastMm, pocket?.widthMm ?? 0, drawn.height);
    places.push({
      pocket,
      title: pocket?.name ?? 'in its room',
      number: places.length + 1,
      x: 0,
      y,
      width,
      height,
      pieces: drawn.pieces,
    });
    y += height;
  }
  const out = Math.max(0, ...places.flatMap((place) => place.pieces.map((p) => p.x + p.width)));
  return { bag, width: Math.max(out, ...places.map((place) => place.width)), height: y, places };
}

function rows(
  items: readonly StowedItem[],
  width: number,
  top: number,
): { readonly pieces: readonly DrawnPiece[]; readonly height: number } {
  const pieces: DrawnPiece[] = [];
  let x = GAP;
  let y = top + GAP;
  let line = 0;
  for (const item of items) {
    if (x > GAP && x + item.lengthMm > width) {
      x = GAP;
      y += line + GAP;
      line = 0;
    }
    pieces.push({ item, x, y, width: item.lengthMm, height: item.widthMm, outMm: item.standsOutMm });
    x += item.lengthMm + GAP;
    line = Math.max(line, item.widthMm);
  }
  return { pieces, height: items.length === 0 ? 0 : y + line + GAP - top };
}

/** One step of counting a kit in or out: a place with what belongs in it. */
export interface MusterStep {
  /** Null: loose in a berth. */
  readonly bag: string | null;
  readonly pocket: string | null;
  readonly berth: string;
  /** 'large roll, slot 3, drawer in the canopy'. */
  readonly where: string;
  readonly items: readonly StowedItem[];
}

/** The order to count a kit in: berths from front to back, first-grab bags first, pocket by pocket, then what is loose. */
export function musterOrder(answer: StowAnswer): readonly MusterStep[] {
  return answer.berths.flatMap((berth): MusterStep[] => {
    const bags = answer.bags.filter((bag) => bag.berth === berth.id);
    const inBags = bags.flatMap((bag) =>
      [...bag.pockets, null].map(
        (pocket): MusterStep => ({
          bag: bag.id,
          pocket: pocket?.id ?? null,
          berth: berth.id,
          where: [bag.name, ...(pocket === null ? [] : [pocket.name]), berth.name].join(', '),
          items: pocket?.items ?? bag.items,
        }),
      ),
    );
    const loose = {
      bag: null,
      pocket: null,
      berth: berth.id,
      where: `loose, ${berth.name}`,
      items: berth.loose,
    };
    return [...inBags, loose].filter(({ items }) => items.length > 0);
  });
}
