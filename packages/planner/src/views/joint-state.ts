import { reachOf } from '@waymend/core/fastening/access';
import { RECALLED_OPENINGS } from '@waymend/core/fastening/opening';
import { GRADES } from '@waymend/core/repairing/grade';
import { holdWays } from '@waymend/core/repairing/hold-ways';
import { turnWays } from '@waymend/core/repairing/turn-ways';
import { taskOf } from '@waymend/core/repairing/turning';
import { NeedWriter } from '@waymend/core/repairing/need-writer';
import type { Grade, Joint, Scene } from '@waymend/core/repairing/scene';

/** Kinds of pieces the size rail has a row for. */
export type PieceKind = 'socket' | 'deep' | 'ring' | 'flare' | 'key';

/** What the pieces that come along can do about one joint. */
export interface JointState {
  readonly joint: Joint;
  /** Best grade at which it can be undone, turned and held; null when it cannot. */
  readonly grade: Grade | null;
  /** Why not: nothing turns it; it could be turned, but no handle or lever is along that is strong enough; nothing holds the far side. */
  readonly missing: 'piece' | 'lever' | 'hold' | null;
  /** Where the far side must be held: whether both sides can be served at the same moment. */
  readonly held: 'both' | 'one' | 'neither' | null;
}

/** The state of every joint of a scene with some of its pieces carried (M2, M3). */
export function jointStates(scene: Scene, carried: ReadonlySet<string>): readonly JointState[] {
  const along = { ...scene, pieces: scene.pieces.filter(({ id }) => carried.has(id)) };
  const writer = new NeedWriter(along, RECALLED_OPENINGS);
  return scene.joints.map((joint) => {
    const grade = GRADES.find((g) => writer.turn(joint.id, g) !== null) ?? null;
    const task = taskOf(joint, scene.crew, RECALLED_OPENINGS);
    const turning = turnWays(writer.toolbox, task);
    const some =
      turning.alone.atLeast('last-resort').length > 0 ||
      turning.driven.some((d) => d.bare !== null || d.pieces.atLeast('last-resort').length > 0) ||
      turning.drifts.atLeast('last-resort').length > 0;
    const holding = joint.hold === undefined ? null : holdWays(writer.toolbox, task, joint.hold);
    const holds =
      holding === null ||
      holding.alone.atLeast('last-resort').length > 0 ||
      [...holding.driven.values()].some((p) => p.atLeast('last-resort').length > 0);
    const missing =
      grade !== null
        ? null
        : !some
          ? 'piece'
          : joint.hold !== undefined
            ? holdOrLever(along, joint, holds)
            : 'lever';
    const held =
      joint.hold === undefined ? null : grade !== null ? 'both' : some || holds ? 'one' : 'neither';
    return { joint, grade, missing, held };
  });
}

/** A held joint that fails although something turns it: alone it would go (so the far side is what is missing), or it lacks the lever. */
function holdOrLever(scene: Scene, joint: Joint, holds: boolean): 'hold' | 'lever' {
  const { hold: _, ...free } = joint;
  const alone = new NeedWriter({ ...scene, joints: [free] }, RECALLED_OPENINGS);
  return !holds || alone.turn(joint.id, 'last-resort') !== null ? 'hold' : 'lever';
}

/** The kind of piece a head is properly turned with, simplest first; null where the rail has no row for it. */
export function wantedToTurn(joint: Joint): PieceKind | null {
  switch (joint.drive) {
    case 'flare':
      return 'flare';
    case 'hex-key':
      return 'key';
    case 'hex': {
      const head = { ...joint };
      if (reachOf('shallow-socket', head, SLOTTED) !== null) return 'socket';
      return reachOf('deep-socket', head, SLOTTED) !== null ? 'deep' : 'ring';
    }
    default:
      return null;
  }
}

/** The kind that holds the far side: a ring, or what its own drive asks for. */
export function wantedToHold(hold: NonNullable<Joint['hold']>): PieceKind | null {
  if (hold.drive === 'hex') return 'ring';
  if (hold.drive === 'flare') return 'flare';
  return hold.drive === 'hex-key' ? 'key' : null;
}

/** A slotted socket is still a socket. */
const SLOTTED = { slotted: true, retains: true };
