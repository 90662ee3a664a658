/** What a driver may be asked, and the failures that show themselves in the same way; the catalogue's symptom in plain data. */
export interface Signs {
  readonly questions: readonly {
    readonly id: string;
    readonly answers: readonly { readonly id: string }[];
  }[];
  readonly leads: readonly Lead[];
}

interface Lead {
  readonly failure: string;
  /** By question id: the answers that speak for it; a question that is not named says nothing. */
  readonly fits: Readonly<Record<string, readonly string[]>>;
}

/** Said of a question that cannot be answered here and now: it speaks neither for nor against anything, and is not asked again. */
export const CANNOT_TELL = 'cannot-tell';

/** What was answered, by question id. */
export type Answers = ReadonlyMap<string, string>;

export interface Suspect {
  readonly failure: string;
  /** Of all suspects together, 0..1. */
  readonly share: number;
  /** Questions whose answer speaks against it. */
  readonly against: readonly string[];
}

/**
 * How much of a failure's weight is left by one answer that speaks against it (estimate): people mishear, look in bad light,
 * and failures do not keep to the book, so an answer makes a suspect unlikely and never impossible.
 */
export const MISFIT = 0.05;
/** So that a failure for which no events are expected can still be named, last. */
const NEVER_SEEN = 1e-12;

/**
 * Failures behind a symptom, most likely first: events expected on this trip (M1), times MISFIT for each answer that speaks
 * against them, as shares of the whole. Failures this vehicle cannot have are not in `expected` and are left out. Ties keep
 * the order of the leads.
 */
export function suspects(
  signs: Signs,
  answers: Answers,
  expected: ReadonlyMap<string, number>,
): readonly Suspect[] {
  const weighed = signs.leads.flatMap(({ failure, fits }) => {
    const events = expected.get(failure);
    if (events === undefined) return [];
    const against = signs.questions.flatMap(({ id }) => {
      const said = answers.get(id);
      return said !== undefined && said !== CANNOT_TELL && fits[id]?.includes(said) === false ? [id] : [];
    });
    return [{ failure, against, weight: Math.max(events, NEVER_SEEN) * MISFIT ** against.length }];
  });
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed
    .map(({ failure, against, weight }) => ({ failure, against, share: weight / total }))
    .sort((a, b) => b.share - a.share);
}

/**
 * The question to ask next: the first unanswered one that still parts the suspects with nothing against them. Null when no
 * question would change anything. Answers that no such suspect gives stay on offer: they would be news.
 */
export function nextQuestion(
  signs: Signs,
  answers: Answers,
  expected: ReadonlyMap<string, number>,
): string | null {
  const clear = new Set(
    suspects(signs, answers, expected)
      .filter(({ against }) => against.length === 0)
      .map(({ failure }) => failure),
  );
  const left = signs.leads.filter(({ failure }) => clear.has(failure));
  const parts = signs.questions.find(
    ({ id, answers: offered }) =>
      !answers.has(id) &&
      new Set(
        offered.map((answer) =>
          left
            .filter(({ fits }) => fits[id]?.includes(answer.id) !== false)
            .map(({ failure }) => failure)
            .join(),
        ),
      ).size > 1,
  );
  return left.length > 1 ? (parts?.id ?? null) : null;
}
