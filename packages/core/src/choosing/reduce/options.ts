import { resolve, within } from './draft.ts';
import type { Atom, Draft, DraftOption } from './draft.ts';
import { dropImplied } from './implied.ts';
import type { Implications } from './implied.ts';

/**
 * The options of one event, made small.
 *
 * Impossible: an option that asks for something that cannot be is never complete and goes, like one without gain.
 * Free: an option that asks for nothing is complete in every choice, so at least its gain is had: it is taken off the loss
 * for good and off the gain of the others.
 * Implied: within an option an atom implied by others, or by `must`, goes.
 * Dominated: option a goes when some option b gains at least as much and is complete whenever a is. The best complete
 * gain is then never a's alone. One of two equal options is kept.
 * Graded: when option b has the least gain g and is complete whenever any other option is, the best gain is
 * g [b complete] + the best of the others with g taken off. So b becomes an event of its own. A job at a proper grade and
 * with care at another is of this kind, and the split parts of many events are equal and merge.
 *
 * The loss of every feasible choice is unchanged by each of these.
 */
export function simplifyOptions(draft: Draft, implications: Implications): void {
  const events: DraftOption[][] = [];
  // Whether `must` holds or implies an atom: asked of the same few atoms by hundreds of options.
  const held = new Map<Atom, boolean>(draft.must.map((atom) => [atom, true]));
  const holds = (atom: Atom): boolean => {
    const before = held.get(atom);
    if (before !== undefined) return before;
    const answer = implications.allImply(draft.must, atom);
    held.set(atom, answer);
    return answer;
  };
  for (const event of draft.events) {
    let options: DraftOption[] = [];
    for (const { atoms, gain } of event) {
      const left = gain > 0 ? resolve(draft, atoms) : null;
      if (!left) continue;
      const unmet = left.filter((atom) => !holds(atom));
      options.push({ atoms: dropImplied(implications, unmet), gain });
    }
    const free = options.reduce(
      (best, { atoms, gain }) => (atoms.length === 0 ? Math.max(best, gain) : best),
      0,
    );
    draft.loss -= free;
    options = options
      .filter((option) => option.gain > free)
      .map(({ atoms, gain }) => ({ atoms, gain: gain - free }));
    options = dropDominated(implications, options);
    for (let grade = peelGrade(implications, options); grade; grade = peelGrade(implications, options)) {
      events.push([grade]);
    }
    if (options.length > 0) events.push(options);
  }
  draft.events = events;
}

function completeWhen(implications: Implications, a: DraftOption, b: DraftOption): boolean {
  return within(b.atoms, a.atoms) || implications.allImplyAll(a.atoms, b.atoms);
}

function dropDominated(implications: Implications, options: readonly DraftOption[]): DraftOption[] {
  const byGain = [...options].sort((a, b) => b.gain - a.gain || a.atoms.length - b.atoms.length);
  const kept: DraftOption[] = [];
  for (const option of byGain) {
    if (!kept.some((better) => completeWhen(implications, option, better))) kept.push(option);
  }
  // Of two with the same gain the later may be the weaker demand.
  return kept.filter(
    (a, i) => !kept.some((b, j) => j > i && b.gain === a.gain && completeWhen(implications, a, b)),
  );
}

/** Takes the least option out when all others imply it; `options` is sorted by falling gain and keeps the rest. */
function peelGrade(implications: Implications, options: DraftOption[]): DraftOption | null {
  const least = options[options.length - 1];
  if (!least || options.length < 2) return null;
  const others = options.slice(0, -1);
  if (!others.every((other) => completeWhen(implications, other, least))) return null;
  options.pop();
  for (const other of others) other.gain -= least.gain;
  const left = others.filter((other) => other.gain > 0);
  options.splice(0, options.length, ...left);
  return least;
}
