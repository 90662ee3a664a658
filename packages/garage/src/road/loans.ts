import { daysBetween } from '@waymend/core/caring/calendar';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Belonging, Garage } from '../record/schema.ts';
import { addEntry, entryOf } from './add-entry.ts';
import { calledBy, piecesOut } from './count-pieces.ts';

export interface Lending {
  readonly id: string;
  readonly belonging: string;
  readonly copies: number;
  readonly to: string;
  readonly on: string;
  readonly dueOn?: string;
  readonly note?: string;
}

/**
 * Lends copies of a belonging; it counts for nothing until it is back. Copies that stay keep their record, and those that
 * go become a belonging of their own under the id `newId` gives.
 */
export function lend(garage: Garage, lending: Lending, newId: (wish: string) => string): Result<Garage> {
  const { id, belonging, copies, ...rest } = lending;
  const thing = entryOf(garage, 'belongings', belonging);
  if (!thing.ok) return thing;
  const name = calledBy(garage, belonging);
  const { state } = thing.value;
  if (state === 'lent') return refuse('loan-out', `${name} is lent already; take it back first`);
  if (lending.dueOn !== undefined && lending.dueOn < lending.on)
    return refuse('date-before', `${name} cannot be due back on ${lending.dueOn}, before it is lent`);
  const there = thing.value.copies - piecesOut(garage, belonging);
  if (!Number.isInteger(copies) || copies < 1 || copies > there)
    return refuse('loan-too-many', `${there} of ${name} can be lent, not ${copies}; say how many go`);
  const stays = thing.value.copies - copies;
  const gone: Belonging = { ...thing.value, copies, state: 'lent' };
  if (stays === 0) {
    const next = { ...garage, belongings: { ...garage.belongings, [belonging]: gone } };
    return addEntry(next, 'loans', id, { ...rest, belonging, copies });
  }
  const apart = newId(belonging);
  const kept = {
    ...garage,
    belongings: { ...garage.belongings, [belonging]: { ...thing.value, copies: stays } },
  };
  const split = addEntry(kept, 'belongings', apart, gone);
  return split.ok ? addEntry(split.value, 'loans', id, { ...rest, belonging: apart, copies }) : split;
}

/** Takes a loan back, in the state it came back in. */
export function takeBack(
  garage: Garage,
  id: string,
  on: string,
  state: Belonging['state'] = 'ready',
): Result<Garage> {
  const loan = entryOf(garage, 'loans', id);
  if (!loan.ok) return loan;
  const { belonging, backOn, on: since } = loan.value;
  if (backOn !== undefined) return refuse('loan-back', `This loan came back on ${backOn} already`);
  if (on < since)
    return refuse('date-before', `It was lent on ${since} and cannot come back before, on ${on}`);
  const thing = entryOf(garage, 'belongings', belonging);
  if (!thing.ok) return thing;
  return ok({
    ...garage,
    loans: { ...garage.loans, [id]: { ...loan.value, backOn: on } },
    belongings: { ...garage.belongings, [belonging]: { ...thing.value, state } },
  });
}

/** A line of the loan ledger. */
export interface LoanLine {
  readonly id: string;
  readonly belonging: string;
  readonly name: string;
  readonly copies: number;
  readonly to: string;
  readonly on: string;
  readonly dueOn: string | null;
  readonly backOn: string | null;
  /** Days past its due day; 0 when it is back, not yet due, or was lent without one. */
  readonly daysLate: number;
}

/** Every loan, those still out first, the longest out before the others. */
export function loanLedger(garage: Garage, today: string): readonly LoanLine[] {
  return Object.entries(garage.loans)
    .map(([id, loan]): LoanLine => {
      const { belonging, copies, to, on, dueOn, backOn } = loan;
      const late = backOn === undefined && dueOn !== undefined ? Math.max(0, daysBetween(dueOn, today)) : 0;
      const name = calledBy(garage, belonging);
      return {
        id,
        belonging,
        name,
        copies,
        to,
        on,
        dueOn: dueOn ?? null,
        backOn: backOn ?? null,
        daysLate: late,
      };
    })
    .sort(
      (a, b) =>
        Number(a.backOn !== null) - Number(b.backOn !== null) ||
        (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id < b.id ? -1 : 1),
    );
}
