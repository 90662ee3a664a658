import type { StowAnswer, StowBroken, StowedBag } from '../answer/stow-answer.ts';
import { massText } from '../words/mass.ts';

/** Sentences that are worth a morning: more would not be read. */
const MOST = 6;
/** A bag this heavy is set down before anything goes round it, grams. */
const HEAVY = 8_000;

/** What to do first: what can hurt, then bags to get or to move, then the heavy ones, then where the first-grab things are. */
export function firstThings(of: {
  readonly proposed: boolean;
  readonly bags: readonly StowedBag[];
  readonly broken: readonly StowBroken[];
  readonly unplaced: StowAnswer['unplaced'];
}): readonly string[] {
  const { bags, broken, unplaced } = of;
  const out = unplaced.map(({ name, why }) => `Find a place for ${name}: ${why}.`);
  const dangers = broken.filter((b) => b.class === 'danger');
  out.push(...[...new Set(dangers.map(({ sentence }) => sentence))].slice(0, 2));
  if (of.proposed)
    out.push(
      'No bags are recorded, so typical ones are proposed: measure your own, record them, and ask again.',
    );
  for (const bag of bags)
    if (bag.moved) out.push(`Set ${bag.name} down in ${bag.berthName}: it rides better there.`);
  const heavy = bags.filter((bag) => bag.grams >= HEAVY).sort((a, b) => b.grams - a.grams);
  for (const bag of heavy.slice(0, 2))
    out.push(`Load ${bag.name} (${massText(bag.grams)}) first, low in ${bag.berthName}, and lash it.`);
  for (const bag of bags)
    if (bag.firstGrab) out.push(`Put ${bag.name} in last, on top, in ${bag.berthName}.`);
  return out.slice(0, MOST);
}
