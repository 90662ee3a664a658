import type { Broken } from '@waymend/core/stowing/broken';
import type { StowProblem } from '@waymend/core/stowing/stow-problem';
import { RULES } from '@waymend/core/stowing/stow-rules';
import { massText } from '../words/mass.ts';
import type { StowBroken } from '../answer/stow-answer.ts';

/** Most names in one sentence; the rest are counted. */
const NAMED = 3;

const SOFT: Readonly<Record<string, 'danger' | 'order' | undefined>> = RULES;

/** Each broken rule in one plain sentence that says what to do. */
export function brokenSentences(problem: StowProblem, broken: readonly Broken[]): readonly StowBroken[] {
  return broken.map((b) => ({
    rule: b.rule,
    class: SOFT[b.rule] ?? 'by-hand',
    sentence: sentence(problem, b),
    pieces: b.pieces,
    bag: b.bag,
    berth: b.berth,
    byHand: b.byHand,
  }));
}

const ROWS: Readonly<Record<string, string>> = {
  front: 'The front axle',
  rear: 'The rear axle',
  'tyres-front': 'The front tyres',
  'tyres-rear': 'The rear tyres',
  gross: 'The whole vehicle',
  roof: 'The roof',
};

function sentence(problem: StowProblem, b: Broken): string {
  const names = b.pieces.map((id) => problem.pieces.find((p) => p.id === id)?.name ?? id);
  const [first = 'something'] = names;
  const some = list(names);
  const bag = problem.bags.find(({ id }) => id === b.bag);
  const bagName = bag?.name ?? 'the bag';
  const pocket = bag?.pockets.find(({ id }) => id === b.pocket);
  const place = pocket === undefined ? bagName : `${pocket.name} of ${bagName}`;
  const berth = problem.berths.find(({ id }) => id === b.berth)?.name ?? 'the berth';
  const over = (b.found ?? 0) - (b.limit ?? 0);
  switch (b.rule) {
    case 'spill-open':
      return bag === undefined
        ? `${first} rides loose in ${berth}: stand it in something that holds what it may spill.`
        : `${first} lies in ${bagName}, which holds no spill: wrap it in a tight bag, or give it a box with a tight lid.`;
    case 'wet-electrics':
      return `${bagName} holds liquids and electrics together (${some}): what leaks spoils the electrics; part them.`;
    case 'sharp-electrics':
      return `${place} holds sharp things beside electrics (${some}): sheathe the edges or part them.`;
    case 'lithium-flammable':
      return `${bagName} holds lithium cells with aerosols or fuel (${some}): a cell that fails sets fire to the rest; part them.`;
    case 'in-heat':
      return `${first} rides in ${berth}, in the heat: cells, aerosols and fuel belong in the shade, below 50 °C.`;
    case 'bag-too-heavy':
      return `${bagName} weighs ${massText(b.found ?? 0)}, more than the 25 kg one person should lift: lift it by two, or part it.`;
    case 'axle-over':
      return `${ROWS[b.row ?? ''] ?? 'An axle'} is over its limit by ${massText(over)} with the bags themselves counted: leave something home or move it.`;
    case 'not-at-hand':
      return `${first} is wanted in the first minutes and lies in ${bag === undefined ? berth : bagName}, out of reach.`;
    case 'in-the-way':
      return `${first} lies in ${bagName}, in the way of what is wanted at once.`;
    case 'set-apart':
      return `${some} ${names.length === 1 ? 'lies' : 'lie'} in ${bag === undefined ? berth : bagName}, apart from what belongs with ${names.length === 1 ? 'it' : 'them'}.`;
    case 'loose':
      return `${first} rides loose in ${berth}: no bag that takes it has room left. Lash it.`;
    case 'does-not-fit':
      return `${first} was put in ${place} and is too large or too heavy for it.`;
    case 'pocket-full':
      return `${place} holds more than it has room for (${some}).`;
    case 'pocket-over-limit':
      return `${place} carries ${massText(b.found ?? 0)}, ${massText(over)} over its limit.`;
    case 'bag-full':
      return `${bagName} holds ${litres(b.found)} l and has room for ${litres(b.limit)} l.`;
    case 'bag-over-limit':
      return `${bagName} carries ${massText(b.found ?? 0)}, ${massText(over)} over its limit.`;
    case 'berth-over-limit':
      return `${berth} carries ${massText(over)} more than is left of its limit.`;
    case 'berth-full':
      return `${berth} is to hold ${litres(b.found)} l and has room for ${litres(b.limit)} l.`;
    case 'wheel-room':
      return `${some} ${names.length === 1 ? 'lies' : 'lie'} in ${berth}, in the room of the spare wheel.`;
  }
}

function litres(ml: number | null): string {
  return ((ml ?? 0) / 1000).toFixed(1);
}

function list(names: readonly string[]): string {
  if (names.length <= NAMED) return names.join(', ');
  return `${names.slice(0, NAMED).join(', ')} and ${names.length - NAMED} more`;
}
