import type { ScenePiece } from '@waymend/core/repairing/scene';

/** A line of a kit, as far as pieces go. */
export interface CarriedLine {
  readonly id: string;
  readonly copies: number;
}

/** Which of a scene's pieces come along, by piece id: of several copies the first ones. */
export function carriedPieces(
  pieces: readonly ScenePiece[],
  kit: readonly CarriedLine[],
): ReadonlySet<string> {
  const left = new Map(kit.map(({ id, copies }) => [id, copies]));
  const carried = new Set<string>();
  for (const { id, belonging } of pieces) {
    const more = left.get(belonging) ?? 0;
    if (more <= 0) continue;
    left.set(belonging, more - 1);
    carried.add(id);
  }
  return carried;
}
