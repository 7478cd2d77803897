import type { ToldRepetition, ToldTrial } from './told-counts.ts';

/** Repetitions of one recording as two saw them. */
export interface MatchedRepetitions {
  /** seen by both */
  readonly both: readonly (readonly [first: ToldRepetition, second: ToldRepetition])[];
  readonly firstAlone: readonly ToldRepetition[];
  readonly secondAlone: readonly ToldRepetition[];
}

function byNumber(first: readonly ToldRepetition[], second: readonly ToldRepetition[]): MatchedRepetitions['both'] {
  const others = new Map(second.map((one) => [one.repetition, one]));
  return first.flatMap((one) => {
    const other = others.get(one.repetition);
    return other === undefined ? [] : [[one, other] as const];
  });
}

/** The two nearest go together first, so that the result hangs on no order. */
function byTime(
  first: readonly ToldRepetition[],
  second: readonly ToldRepetition[],
  withinS: number,
): MatchedRepetitions['both'] {
  const near = first.flatMap((one) =>
    second.flatMap((other) => {
      const apartS = one.atS === null || other.atS === null ? Infinity : Math.abs(one.atS - other.atS);
      return apartS <= withinS ? [{ one, other, apartS }] : [];
    }),
  );
  const taken = new Set<ToldRepetition>();
  const both: (readonly [ToldRepetition, ToldRepetition])[] = [];
  for (const { one, other } of near.sort((a, b) => a.apartS - b.apartS || a.one.atS! - b.one.atS!)) {
    if (taken.has(one) || taken.has(other)) continue;
    taken.add(one).add(other);
    both.push([one, other]);
  }
  return both.sort(([a], [b]) => a.atS! - b.atS!);
}

/**
 * Which repetitions of a recording are the same: by their number where both saw the numbers of the machine, else by their time.
 *
 * Whoever was shown numbers and said nothing of one left it open: a repetition is seen by one alone only where the list of the other is
 * whole.
 *
 * @param withinS - marks no further apart are of the same repetition [s]
 */
export function matchedRepetitions(first: ToldTrial, second: ToldTrial, withinS: number): MatchedRepetitions {
  if (first.asShown && second.asShown) {
    return { both: byNumber(first.repetitions, second.repetitions), firstAlone: [], secondAlone: [] };
  }
  const both = byTime(first.repetitions, second.repetitions, withinS);
  const [ones, others] = [new Set(both.map(([one]) => one)), new Set(both.map(([, other]) => other))];
  return {
    both,
    firstAlone: second.isWhole ? first.repetitions.filter((one) => !ones.has(one)) : [],
    secondAlone: first.isWhole ? second.repetitions.filter((one) => !others.has(one)) : [],
  };
}
