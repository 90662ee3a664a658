import type { Size } from '@waymend/core/fastening/size';
import { isCritical } from '@waymend/core/fastening/access';
import { RATCHET_LIMIT } from '@waymend/core/fastening/drive-limit';
import { isSameSize } from '@waymend/core/fastening/fit';
import type { Joint, SceneNeed, ScenePiece, ToolOffer } from '@waymend/core/repairing/scene';
import { torqueToUndo } from '@waymend/core/fastening/lever';
import type { Trade } from '../trade.ts';
import { nearFits } from '../views/near-fits.ts';

/** Above this no adjustable is used, N m (M2, note b). */
const ADJUSTABLE_MOST = 60;

type Flats = Extract<Size, { kind: 'across-flats' }>;

/** What must not be used for a need: forbidden rows of the substitution table, and sizes here that would round the head (M2). */
export function doNotFor(
  need: SceneNeed,
  joint: Joint | null,
  pieces: readonly ScenePiece[],
  system: string,
  trade: Pick<Trade, 'substitutions'>,
): readonly string[] {
  const rows = trade.substitutions.filter(
    (row) =>
      row.grade === 'forbidden' &&
      (need.kind === 'turn' ? joint !== null && concerns(row, joint, pieces) : isOf(row, need, system)),
  );
  return [
    ...rows.map(({ offered, condition }) => `Never: ${offered}. ${condition}`),
    ...(joint === null ? [] : wrongSizes(joint, pieces)),
  ];
}

type Row = Trade['substitutions'][number];

/** Rows for the function itself; those about brakes and steering only on jobs of that system. */
function isOf({ wanted, id }: Row, need: Extract<SceneNeed, { kind: 'function' }>, system: string): boolean {
  if (wanted.fn !== need.fn.split(' ')[0]) return false;
  const only = ONLY_ON.get(id);
  return only === undefined || only === system;
}

const ONLY_ON: ReadonlyMap<string, string> = new Map([
  ['pin-wire-steering', 'suspension-steering'],
  ['brake-tape', 'brakes'],
]);

/** The rows for turning are computed from the joint: each is shown only where something here can tempt. */
function concerns({ id }: Row, joint: Joint, pieces: readonly ScenePiece[]): boolean {
  const torque = torqueToUndo(joint);
  const here = (tempts: (offer: ToolOffer) => boolean) => pieces.some((p) => p.offers.some(tempts));
  switch (id) {
    case 'turn-shallow-for-deep':
      return (
        joint.drive === 'hex' &&
        joint.access === 'deep' &&
        here((o) => o.kind === 'socket' && o.depth === 'shallow' && isSameSize(o.size, joint.size))
      );
    case 'turn-adjustable-heavy':
      return (
        joint.drive === 'hex' &&
        (torque > ADJUSTABLE_MOST || isCritical(joint)) &&
        here((o) => o.kind === 'adjustable' || o.kind === 'pliers')
      );
    case 'flare-open-brake':
      return (
        joint.drive === 'flare' &&
        joint.critical === 'brake' &&
        here((o) => o.kind === 'wrench' || o.kind === 'adjustable' || o.kind === 'pliers')
      );
    case 'break-ratchet':
      return torque > RATCHET_LIMIT && here((o) => o.kind === 'handle' && o.form === 'ratchet');
    default:
      return false;
  }
}

/** Openings among what is here that go, or seem to go, on the head and must not be used. */
function wrongSizes(joint: Joint, pieces: readonly ScenePiece[]): readonly string[] {
  if (joint.drive !== 'hex' || joint.size.kind !== 'across-flats') return [];
  const tools = new Map<string, Flats>();
  for (const { offers } of pieces) {
    for (const offer of offers) {
      const sizes =
        offer.kind === 'socket'
          ? [offer.size]
          : offer.kind === 'wrench'
            ? offer.ends.map((end) => end.size)
            : [];
      for (const size of sizes) if (size.kind === 'across-flats') tools.set(size.label, size);
    }
  }
  return nearFits([...tools.values()], [joint.size]).flatMap(({ tool, grade, why, head }) =>
    grade === null && why === 'too-loose'
      ? [`Never: ${tool} on ${head}: it turns on the corners and rounds them.`]
      : [],
  );
}
