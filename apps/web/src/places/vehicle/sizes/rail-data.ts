import type { PieceKind } from '@waymend/planner/views/joint-state';
import type { RailSize, SizeRail } from '@waymend/planner/views/size-rail';

/** Rows below the rule, in order; the last holds every inch piece. */
export const ROWS = ['socket', 'deep', 'ring', 'flare', 'key', 'inch'] as const;
export type Row = (typeof ROWS)[number];

/** What a cell of the rail shows: its copies, and whether it is a hole. */
export interface DrawnCell {
  readonly along: number;
  readonly home: number;
  /** Needed, and nobody has one. */
  readonly hole: boolean;
  /** Needed, and it stays home. */
  readonly bring: boolean;
  readonly names: readonly string[];
}

/** The cell of a size in a row; null where there is neither a piece nor the want of one. */
export function cellIn(size: RailSize, row: Row): DrawnCell | null {
  const cells = size.cells.filter((cell) => rowOf(cell.kind, size.system) === row);
  if (cells.length === 0) return null;
  const pieces = cells.flatMap((cell) => cell.pieces);
  const along = pieces.filter((p) => p.along).length;
  const wanted = cells.some((cell) => cell.wanted);
  const none = cells.some((cell) => cell.wanted && cell.pieces.length === 0);
  return {
    along,
    home: pieces.length - along,
    hole: none,
    bring: wanted && !none && along === 0,
    names: pieces.map((p) => p.name),
  };
}

function rowOf(kind: PieceKind, system: RailSize['system']): Row {
  return system === 'inch' ? 'inch' : kind;
}

/** Sizes of the vehicle or of its owner's pieces, which the flag may read off. */
export function stops({ sizes }: SizeRail): readonly RailSize[] {
  return sizes.filter((s) => s.places.length > 0 || s.cells.length > 0);
}

/** First and last millimetre of the rule. */
export function ends({ sizes }: SizeRail): { readonly from: number; readonly to: number } {
  const mm = sizes.map((s) => s.mm);
  if (mm.length === 0) return { from: 8, to: 24 };
  return { from: Math.floor(Math.min(...mm)), to: Math.ceil(Math.max(...mm)) };
}

/** '24' or '3/4': a size without its unit, for the rule. */
export function bare(label: string): string {
  return label.replace(/ (mm|in)$/, '');
}
