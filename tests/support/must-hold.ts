import type { Joint, Scene, SceneJob, ScenePiece, ToolOffer, Trouble } from '@waymend/core/repairing/scene';

/**
 * What must be true of any job that a plan counts on: necessary conditions, each a sentence of docs/model.md, looked up in the
 * carried pieces one by one. They are far from sufficient, and so simple that they can be checked by reading.
 */

/** Why this job cannot possibly count with these pieces, or null. */
export function whyNot(scene: Scene, job: SceneJob, carried: readonly ScenePiece[]): string | null {
  if (scene.crew.count < job.people) return `M4: ${job.id} takes ${job.people} people`;
  if (job.bestSkill < job.skill) return `M4: ${job.id} takes skill ${job.skill}`;
  for (const { of, units } of job.uses) {
    const aboard = sum(carried.flatMap((p) => p.stock.filter((s) => s.of === of).map((s) => s.units)));
    if (aboard < units) return `M4: ${job.id} uses ${units} of ${of} and ${aboard} are aboard`;
  }
  for (const need of job.needs) {
    if (need.kind === 'turn') {
      const joint = scene.joints.find((j) => j.id === need.joint);
      if (joint === undefined) return `${need.joint} is no joint`;
      const why = whyNotTurned(joint, carried);
      if (why !== null) return why;
      continue;
    }
    const { fn, of, amount = 0, count = 1 } = need;
    const direct = carried.filter((p) =>
      p.offers.some((o) => o.kind === 'does' && o.fn === fn && (of === undefined || o.of === of)),
    );
    if (fn === 'support') {
      const stands = direct.filter((p) => !p.offers.some((o) => o.kind === 'does' && o.fn === 'lift'));
      const atOnce = sum(
        stands.map((p) => most(p, (o) => (o.fn === fn && (o.amount ?? 0) >= amount ? o.pieces : 0))),
      );
      if (atOnce < count)
        return `M4: ${job.id} needs ${count} supports that are no jacks, ${atOnce} are aboard`;
    }
    if (count > 1) {
      const atOnce = sum(direct.map((p) => most(p, (o) => (o.fn === fn ? o.pieces : 0))));
      if (atOnce < count) return `M2: ${job.id} needs ${count} x ${fn} at once, ${atOnce} are aboard`;
    }
    if (
      fn === 'eyes' &&
      direct.every((p) => p.offers.every((o) => o.kind !== 'does' || o.grade === 'last-resort'))
    )
      return `M4: ${job.id} guards eyes with a last resort`;
    const row = scene.together.some((t) => t.wanted.fn === fn);
    if (direct.length === 0 && !row) return `M2: nothing aboard does ${fn}`;
  }
  return null;
}

/** M4: a limp counts only where it is trusted as far as help is. */
export function reaches(job: SceneJob, trouble: Trouble): boolean {
  return job.trusted > 0 && job.trusted >= trouble.help;
}

function whyNotTurned(joint: Joint, carried: readonly ScenePiece[]): string | null {
  const turns = carried.filter((p) => p.offers.some((o) => couldTurn(o, joint)));
  if (turns.length === 0) return `M2: nothing aboard may turn ${joint.id}`;
  if (joint.hold === undefined) return null;
  const { size, drive } = joint.hold;
  const head: Joint = { ...joint, size, drive, access: 'open' };
  const holds = carried.filter((p) => p.offers.some((o) => couldGrip(o, head)));
  const two = turns.some((t) => holds.some((h) => h.id !== t.id));
  return two ? null : `M3: ${joint.id} takes two pieces at the same moment`;
}

/** Whether a tool of this form may be on this head at all, whatever turns it. */
function couldTurn(offer: ToolOffer, joint: Joint): boolean {
  if (!couldGrip(offer, joint)) return false;
  const { access } = joint;
  // Wrenches only, where there is no room above; sockets only, where the head is sunk.
  if (offer.kind === 'socket' || offer.kind === 'brace') return access !== 'side';
  if (offer.kind === 'wrench' || offer.kind === 'adjustable' || offer.kind === 'pliers')
    return access !== 'recess' && access !== 'remote' && access !== 'retain';
  return true;
}

function couldGrip(offer: ToolOffer, joint: Joint): boolean {
  const critical = joint.critical === 'wheel' || joint.critical === 'brake' || joint.critical === 'steering';
  const wide = (size: Joint['size']) => mayFit(size, joint.size);
  if (joint.drive === 'hex') {
    if (offer.kind === 'socket') return wide(offer.size);
    if (offer.kind === 'brace') return offer.sizes.some(wide);
    if (offer.kind === 'wrench') return offer.ends.some((e) => wide(e.size));
    // Nothing with a screw or a pivot where a rounded nut can kill.
    return (offer.kind === 'adjustable' || offer.kind === 'pliers') && !critical;
  }
  if (joint.drive === 'flare') {
    // Only a flare form on a brake pipe.
    if (offer.kind === 'crow-foot') return wide(offer.size) && (offer.form === 'flare' || !critical);
    return (
      offer.kind === 'wrench' && offer.ends.some((e) => wide(e.size) && (e.form === 'flare' || !critical))
    );
  }
  if (joint.drive === 'hex-key') {
    if (offer.kind !== 'key' && offer.kind !== 'bit-socket' && offer.kind !== 'driver') return false;
    return offer.head === 'hex-key' && offer.sizes.some((s) => same(s, joint.size));
  }
  // Lobes, screws, ring nuts and plugs: nothing so simple to say.
  return true;
}

/** M2: never more than 2 % too wide, never narrower than 0.3 %. */
function mayFit(tool: Joint['size'], head: Joint['size']): boolean {
  if (tool.kind !== 'across-flats' || head.kind !== 'across-flats') return false;
  const over = tool.width / head.width - 1;
  return over <= 0.02 + 1e-9 && over >= -0.003 - 1e-9;
}

function same(a: Joint['size'], b: Joint['size']): boolean {
  return a.kind === 'across-flats' && b.kind === 'across-flats' && Math.abs(a.width - b.width) < 1e-7;
}

type Does = Extract<ToolOffer, { kind: 'does' }>;

function most(piece: ScenePiece, of: (offer: Does) => number): number {
  return Math.max(0, ...piece.offers.map((o) => (o.kind === 'does' ? of(o) : 0)));
}

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
