import { firstFull } from '@waymend/planner/views/first-full';
import type { FirstFull } from '@waymend/planner/views/first-full';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { chooseAim } from '../../../shell/aim.ts';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { withLimit } from '../edits.ts';
import type { Step } from './steps.ts';
import { nearestStep, stepsOf } from './steps.ts';

export interface Curve {
  readonly steps: readonly Step[];
  /** Step of the planned kit. */
  readonly kit: number;
  /** Step the handle stands at: under the hand, or chosen and being planned, or the kit's. */
  readonly at: number;
  readonly moved: boolean;
  readonly full: FirstFull | null;
  readonly everything: number;
  /** Puts the handle at a step without changing anything; below 0: back to the kit. */
  readonly move: (index: number) => void;
  /** Makes the step the handle stands at the trip's limit on mass. */
  readonly release: () => void;
  readonly choose: (index: number) => void;
}

/** The staircase of the plan that is shown, and the hand on it. */
export function useCurve(answer: PlanAnswer): Curve {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const { tripId } = useTrip();
  const { curve, fresh } = usePlan();
  // Grams rather than a number of a step: the steps change while the curve is drawn.
  const [held, setHeld] = useState<number | null>(null);
  const [chosenFor, setChosenFor] = useState<PlanAnswer | null>(null);
  const steps = useMemo(() => stepsOf(curve, pointOf(answer)), [curve, answer]);
  const kit = steps.findIndex((step) => step.kit);
  const full = useMemo(
    () => (tripId === null ? null : firstFull(answer.load, answer.kit.massGrams, garage, tripId)),
    [answer, garage, tripId],
  );
  // What was let go stays where it is until its plan has come.
  const waiting = chosenFor === null || chosenFor === answer || !fresh;
  const at = held !== null && waiting ? nearestStep(steps, held) : kit;
  const choose = (index: number): void => {
    const step = steps[index];
    if (step === undefined || tripId === null || index === kit) {
      setHeld(null);
      setChosenFor(null);
      return;
    }
    setHeld(step.grams);
    setChosenFor(answer);
    chooseAim({ kind: 'best-chance' });
    void edit(t('kit.limitSet', { mass: format.mass(step.grams) }), (before) =>
      withLimit(before, tripId, { grams: step.grams }),
    );
  };
  return {
    steps,
    kit,
    at,
    moved: at !== kit,
    full,
    everything: answer.comparisons.find(({ kind }) => kind === 'everything')?.massGrams ?? 0,
    move: (index) => {
      setHeld(index < 0 ? null : (steps[index]?.grams ?? null));
      setChosenFor(null);
    },
    release: () => {
      if (held !== null) choose(nearestStep(steps, held));
    },
    choose,
  };
}

function pointOf(answer: PlanAnswer): Omit<Step, 'kit'> {
  const { kit, unaided, status, gap } = answer;
  return {
    grams: kit.massGrams,
    pieces: kit.items.reduce((sum, item) => sum + item.copies, 0),
    belongings: kit.items.map(({ id }) => id),
    unaided: unaided.kit,
    proven: status === 'proven',
    gap,
  };
}
