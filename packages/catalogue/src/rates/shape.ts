import type { Basis } from '../shape/basis.ts';
import type { Condition, GroupId } from '../shape/words.ts';

/**
 * What makes trouble more or less likely than the plain rates of the failure groups. Data only: core/failing multiplies.
 * A group that is not named keeps its rate (factor 1).
 */
export type GroupFactors = Readonly<Partial<Record<GroupId, number>>>;

interface Head {
  readonly id: string;
  /** Short, for lists: 'battery age'. */
  readonly title: string;
  /** The factor counts only on vehicles that meet this. */
  readonly when?: Condition;
  readonly basis: Basis;
}

/** A factor that is either there or not. */
export interface FlagFactor extends Head {
  readonly by: GroupFactors;
  /**
   * The factor on the one sort of part it is really about, when that is only some of a group: `by` is what is left of it
   * when spread over the group.
   */
  readonly onPart?: { readonly part: string; readonly factor: number; readonly shareOfGroup: number };
}

/** A factor read off a scale: the first step whose `upTo` is not below the reading. Ascending; the last is Infinity. */
export interface StepFactor extends Head {
  /** What is read and in which printed unit: 'battery age, years'. */
  readonly reads: string;
  readonly steps: readonly { readonly upTo: number; readonly by: GroupFactors }[];
}

/** A factor chosen by a word of the garage file. */
export interface WordFactor<Word extends string> extends Head {
  readonly words: Readonly<Record<Word, GroupFactors>>;
}

/** Events that come on top of the rates per distance; `each` is counted as its name says. */
export interface AddedEvents extends Head {
  /** Expected events for each one counted. */
  readonly each: number;
  readonly counts: 'fill' | '10,000 km of dusty leg' | 'day' | 'camp night' | 'cold night';
  readonly group: GroupId;
  /** The one failure of the group that grows; absent: shared out like the rest of the group. */
  readonly failure?: string;
}

/** The same factor on several groups. */
export function onGroups(groups: readonly GroupId[], factor: number): GroupFactors {
  const by: Partial<Record<GroupId, number>> = {};
  for (const group of groups) by[group] = factor;
  return by;
}
