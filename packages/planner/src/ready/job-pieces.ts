import type { SceneJob } from '@waymend/core/repairing/scene';
import { waysByGrade } from '@waymend/core/repairing/ways-of';
import { MOST_WAYS } from '../card/aboard.ts';
import type { Prepared } from '../plan/plan-trip.ts';

/** A belonging that a job's card asks for, and how many of its pieces. */
export interface CardPiece {
  readonly belonging: string;
  readonly pieces: number;
}

/**
 * The owned pieces that a job needs: for each need the best way among what is carried, and every piece that holds stock it uses.
 * A job done at several positions takes the first. Empty for a job this vehicle does not have.
 */
export function piecesForJob(
  { built }: Pick<Prepared, 'built'>,
  carried: ReadonlySet<string>,
  jobId: string,
): readonly CardPiece[] {
  const { scene } = built;
  const job =
    scene.jobs.find((j) => j.id === jobId) ?? scene.jobs.find((j) => j.job === jobId && !j.expedient);
  if (job === undefined) return [];
  const aboard = scene.pieces.filter((p) => p.owned && carried.has(p.id));
  const taken = new Set<string>();
  // The same ways as on the card: what it names is what goes out.
  for (const [way] of waysByGrade({ ...scene, pieces: aboard }, job.needs, MOST_WAYS))
    for (const id of way?.pieces ?? []) taken.add(id);
  for (const id of stockFor(job, aboard)) taken.add(id);
  const counts = new Map<string, number>();
  for (const piece of aboard)
    if (taken.has(piece.id)) counts.set(piece.belonging, (counts.get(piece.belonging) ?? 0) + 1);
  return [...counts].map(([belonging, pieces]) => ({ belonging, pieces }));
}

/** Pieces of each stock, in their order, until there is enough for once. */
function stockFor(job: SceneJob, aboard: Prepared['built']['scene']['pieces']): readonly string[] {
  return job.uses.flatMap(({ of, units }) => {
    let left = units;
    return aboard.flatMap((piece) => {
      const held = piece.stock.find((s) => s.of === of)?.units ?? 0;
      if (left <= 0 || held <= 0) return [];
      left -= held;
      return [piece.id];
    });
  });
}
