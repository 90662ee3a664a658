import { AT_STAKE } from '@waymend/catalogue/care/at-stake';
import type { CareDue } from '@waymend/core/caring/due';
import type { ReadyTask } from '@waymend/core/caring/readiness';
import { gainOfAdding } from '@waymend/core/explaining/worth';
import type { PlanAnswer } from '../answer/plan-answer.ts';
import type { RepairAnswer } from '../answer/ready-answer.ts';
import { chanceOfLoss } from '../explain/reading.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import { WHOLE_KIT } from './care-dues.ts';

const NOW: ReadonlySet<CareDue['when']> = new Set(['overdue', 'before-leaving', 'on-trip']);

/** What care asks for before leaving, one task a belonging; at stake is the part of its worth that neglect loses (M10). */
export function careTasks(dues: readonly CareDue[], plan: Pick<PlanAnswer, 'kit'>): readonly ReadyTask[] {
  const worth = new Map(plan.kit.items.map((item) => [item.id, item.worth]));
  const byThing = new Map<string, CareDue[]>();
  for (const due of dues) {
    if (!NOW.has(due.when)) continue;
    byThing.set(due.thing, [...(byThing.get(due.thing) ?? []), due]);
  }
  return [...byThing].flatMap(([thing, all]) => {
    const ordered = [...all].sort((a, b) => stakeOf(b) - stakeOf(a));
    const [first] = ordered;
    if (first === undefined) return [];
    // The same rule asks twice of some things (its date and its look): its minutes count once.
    const minutes = new Map(all.map((d) => [d.rule, d.minutes]));
    return [
      {
        id: `care-${thing === WHOLE_KIT ? 'kit' : thing}`,
        kind: 'care' as const,
        about: thing === WHOLE_KIT ? null : thing,
        title: first.name,
        words: [...new Set(ordered.map((d) => d.words))].join('; '),
        chanceLost: stakeOf(first) * (worth.get(thing) ?? 0),
        blocks: false,
        minutes: [...minutes.values()].reduce((sum, m) => sum + m, 0),
        takes: [...new Set(all.flatMap((d) => d.takes))],
      },
    ];
  });
}

function stakeOf({ kind, charge }: CareDue): number {
  // What is known of a charge is what is missing of it.
  return kind === 'charge' && charge !== undefined ? 1 - charge.low / 100 : AT_STAKE[kind];
}

/** Minutes to put an unready thing right at home (estimate); null where somebody else has it or a new one is needed. */
const PUT_RIGHT: Readonly<Record<string, number | null>> = {
  flat: 10,
  expired: null,
  damaged: null,
  lent: null,
};

/** Belongings that count for nothing until they are put right, where this kit would be better with them. */
export function unreadyTasks(
  { built, reading }: Prepared,
  { state }: Solved,
  plan: PlanAnswer,
): readonly ReadyTask[] {
  return reading.pieces.flatMap((piece, p): readonly ReadyTask[] => {
    if (!piece.id.startsWith('ready:')) return [];
    const thing = built.garage.belongings[piece.belonging];
    if (thing === undefined || thing.forSale) return [];
    const alone = chanceOfLoss(state.loss - gainOfAdding(state, [p])) - chanceOfLoss(state.loss);
    const inCompany = plan.gaps.reduce((sum, gap) => {
      const helps = gap.cures.some((c) => c.kind === 'make-ready' && c.items.includes(piece.id));
      return helps ? sum + gap.worth : sum;
    }, 0);
    const chanceLost = Math.max(alone, inCompany);
    if (!(chanceLost > 0)) return [];
    const lent = thing.state === 'lent';
    const loan = Object.values(built.garage.loans).find(
      (l) => l.belonging === piece.belonging && l.backOn === undefined,
    );
    const words = lent
      ? `lent${loan === undefined ? '' : ` to ${loan.to} since ${loan.on}`}: fetch it back`
      : `${thing.state}: it counts for nothing until it is put right`;
    return [
      {
        id: `${lent ? 'loan' : 'unready'}-${piece.belonging}`,
        kind: lent ? 'loan' : 'unready',
        about: piece.belonging,
        title: piece.name,
        words,
        chanceLost,
        blocks: false,
        minutes: PUT_RIGHT[thing.state] ?? null,
        takes: [],
      },
    ];
  });
}

/** Pieces of the kit that nobody has proven, or that came back from their last muster without a part. */
export function unprovenTasks({ built }: Prepared, plan: PlanAnswer): readonly ReadyTask[] {
  const { garage } = built;
  return plan.kit.items.flatMap((item): readonly ReadyTask[] => {
    if (garage.belongings[item.id]?.state !== 'unproven') return [];
    const missing = Object.values(garage.counts).flatMap((c) =>
      c.belonging === item.id ? c.missingParts : [],
    );
    return [
      {
        id: `incomplete-${item.id}`,
        kind: 'incomplete',
        about: item.id,
        title: item.name,
        words:
          missing.length > 0
            ? `a part is missing: ${[...new Set(missing)].join(', ')}`
            : 'nobody has tried it on this vehicle yet: try it at home',
        chanceLost: AT_STAKE.check * item.worth,
        blocks: false,
        minutes: 10,
        takes: [],
      },
    ];
  });
}

/** What the floor asks for and nothing gives (M7). */
export function floorTasks({ reading }: Prepared): readonly ReadyTask[] {
  return reading.unmetFloor.map(({ fn }) => ({
    id: `floor-${fn}`,
    kind: 'floor',
    about: null,
    title: fn,
    words: 'every trip needs it, and nothing owned or affordable gives it',
    chanceLost: 0,
    blocks: true,
    minutes: null,
    takes: [],
  }));
}

/** Musters of the vehicle that are still open: the bonnet stays up. */
export function musterTasks({ built }: Prepared): readonly ReadyTask[] {
  const { garage, trip } = built;
  return Object.entries(garage.musters).flatMap(([id, muster]): readonly ReadyTask[] => {
    if (muster.vehicle !== trip.vehicle || muster.closedOn !== undefined) return [];
    const out = Object.values(garage.counts).filter((c) => c.muster === id).length;
    return [
      {
        id: `muster-${id}`,
        kind: 'muster',
        about: id,
        title: `Muster of ${muster.openedOn}`,
        words: `it is still open, with ${out} ${out === 1 ? 'belonging' : 'belongings'} out: count in and close it`,
        chanceLost: 0,
        blocks: true,
        minutes: 5 + out,
        takes: [],
      },
    ];
  });
}

/** Repairs that are not to be trusted for this trip, or have to be looked at before it. */
export function repairTasks(repairs: readonly RepairAnswer[], tripKm: number): readonly ReadyTask[] {
  return repairs.flatMap((repair): readonly ReadyTask[] => {
    const { id, title, lasts, lookInKm, trustLeftKm, worse, speedKmh } = repair;
    const task = { about: id, title, chanceLost: 0, minutes: null, takes: [] };
    const slow = speedKmh === null ? '' : `, at ${speedKmh} km/h at most`;
    if (lasts !== 'permanent') {
      const short = trustLeftKm !== null && trustLeftKm < tripKm;
      const words = worse
        ? 'the last look found it worse: mend it for good before leaving'
        : lasts === 'made-safe'
          ? 'it was only made safe: mend it before the vehicle is driven'
          : short
            ? `it may be trusted for ${Math.max(0, Math.round(trustLeftKm))} km more${slow}, and the trip is longer: mend it for good`
            : `it is a temporary repair${slow}: mend it for good when you can`;
      return [
        {
          ...task,
          id: `repair-${id}`,
          kind: 'repair',
          words,
          blocks: worse || short || lasts === 'made-safe',
        },
      ];
    }
    if (lookInKm === null || lookInKm > tripKm) return [];
    const words =
      lookInKm <= 0
        ? 'a look is overdue: look before leaving'
        : `look again in ${Math.round(lookInKm)} km, on this trip`;
    return [{ ...task, id: `look-${id}`, kind: 'look', words, blocks: false, minutes: 10 }];
  });
}

/** Groups that were worked on lately: their failures come twice as often until they have been driven in (M1). */
export function recentWorkTasks(
  { built, reading }: Prepared,
  { state }: Solved,
  factor: number,
): readonly ReadyTask[] {
  const titles = new Map(built.rates.groups.map((g) => [g.group, g.title]));
  return built.vehicle.recentWork.map((group) => {
    let open = 0;
    reading.troubles.forEach((merged, event) => {
      const whole = merged.reduce((sum, t) => sum + t.expected, 0);
      const mine = merged.reduce((sum, t) => (t.group === group ? sum + t.expected : sum), 0);
      const left = (reading.compiled.problem.events[event]?.loss ?? 0) - state.gainOf(event);
      if (whole > 0) open += left * (mine / whole);
    });
    return {
      id: `recent-work-${group}`,
      kind: 'recent-work',
      about: group,
      title: titles.get(group) ?? group,
      words:
        'worked on in the last 1,000 km: drive 200 km near home, then look at every joint that was touched',
      chanceLost: chanceOfLoss(state.loss - open * (1 - 1 / factor)) - chanceOfLoss(state.loss),
      blocks: false,
      minutes: 200,
      takes: [],
    };
  });
}
