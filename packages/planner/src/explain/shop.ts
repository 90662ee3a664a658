import type { KitState } from '@waymend/core/choosing/kit-state';
import type { Choice, PieceIndex } from '@waymend/core/choosing/problem';
import { gainOfAdding, worthOf } from '@waymend/core/explaining/worth';
import type { BuyAnswer, ShopAnswer } from '../answer/plan-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { Company } from './home.ts';
import { helps } from './home.ts';
import type { Reading } from './reading.ts';
import { chanceLost, chanceOfLoss, jobsOf } from './reading.ts';

/** Something sold as one: a belonging with its copies, or a set. */
interface Offered {
  readonly id: string;
  readonly name: string;
  readonly pieces: readonly PieceIndex[];
  readonly cents: number;
}

/** What the plan buys, most worth first: one line for each belonging and each set, at what it costs. */
export function buyAnswer(
  reading: Reading,
  state: KitState,
  choice: Choice,
  built: BuiltScene,
  trade: Trade,
): readonly BuyAnswer[] {
  const singly = new Set(choice.bought);
  const lines: Offered[] = [];
  for (const [id, pieces] of grouped(choice.bought, (p) => reading.pieces[p]?.belonging)) {
    const [first] = pieces;
    const name = first === undefined ? id : (reading.pieces[first]?.name ?? id);
    lines.push({ id, name, pieces, cents: priceOf(reading, pieces) });
  }
  for (const b of choice.bundles) {
    const bundle = built.scene.bundles[b];
    if (bundle === undefined || bundle.owned) continue;
    const pieces = reading.pieces.flatMap((piece, p) =>
      piece.bundles.includes(bundle.id) && state.carried[p] === 1 && !singly.has(p) ? [p] : [],
    );
    lines.push({ id: bundle.id, name: setName(bundle.id, built, trade), pieces, cents: bundle.cents });
  }
  return lines
    .map(({ id, name, pieces, cents }) => {
      const { loss, optionsLost } = worthOf(state, pieces);
      return {
        id,
        name,
        grams: gramsOf(reading, pieces),
        cents,
        worth: chanceLost(state.loss, loss),
        jobs: jobsOf(reading, optionsLost),
      };
    })
    .sort((a, b) => b.worth - a.worth || a.cents - b.cents || (a.id < b.id ? -1 : 1));
}

/** What was spent, of how much, and what the garage lists for sale and the plan leaves in the shop, each with its reason. */
export function shopAnswer(
  reading: Reading,
  state: KitState,
  company: Company,
  buy: readonly BuyAnswer[],
  built: BuiltScene,
): ShopAnswer {
  const { garage, trip, scene } = built;
  const bought = new Set(buy.map((b) => b.id));
  const listed = reading.pieces.flatMap((piece, p) =>
    piece.owned || piece.id.startsWith('ready:') || garage.belongings[piece.belonging] === undefined
      ? []
      : [p],
  );
  const sets = new Map(scene.bundles.map((bundle) => [bundle.id, bundle]));
  const left: ShopAnswer['left'][number][] = [];
  for (const [id, pieces] of grouped(
    listed,
    (p) => setOf(reading, p, sets) ?? reading.pieces[p]?.belonging,
  )) {
    if (bought.has(id)) continue;
    const gain = gainOfAdding(state, pieces);
    const [first] = pieces;
    const name =
      garage.belongings[id]?.name ?? (first === undefined ? id : (reading.pieces[first]?.name ?? id));
    left.push({
      id,
      name,
      grams: gramsOf(reading, pieces),
      cents: sets.get(id)?.cents ?? priceOf(reading, pieces),
      needs: gain > 0 || first === undefined ? [] : names(reading, company.get(first) ?? []),
      couldAdd: chanceOfLoss(state.loss - gain) - chanceOfLoss(state.loss),
      why:
        gain > 0
          ? 'over-a-limit'
          : pieces.some((p) => helps(reading, p))
            ? 'adds-nothing-here'
            : 'no-job-needs-it',
    });
  }
  return {
    from: trip.buyFrom,
    budgetCents: scene.limits.cents,
    spentCents: buy.reduce((sum, b) => sum + b.cents, 0),
    left: left.sort((a, b) => b.couldAdd - a.couldAdd || (a.id < b.id ? -1 : 1)),
  };
}

/** The set that a piece is sold in, when it is not sold singly. */
function setOf(
  reading: Reading,
  p: PieceIndex,
  sets: ReadonlyMap<string, { readonly owned: boolean }>,
): string | undefined {
  const piece = reading.pieces[p];
  return piece?.cents === null ? piece.bundles.find((id) => sets.get(id)?.owned === false) : undefined;
}

function setName(id: string, { garage }: BuiltScene, trade: Trade): string {
  const own = garage.belongings[id]?.name;
  return own ?? trade.sets.find((set) => `set:${set.id}` === id)?.title ?? id;
}

function names(reading: Reading, pieces: readonly PieceIndex[]): readonly string[] {
  return [...new Set(pieces.flatMap((p) => reading.pieces[p]?.name ?? []))];
}

function gramsOf(reading: Reading, pieces: readonly PieceIndex[]): number {
  return pieces.reduce((sum, p) => sum + (reading.pieces[p]?.grams ?? 0), 0);
}

function priceOf(reading: Reading, pieces: readonly PieceIndex[]): number {
  return pieces.reduce((sum, p) => sum + (reading.pieces[p]?.cents ?? 0), 0);
}

function grouped(
  pieces: readonly PieceIndex[],
  by: (p: PieceIndex) => string | undefined,
): ReadonlyMap<string, readonly PieceIndex[]> {
  const out = new Map<string, PieceIndex[]>();
  for (const p of pieces) {
    const id = by(p);
    if (id !== undefined) out.set(id, [...(out.get(id) ?? []), p]);
  }
  return out;
}
