import type { KitState } from '@waymend/core/choosing/kit-state';
import type { PieceIndex } from '@waymend/core/choosing/problem';
import { cheapestCompletion } from '@waymend/core/explaining/completion';
import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { BuyAnswer, ComparisonAnswer } from '../answer/plan-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import { moneyText } from '../words/money.ts';
import { atRealMass } from './at-real-mass.ts';
import { costsOf } from './cures.ts';
import { brokenLimits, loadAnswer } from './load-answer.ts';
import type { Reading } from './reading.ts';
import type { Case } from './cases.ts';
import { casesOwned, gramsOf } from './cases.ts';

interface Row {
  readonly kind: ComparisonAnswer['kind'];
  readonly title: string;
  readonly pieces: readonly PieceIndex[];
  readonly cases: readonly Case[];
}

/**
 * The choices people make without a plan, weighed on the same scale: nothing, the biggest box they own (with what the
 * floor and their own "always" ask for), everything, and this kit. Each chance is at the mass that choice really carries.
 */
export function comparisons(
  reading: Reading,
  kit: KitState,
  scratch: KitState,
  built: BuiltScene,
  trade: Trade,
  cases: readonly Case[],
  buy: readonly BuyAnswer[],
): Result<readonly ComparisonAnswer[]> {
  const owned = reading.pieces.flatMap((piece, p) => (piece.owned ? [p] : []));
  const rows: Row[] = [{ kind: 'nothing', title: 'nothing', pieces: [], cases: [] }];
  const box = biggestBox(reading, built, scratch);
  if (box !== null) rows.push({ kind: 'boxed-set', ...box });
  rows.push({
    kind: 'everything',
    title: 'everything you own',
    pieces: owned,
    cases: casesOwned(built.garage),
  });
  rows.push({
    kind: 'kit',
    title: kitTitle(buy, built.garage.currency),
    pieces: [...kit.carried.keys()].filter((p) => kit.carried[p] === 1),
    cases,
  });

  const out: ComparisonAnswer[] = [];
  for (const { kind, title, pieces, cases: boxes } of rows) {
    const carried = new Uint8Array(reading.pieces.length);
    for (const p of pieces) carried[p] = 1;
    scratch.become(carried);
    const things = pieces.flatMap((p): ScenePiece[] => {
      const piece = reading.pieces[p];
      return piece === undefined ? [] : [piece];
    });
    const load = loadAnswer(built, trade, [...things, ...boxes]);
    if (!load.ok) return load;
    const unaided = atRealMass(reading, scratch, built, trade, gramsOf(boxes));
    if (!unaided.ok) return unaided;
    out.push({
      kind,
      title,
      massGrams: gramsOf(things) + gramsOf(boxes),
      pieces: pieces.length,
      unaided: unaided.value,
      breaks: kind === 'nothing' ? [] : brokenLimits(load.value),
    });
  }
  return ok(out);
}

function kitTitle(buy: readonly BuyAnswer[], currency: string): string {
  if (buy.length === 0) return 'this kit';
  const spent = buy.reduce((sum, b) => sum + b.cents, 0);
  return `this kit, ${moneyText(spent, currency)} of it bought`;
}

/**
 * The set with most pieces, with everything pinned "always" (the wheel and the jack come whatever box is taken) and the
 * lightest things at home that still meet the floor: nobody is compared with a vehicle without chocks or light.
 */
function biggestBox(reading: Reading, built: BuiltScene, scratch: KitState): Omit<Row, 'kind'> | null {
  const boxes = new Map<string, PieceIndex[]>();
  reading.pieces.forEach((piece, p) => {
    const set = built.garage.belongings[piece.belonging]?.inside;
    if (piece.owned && set !== undefined) boxes.set(set, [...(boxes.get(set) ?? []), p]);
  });
  const [biggest] = [...boxes].sort((a, b) => b[1].length - a[1].length);
  if (biggest === undefined) return null;
  const always = reading.pieces.flatMap((piece, p) => (piece.owned && piece.pin === 'always' ? [p] : []));
  const taken = [...new Set([...biggest[1], ...always])];
  const carried = new Uint8Array(reading.pieces.length);
  for (const p of taken) carried[p] = 1;
  scratch.become(carried);
  const floor =
    cheapestCompletion(scratch, reading.compiled.problem.must, costsOf(reading).carry)?.pieces ?? [];
  const name = built.garage.belongings[biggest[0]]?.name ?? 'the boxed set';
  return {
    title: `${name} and what must come along`,
    pieces: [...taken, ...floor],
    cases: casesOwned(built.garage, biggest[0]),
  };
}
