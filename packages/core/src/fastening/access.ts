import type { Access, Grade } from '../repairing/scene.ts';
import { oneWorse } from '../repairing/grade.ts';

/** The shapes of tools that the access table tells apart (M2). */
export type ToolForm =
  | 'shallow-socket'
  | 'deep-socket'
  | 'ring'
  | 'ratchet-ring'
  | 'open-end'
  | 'adjustable'
  | 'parallel-jaw'
  | 'locking-pliers'
  | 'water-pump-pliers';

/** What must stand between a socket and its handle: nothing, an extension of 100 mm or more, or something that bends. */
export type Reach = 'straight' | 'extended' | 'bent';

/**
 * A cell of the table: a grade; '-' cannot; 'extended' and 'bent' proper with that between; 'slotted-only' and
 * 'retaining' as the socket is; 'a', 'b', 'c' by the notes below the table, which look at the torque.
 */
export type Cell = Grade | '-' | 'extended' | 'bent' | 'slotted-only' | 'retaining' | 'a' | 'b' | 'c';

const row = (
  shallow: Cell,
  deep: Cell,
  ring: Cell,
  ratchet: Cell,
  open: Cell,
  jaws: Cell,
  pliers: Cell,
): Readonly<Record<ToolForm, Cell>> => ({
  'shallow-socket': shallow,
  'deep-socket': deep,
  ring,
  'ratchet-ring': ratchet,
  'open-end': open,
  adjustable: jaws,
  'parallel-jaw': jaws,
  'locking-pliers': pliers,
  'water-pump-pliers': pliers,
});

/** Which tool forms reach a head (M2 "Access"; common practice, no single source). */
export const ACCESS_TABLE: Readonly<Record<Access, Readonly<Record<ToolForm, Cell>>>> = {
  //         shallow         deep            ring         ratchet ring open end     jaws pliers
  open: row('proper', 'with-care', 'proper', 'proper', 'a', 'b', 'c'),
  deep: row('-', 'proper', 'with-care', 'with-care', 'a', 'b', 'c'),
  recess: row('proper', 'proper', '-', '-', '-', '-', '-'),
  side: row('-', '-', 'proper', 'proper', 'a', 'b', 'c'),
  tight: row('with-care', 'with-care', 'with-care', 'proper', 'a', '-', '-'),
  remote: row('extended', 'extended', '-', '-', '-', '-', '-'),
  angle: row('bent', 'bent', 'with-care', 'with-care', 'a', '-', '-'),
  slotted: row('slotted-only', 'slotted-only', '-', '-', 'with-care', '-', '-'),
  retain: row('-', 'retaining', '-', '-', '-', '-', '-'),
};

/** Note (a): an open end bears on two corners. */
const OPEN_END_WITH_CARE = 80;
/** Notes (b) and (c), N m to undo. */
const ADJUSTABLE = { withCare: 25, lastResort: 60 } as const;
const PARALLEL_WITH_CARE = 60;
const LOCKING_LAST_RESORT = 60;
const WATER_PUMP_LAST_RESORT = 20;

/** The head, as far as reach goes. */
export interface Head {
  readonly access: Access;
  /** Torque to undo, N m. */
  readonly torque: number;
  readonly rusty: boolean;
  readonly critical?: 'wheel' | 'brake' | 'steering' | 'support';
}

/** How a form reaches a head: its grade, and for sockets what must stand between. */
export interface Reached {
  readonly grade: Grade;
  readonly reach: Reach;
}

export interface SocketMarks {
  readonly slotted: boolean;
  readonly retains: boolean;
}

const PLAIN: SocketMarks = { slotted: false, retains: false };

/** Where a rounded nut can kill, nothing with a screw or a pivot in its jaw is used (notes b and c). */
export function isCritical(head: Pick<Head, 'critical'>): boolean {
  return head.critical === 'wheel' || head.critical === 'brake' || head.critical === 'steering';
}

/** Reach of a form; null when it cannot, or must not. `marks` matter for sockets only. */
export function reachOf(form: ToolForm, head: Head, marks: SocketMarks = PLAIN): Reached | null {
  const cell = ACCESS_TABLE[head.access][form];
  switch (cell) {
    case '-':
      return null;
    case 'extended':
    case 'bent':
      return { grade: 'proper', reach: cell };
    case 'slotted-only':
      return marks.slotted ? { grade: 'proper', reach: 'straight' } : null;
    case 'retaining':
      return { grade: marks.retains ? 'proper' : 'with-care', reach: 'straight' };
    case 'a':
    case 'b':
    case 'c':
      return straight(byTorque(form, head));
    case 'proper':
    case 'with-care':
    case 'last-resort':
      return straight(cell);
  }
}

/**
 * A bit on a square drive reaches like a socket; nothing stands through the head it enters, so the better of the two depths
 * holds, except where a pipe or a plug is in its way.
 */
export function bitReachOf(access: Access): Reached | null {
  if (access === 'slotted' || access === 'retain') return null;
  const head = { access, torque: 0, rusty: false };
  const shallow = reachOf('shallow-socket', head);
  return shallow ?? reachOf('deep-socket', head);
}

function byTorque(form: ToolForm, head: Head): Grade | null {
  const { torque } = head;
  if (form === 'open-end') {
    const clean: Grade = torque <= OPEN_END_WITH_CARE ? 'with-care' : 'last-resort';
    return head.rusty ? oneWorse(clean) : clean;
  }
  if (isCritical(head)) return null;
  switch (form) {
    case 'adjustable':
      if (torque <= ADJUSTABLE.withCare) return 'with-care';
      return torque <= ADJUSTABLE.lastResort ? 'last-resort' : null;
    case 'parallel-jaw':
      return torque <= PARALLEL_WITH_CARE ? 'with-care' : null;
    case 'locking-pliers':
      return torque <= LOCKING_LAST_RESORT ? 'last-resort' : null;
    case 'water-pump-pliers':
      return torque <= WATER_PUMP_LAST_RESORT ? 'last-resort' : null;
    case 'shallow-socket':
    case 'deep-socket':
    case 'ring':
    case 'ratchet-ring':
      return null;
  }
}

function straight(grade: Grade | null): Reached | null {
  return grade === null ? null : { grade, reach: 'straight' };
}
