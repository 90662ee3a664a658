import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { SureAnswer } from '@waymend/planner/answer/sure-answer';
import { useEffect, useRef, useState } from 'react';
import { useQuestion } from '../../../shell/aim.ts';
import { usePlan, useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { Ticket } from '../../../worker/client.ts';

const DRAWS = 30;
const SIZES = 12;

export type SureState =
  | { readonly kind: 'not-asked' }
  | { readonly kind: 'looking'; readonly done: number; readonly of: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'sure'; readonly answer: SureAnswer };

/** Answers of this visit, so that leaving the sheet and coming back does not ask again. */
const known = new WeakMap<PlanAnswer, SureAnswer>();

/** How sure the plan that is shown is; asked for by hand, because it takes a while. */
export function useSure(answer: PlanAnswer): {
  readonly state: SureState;
  readonly look: () => void;
  readonly stop: () => void;
} {
  const { client } = useStores();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const question = useQuestion();
  const { fresh, proving } = usePlan();
  const [of, setOf] = useState<{ readonly plan: PlanAnswer; readonly state: SureState } | null>(null);
  const ticket = useRef<Ticket | null>(null);
  const stop = (): void => {
    if (ticket.current !== null) client.stop(ticket.current);
  };
  // A new plan makes the answer to the old one useless.
  useEffect(
    () => () => {
      if (ticket.current !== null) client.stop(ticket.current);
      ticket.current = null;
    },
    [client, answer],
  );
  const before = known.get(answer);
  const state: SureState =
    before !== undefined
      ? { kind: 'sure', answer: before }
      : of?.plan === answer
        ? of.state
        : { kind: 'not-asked' };
  const look = (): void => {
    if (tripId === null || !fresh || proving) return;
    setOf({ plan: answer, state: { kind: 'looking', done: 0, of: 0 } });
    ticket.current = client.ask(
      { kind: 'kit/sure', garage, trip: tripId, question, draws: DRAWS, sizes: SIZES },
      (reply) => {
        switch (reply.kind) {
          case 'kit/sure-step':
            setOf({ plan: answer, state: { kind: 'looking', done: reply.done, of: reply.of } });
            return;
          case 'kit/sure':
            known.set(answer, reply.answer);
            setOf({ plan: answer, state: { kind: 'sure', answer: reply.answer } });
            return;
          case 'refused':
            setOf({ plan: answer, state: { kind: 'refused', sentence: reply.refusals[0]?.message ?? '' } });
            return;
          default:
            setOf({ plan: answer, state: { kind: 'stopped' } });
        }
      },
    );
  };
  return { state, look, stop };
}
