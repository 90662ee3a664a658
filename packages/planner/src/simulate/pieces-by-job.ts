import type { Scene } from '@waymend/core/repairing/scene';
import { waysOf } from '@waymend/core/repairing/ways-of';

/** By scene job that these pieces can do: the ids of the pieces a repair takes in hand or uses up (lightest ways). */
export function piecesByJob(
  scene: Scene,
  carried: ReadonlySet<string>,
): ReadonlyMap<string, readonly string[]> {
  const aboard = { ...scene, pieces: scene.pieces.filter((p) => carried.has(p.id)) };
  const found = new Map<string, readonly string[]>();
  for (const job of scene.jobs) {
    const ways = job.needs.map((need) => waysOf(aboard, need, 1)[0]);
    if (ways.some((way) => way === undefined)) continue;
    const spent = job.uses.flatMap(({ of }) => {
      const piece = aboard.pieces.find((p) => p.stock.some((s) => s.of === of));
      return piece === undefined ? [] : [piece.id];
    });
    found.set(job.id, [...new Set([...ways.flatMap((way) => way?.pieces ?? []), ...spent])]);
  }
  return found;
}
