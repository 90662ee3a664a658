import type { Refusal } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { WhyAnswer } from '@waymend/planner/answer/why-answer';
import type { Question } from '@waymend/planner/plan/plan-trip';
import type { PlannerClient, Ticket } from '../worker/client.ts';
import type { Clash, CurvePoint, ProofProgress, Reply } from '../worker/protocol.ts';

/** What the screens show of the plan for the trip that is open. */
export interface PlanState {
  /** The newest answer; it stays while the next one is being worked out, `fresh` says whether it is of the record as it stands. */
  readonly answer: PlanAnswer | null;
  readonly fresh: boolean;
  /** The proof is running: `answer` is the first kit with its gap. */
  readonly proving: boolean;
  readonly progress: ProofProgress | null;
  /** Seconds from the question to the newest answer. */
  readonly seconds: number | null;
  /** Why there is no kit: which limits clash, in sentences. */
  readonly noPlan: readonly string[] | null;
  /** The limits that could give way, and by how much. */
  readonly clashes: readonly Clash[];
  /** Why the garage cannot be planned for yet: what is missing or refused. */
  readonly refusals: readonly Refusal[];
  readonly broken: string | null;
  readonly curve: readonly CurvePoint[];
  readonly curveDone: boolean;
}

const NOTHING: PlanState = {
  answer: null,
  fresh: false,
  proving: false,
  progress: null,
  seconds: null,
  noPlan: null,
  clashes: [],
  refusals: [],
  broken: null,
  curve: [],
  curveDone: false,
};

/** Points on the curve, ends included. */
export const CURVE_POINTS = 30;

export interface Asked {
  readonly garage: Garage;
  readonly trip: string;
  readonly question: Question;
}

/**
 * Keeps the plan in step with the record: each change asks anew and stops the search before it; the curve follows once
 * the answer stands. A store for React's useSyncExternalStore.
 */
export class PlanDesk {
  private state = NOTHING;
  private asked: Asked | null = null;
  private readonly client: PlannerClient;
  private readonly listeners = new Set<() => void>();
  private planTicket: Ticket | null = null;
  private curveTicket: Ticket | null = null;

  constructor(client: PlannerClient) {
    this.client = client;
  }

  readonly getState = (): PlanState => this.state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** What to plan from now on; null when there is no trip yet. */
  ask(next: Asked | null): void {
    const sameTrip = next !== null && this.asked !== null && next.trip === this.asked.trip;
    if (this.planTicket !== null) this.client.stop(this.planTicket);
    if (this.curveTicket !== null) this.client.stop(this.curveTicket);
    this.planTicket = null;
    this.curveTicket = null;
    this.asked = next;
    if (next === null) {
      this.set(NOTHING);
      return;
    }
    this.set({
      ...(sameTrip ? this.state : NOTHING),
      fresh: false,
      proving: true,
      progress: null,
      broken: null,
    });
    const wanted = (): boolean => this.asked === next;
    this.planTicket = this.client.ask(
      { kind: 'plan', ...next },
      (reply) => wanted() && this.onPlan(reply, next),
    );
  }

  /** Stops the proof; the best kit so far stays, with its gap. */
  stopProof(): void {
    if (this.planTicket !== null) this.client.stop(this.planTicket);
  }

  /** The whole story of one belonging, job or failure in the plan that is shown. */
  async why(what: string): Promise<WhyAnswer | { readonly kind: 'unknown'; readonly sentence: string }> {
    if (this.asked === null) return { kind: 'unknown', sentence: '' };
    const reply = await this.client.once({ kind: 'why', what, ...this.asked });
    if (reply.kind === 'why') return reply.why;
    return { kind: 'unknown', sentence: reply.kind === 'refused' ? (reply.refusals[0]?.message ?? '') : '' };
  }

  private onPlan(reply: Reply, asked: Asked): void {
    switch (reply.kind) {
      case 'proof':
        this.set({ ...this.state, progress: reply.progress });
        return;
      case 'plan':
        this.set({
          ...this.state,
          answer: reply.answer,
          fresh: true,
          proving: !reply.final,
          seconds: reply.seconds,
          noPlan: null,
          refusals: [],
        });
        if (reply.final) this.askCurve(asked);
        return;
      case 'no-plan':
        this.set({
          ...this.state,
          proving: false,
          fresh: true,
          answer: null,
          noPlan: reply.sentences,
          clashes: reply.clashes,
          refusals: [],
        });
        return;
      case 'refused':
        this.set({
          ...this.state,
          proving: false,
          fresh: true,
          answer: null,
          noPlan: null,
          refusals: reply.refusals,
        });
        return;
      case 'broken':
        this.set({ ...this.state, proving: false, broken: reply.cause });
        return;
      default:
        this.set({ ...this.state, proving: false });
    }
  }

  /** Whatever is aimed at, the curve shows the best chance of each mass: the handle says what more or less would bring. */
  private askCurve({ garage, trip, question }: Asked): void {
    const asked = this.asked;
    const { limitGrams: _, ...kept } = question;
    let points: readonly CurvePoint[] = [];
    const request = {
      kind: 'curve',
      garage,
      trip,
      question: { ...kept, aim: { kind: 'best-chance' } },
      points: CURVE_POINTS,
    } as const;
    this.curveTicket = this.client.ask(request, (reply) => {
      if (this.asked !== asked) return;
      if (reply.kind === 'curve-point') {
        points = [...points, reply.point].sort((a, b) => a.grams - b.grams);
        // The curve of the record as it was stays until the new one has as much to say.
        if (points.length >= this.state.curve.length)
          this.set({ ...this.state, curve: points, curveDone: false });
      } else if (reply.kind === 'curve')
        this.set({ ...this.state, curve: reply.points, curveDone: !reply.stopped });
    });
  }

  private set(state: PlanState): void {
    this.state = state;
    for (const listener of this.listeners) listener();
  }
}
