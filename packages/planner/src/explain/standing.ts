import type { Garage } from '@waymend/garage/record/schema';
import type {
  GapAnswer,
  HomeAnswer,
  KitAnswer,
  StandingAnswer,
  UnaidedAnswer,
} from '../answer/plan-answer.ts';
import { massText } from '../words/mass.ts';
import type { Reading } from './reading.ts';

/** From here on a table holds what it should, weighs little beside that, and a kit is called fitted (estimates). */
const FITTED_COVERAGE = 0.9;
const FITTED_DEAD_SHARE = 0.35;
/** Fewer pieces than this mend next to nothing. */
const FEW_PIECES = 12;

/** Where the owner stands, computed from coverage, dead weight, doubles and missing sizes, and the step that helps most (M10). */
export function standing(
  reading: Reading,
  garage: Garage,
  kit: KitAnswer,
  home: readonly HomeAnswer[],
  gaps: readonly GapAnswer[],
  unaided: UnaidedAnswer,
): StandingAnswer {
  const owned = reading.pieces.filter((p) => p.owned);
  const ownedGrams = owned.reduce((sum, p) => sum + p.grams, 0);
  const dead = home.filter((h) => h.couldAdd === 0);
  const deadWeightGrams = dead.reduce((sum, h) => sum + h.grams, 0);
  const doubles = home.filter((h) => h.why === 'double').reduce((sum, h) => sum + h.copies, 0);
  const coverage = coverageOf(unaided, gaps);
  const missingSizes = missingOf(reading, gaps);
  const boxed = owned.filter((p) => garage.belongings[p.belonging]?.inside !== undefined).length;
  const deadShare = ownedGrams === 0 ? 0 : deadWeightGrams / ownedGrams;
  const stage =
    owned.length < FEW_PIECES
      ? 'bare'
      : boxed > owned.length / 2
        ? 'boxed'
        : coverage >= FITTED_COVERAGE && deadShare <= FITTED_DEAD_SHARE
          ? 'fitted'
          : 'pile';
  return {
    stage,
    words: wordsOf(stage, coverage, deadWeightGrams, doubles, missingSizes),
    coverage,
    deadWeightGrams,
    doubles,
    missingSizes,
    step: stepOf(gaps, kit, deadWeightGrams),
  };
}

/** Of the risk that a roadside repair could take away, the part that what is owned takes away. */
function coverageOf(unaided: UnaidedAnswer, gaps: readonly GapAnswer[]): number {
  const won = unaided.kit - unaided.empty;
  const open = gaps.reduce((sum, g) => sum + (g.reason === 'nothing-helps' ? 0 : g.worth), 0);
  return won + open > 0 ? won / (won + open) : 0;
}

/** Sizes of bought sockets, wrenches and keys among the cures: what the vehicle takes and nothing owned turns. */
function missingOf(reading: Reading, gaps: readonly GapAnswer[]): readonly string[] {
  const sizes = new Set<string>();
  for (const cure of gaps.flatMap((g) => g.cures)) {
    if (cure.kind !== 'buy') continue;
    for (const id of cure.items) {
      const piece = reading.pieces[reading.indexOf.get(id) ?? -1];
      if (piece === undefined || piece.owned) continue;
      for (const offer of piece.offers) {
        if (offer.kind === 'socket') sizes.add(offer.size.label);
        if (offer.kind === 'wrench') for (const end of offer.ends) sizes.add(end.size.label);
        if (offer.kind === 'bit-socket' && offer.sizes.length === 1)
          for (const size of offer.sizes) sizes.add(size.label);
      }
    }
  }
  return [...sizes].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

function wordsOf(
  stage: StandingAnswer['stage'],
  coverage: number,
  dead: number,
  doubles: number,
  missing: readonly string[],
): string {
  const share = `${Math.round(coverage * 100)} % of the risk that repairs can take away is covered`;
  const rest = `${massText(dead)} of what you own adds nothing on this trip${doubles > 0 ? `, ${doubles} of the pieces only repeat others` : ''}${
    missing.length > 0 ? `, and these sizes are missing: ${missing.join(', ')}` : ''
  }.`;
  switch (stage) {
    case 'bare':
      return `There is little here to mend with yet: ${share}.`;
    case 'boxed':
      return `Most of this came in a box made for no vehicle in particular: ${share}; ${rest}`;
    case 'pile':
      return `A grown pile: ${share}; ${rest}`;
    case 'fitted':
      return `A kit fitted to its vehicle: ${share}; ${rest}`;
  }
}

/** A cure heavier than this is not the next step of anybody who counts kilograms. */
const LIGHT_STEP_GRAMS = 5_000;

function stepOf(gaps: readonly GapAnswer[], kit: KitAnswer, dead: number): string {
  const steps = gaps.flatMap((gap) =>
    gap.cures
      .filter((c) => c.grams <= LIGHT_STEP_GRAMS && c.kind !== 'bring-a-person')
      .map((cure) => ({ gap, cure })),
  );
  // Chance won for the trouble it takes: each 50 in money and each kilogram count as one more effort.
  const effort = (c: GapAnswer['cures'][number]) => 1 + c.cents / 5_000 + c.grams / 1_000;
  const [best] = [...steps].sort((a, b) => b.gap.worth / effort(b.cure) - a.gap.worth / effort(a.cure));
  if (best !== undefined && best.gap.worth > 0) {
    const { words } = best.cure;
    return `The step that helps most is against "${best.gap.title.toLowerCase()}": ${words.charAt(0).toLowerCase()}${words.slice(1)}.`;
  }
  if (dead > kit.massGrams)
    return 'The step that helps most: leave at home what is listed under "stays home".';
  return 'The step that helps most: measure the sizes that are still assumed.';
}
