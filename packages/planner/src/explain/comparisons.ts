import type { KitState } from '@waymend/core/choosing/kit-state';
import type { PieceIndex } from '@waymend/core/choosing/problem';
import type { ScenePiece } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { ComparisonAnswer } from '../answer/plan-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import { atRealMass } from './at-real-mass.ts';
import { brokenLimits, loadAnswer } from './load-answer.ts';
import type { Reading } from './reading.ts';

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
): Result<readonly ComparisonAnswer[]> {
  const owned = reading.pieces.flatMap((piece, p) => (piece.owned ? [p] : []));
  const rows: { kind: ComparisonAnswer['kind']; title: string; pieces: readonly PieceIndex[] }[] = [
    { kind: 'nothing', title: 'nothing', pieces: [] },
  ];
  const box = biggestBox(reading, built);
  if (box !== null) rows.push({ kind: 'boxed-set', title: box.title, pieces: box.pieces });
  rows.push({ kind: 'everything', title: 'everything you own', pieces: owned });
  rows.push({
    kind: 'kit',
    title: 'this kit',
    pieces: [...kit.carried.keys()].filter((p) => kit.carried[p] === 1),
  });

  const out: ComparisonAnswer[] = [];
  for (const { kind, title, pieces } of rows) {
    const carried = new Uint8Array(reading.pieces.length);
    for (const p of pieces) carried[p] = 1;
    scratch.become(carried);
    const things = pieces.flatMap((p): ScenePiece[] => {
      const piece = reading.pieces[p];
      return piece === undefined ? [] : [piece];
    });
    const load = loadAnswer(built, trade, things);
    if (!load.ok) return load;
    const unaided = atRealMass(reading, scratch, built, trade);
    if (!unaided.ok) return unaided;
    out.push({
      kind,
      title,
      massGrams: things.reduce((sum, p) => sum + p.grams, 0),
      pieces: pieces.length,
      unaided: unaided.value,
      breaks: kind === 'nothing' ? [] : brokenLimits(load.value),
    });
  }
  return ok(out);
}

/** The set with most pieces, with everything pinned "always": the wheel and the jack come whatever box is taken. */
function biggestBox(
  reading: Reading,
  built: BuiltScene,
): { readonly title: string; readonly pieces: readonly PieceIndex[] } | null {
  const boxes = new Map<string, PieceIndex[]>();
  reading.pieces.forEach((piece, p) => {
    const set = built.garage.belongings[piece.belonging]?.inside;
    if (piece.owned && set !== undefined) boxes.set(set, [...(boxes.get(set) ?? []), p]);
  });
  const [biggest] = [...boxes].sort((a, b) => b[1].length - a[1].length);
  if (biggest === undefined) return null;
  const always = reading.pieces.flatMap((piece, p) => (piece.owned && piece.pin === 'always' ? [p] : []));
  const name = built.garage.belongings[biggest[0]]?.name ?? 'the boxed set';
  return {
    title: always.length > 0 ? `${name} and what always comes` : name,
    pieces: [...new Set([...biggest[1], ...always])],
  };
}
