import type { Joint } from '@waymend/core/repairing/scene';
import { waysOf } from '@waymend/core/repairing/ways-of';
import type { Prepared, Solved } from '../plan/plan-trip.ts';

/** One place of the vehicle on the sheet for the glove box: what it takes, and what aboard undoes it. */
export interface SizeRow {
  readonly id: string;
  /** Place and position in words. */
  readonly place: string;
  readonly drive: Joint['drive'];
  readonly size: string;
  /** To tighten, N m. */
  readonly torqueNm: number;
  /** Size on the other side when it must be held. */
  readonly hold: string | null;
  readonly status: Joint['status'];
  readonly grade: 'proper' | 'with-care' | 'last-resort' | null;
  /** Names of the lightest pieces aboard that undo it (and hold it); empty: nothing aboard does. */
  readonly with: readonly string[];
}

/** Every place of the vehicle by head and size, with what the kit undoes it with (M2, M3). */
export function sizeTable(
  { built }: Pick<Prepared, 'built'>,
  { state }: Pick<Solved, 'state'>,
): readonly SizeRow[] {
  const { scene } = built;
  const aboard = { ...scene, pieces: scene.pieces.filter((_, p) => state.carried[p] === 1) };
  const names = new Map(scene.pieces.map((piece) => [piece.id, piece.name]));
  return scene.joints
    .map((joint): SizeRow & { readonly rank: number } => {
      const [way] = waysOf(aboard, { kind: 'turn', joint: joint.id }, 1);
      return {
        id: joint.id,
        place: joint.title,
        drive: joint.drive,
        size: joint.size.label,
        torqueNm: Math.round(joint.torque),
        hold: joint.hold?.size.label ?? null,
        status: joint.status,
        grade: way?.grade ?? null,
        with: (way?.pieces ?? []).flatMap((id) => names.get(id) ?? []),
        rank: rankOf(joint.size),
      };
    })
    .sort((a, b) => order(a.drive) - order(b.drive) || a.rank - b.rank || (a.place < b.place ? -1 : 1))
    .map(({ rank: _, ...row }) => row);
}

const DRIVES: readonly Joint['drive'][] = [
  'hex',
  'flare',
  'hex-key',
  'lobe',
  'lobe-external',
  'spline',
  'square',
  'slot',
  'cross',
  'locknut-hex',
  'locknut-peg',
];

function order(drive: Joint['drive']): number {
  return DRIVES.indexOf(drive);
}

/** Within a drive: by width, or by the number it is known by. */
function rankOf(size: Joint['size']): number {
  switch (size.kind) {
    case 'across-flats':
    case 'slot':
      return size.width;
    case 'lobe':
    case 'cross':
      return size.number;
    case 'spline':
      return size.thread;
  }
}
