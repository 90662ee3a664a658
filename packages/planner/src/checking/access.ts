import type { Access, Joint, ToolOffer } from '@waymend/core/repairing/scene';
import type { Mark } from './marks.ts';
import { oneWorse } from './marks.ts';

/** Which tool forms reach a head (M2 "Access"), written again for the checker. */

/** What must stand between a socket and its handle to reach: nothing, 100 mm of extension, or something that bends. */
export type Reach = 'straight' | 'extended' | 'bent';

export interface SocketReach {
  readonly mark: Mark;
  readonly reach: Reach;
}

type SocketOffer = Extract<ToolOffer, { kind: 'socket' }>;

export function socketReach(access: Access, socket: SocketOffer): SocketReach {
  const deep = socket.depth === 'deep';
  switch (access) {
    case 'open':
      return straight(deep ? 'with-care' : 'proper');
    case 'deep':
      return straight(deep ? 'proper' : null);
    case 'recess':
      return straight('proper');
    case 'side':
      return straight(null);
    case 'tight':
      return straight('with-care');
    case 'remote':
      return { mark: 'proper', reach: 'extended' };
    case 'angle':
      return { mark: 'proper', reach: 'bent' };
    case 'slotted':
      return straight(socket.slotted ? 'proper' : null);
    case 'retain':
      // A shallow socket does not go down over a plug, whatever holds it.
      return straight(deep ? (socket.retains ? 'proper' : 'with-care') : null);
  }
}

/** A bit on a square drive reaches like a socket, and a stud standing through is nothing to it. */
export function bitReach(access: Access): SocketReach {
  switch (access) {
    case 'open':
    case 'deep':
    case 'recess':
      return straight('proper');
    case 'tight':
      return straight('with-care');
    case 'remote':
      return { mark: 'proper', reach: 'extended' };
    case 'angle':
      return { mark: 'proper', reach: 'bent' };
    case 'side':
    case 'slotted':
    case 'retain':
      return straight(null);
  }
}

/** A wheel brace reaches as its depth says, and it has no extension to reach further. */
export function braceReach(access: Access, depth: 'shallow' | 'deep'): Mark {
  switch (access) {
    case 'open':
      return depth === 'deep' ? 'with-care' : 'proper';
    case 'deep':
      return depth === 'deep' ? 'proper' : null;
    case 'recess':
      return 'proper';
    case 'tight':
      return 'with-care';
    case 'retain':
      return depth === 'deep' ? 'with-care' : null;
    case 'angle':
    case 'remote':
    case 'side':
    case 'slotted':
      return null;
  }
}

export function ringReach(access: Access, ratcheting: boolean): Mark {
  switch (access) {
    case 'open':
    case 'side':
      return 'proper';
    case 'deep':
    case 'angle':
      return 'with-care';
    case 'tight':
      return ratcheting ? 'proper' : 'with-care';
    case 'recess':
    case 'remote':
    case 'retain':
    case 'slotted':
      return null;
  }
}

/** Note (a) of the table: an open end rounds what is tight, and corroded heads sooner. */
export function openEndReach(joint: Joint, torque: number): Mark {
  switch (joint.access) {
    case 'open':
    case 'deep':
    case 'side':
    case 'tight':
    case 'angle': {
      const clean: Mark = torque <= 80 ? 'with-care' : 'last-resort';
      return joint.rusty ? oneWorse(clean) : clean;
    }
    case 'slotted':
      return 'with-care';
    case 'recess':
    case 'remote':
    case 'retain':
      return null;
  }
}

/** Notes (b) and (c): nothing with a screw or a pivot where a rounded nut can kill. */
export function isCritical(joint: Joint): boolean {
  return joint.critical === 'wheel' || joint.critical === 'brake' || joint.critical === 'steering';
}

export function adjustableReach(joint: Joint, jaw: 'adjustable' | 'parallel' | 'pipe', torque: number): Mark {
  if (isCritical(joint) || !isReachedByJaws(joint.access)) return null;
  switch (jaw) {
    case 'adjustable':
      return torque <= 25 ? 'with-care' : torque <= 60 ? 'last-resort' : null;
    case 'parallel':
      return torque <= 60 ? 'with-care' : null;
    case 'pipe':
      return null;
  }
}

export function pliersReach(joint: Joint, form: 'locking' | 'water-pump', torque: number): Mark {
  if (isCritical(joint) || !isReachedByJaws(joint.access)) return null;
  return torque <= (form === 'locking' ? 60 : 20) ? 'last-resort' : null;
}

function isReachedByJaws(access: Access): boolean {
  return access === 'open' || access === 'deep' || access === 'side';
}

function straight(mark: Mark): SocketReach {
  return { mark, reach: 'straight' };
}
