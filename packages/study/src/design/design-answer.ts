import { leastCount } from '@surae/analysis';
import type { DesignValues, InputKey } from './design-question.ts';
import { type DesignRange, type DesignRequest, valuesAt } from './design-request.ts';

/** How the uncertain inputs come out: as expected, each at the end that needs fewer, each at the end that needs more. */
export type DesignCase = 'expected' | 'fewest' | 'most';

export const DESIGN_CASES = ['expected', 'fewest', 'most'] as const satisfies readonly DesignCase[];

/** How many are needed where the inputs are these. */
export interface DesignNeed {
  readonly values: DesignValues;
  /** people in each group, people, or tests; null: more than a hundred thousand */
  readonly count: number | null;
  /** people to begin with in all, those who will drop out among them; null for tests, and where the count is */
  readonly recruited: number | null;
  /** what that number attains; null where there is none */
  readonly attained: number | null;
}

/** One uncertain input at one of its ends, all others as expected. */
export interface DesignSingle {
  readonly input: InputKey;
  readonly end: 'low' | 'high';
  readonly value: number;
  readonly need: DesignNeed;
}

/** What a number attains in each case. */
export interface CurvePoint {
  readonly count: number;
  readonly attained: Readonly<Record<DesignCase, number>>;
}

/** The answer to a question, with how far it hangs on what is not known. */
export interface DesignAnswer {
  readonly request: DesignRequest;
  readonly cases: Readonly<Record<DesignCase, DesignNeed>>;
  /** of each uncertain input the low end and the high one; empty where all are certain */
  readonly singles: readonly DesignSingle[];
  /** by the published formula, rounded up; null where the question has none */
  readonly byFormula: number | null;
  readonly curve: readonly CurvePoint[];
}

/** Points of a curve, about so many. */
const CURVE_POINTS = 48;

function needOf({ question }: DesignRequest, values: DesignValues): DesignNeed {
  const { goal, meets, least, attained, counts } = question;
  const wished = values[goal]!;
  const isMet = (count: number): boolean => {
    const found = attained(count, values);
    return meets === 'at-least' ? found >= wished : found <= wished;
  };
  const count = leastCount(least, isMet) ?? null;
  const arms = counts === 'people-each' ? 2 : 1;
  // 1 - 0.2 is a little below 0.8: what is whole stays whole
  const begun = (people: number): number => Math.ceil(people / (1 - (values['drop-out'] ?? 0)) - 1e-9);
  return {
    values,
    count,
    recruited: counts === 'tests' || count === null ? null : arms * begun(count),
    attained: count === null ? null : attained(count, values),
  };
}

function isUncertain({ low, high }: DesignRange): boolean {
  return low < high;
}

/** Numbers from the least on, evenly, with those that are needed among them. */
function countsOf({ question: { least } }: DesignRequest, cases: Readonly<Record<DesignCase, DesignNeed>>): number[] {
  const { expected, fewest, most } = cases;
  const about = expected.count ?? fewest.count ?? 100;
  const top = Math.max(Math.ceil(about * 1.6), Math.min(Math.ceil((most.count ?? 0) * 1.1), about * 5), least + 6);
  const step = Math.max(1, Math.ceil((top - least) / CURVE_POINTS));
  const even = Array.from({ length: Math.floor((top - least) / step) + 1 }, (_, place) => least + place * step);
  const needed = DESIGN_CASES.flatMap((one) => cases[one].count ?? []).filter((count) => count <= top);
  return [...new Set([...even, ...needed])].sort((a, b) => a - b);
}

/** How many people a study needs, at every end of what is uncertain, and what other numbers would attain. */
export function designAnswer(request: DesignRequest): DesignAnswer {
  const { question, ranges } = request;
  const expected = needOf(
    request,
    valuesAt(ranges, () => 'expected'),
  );
  const uncertain = [...ranges].filter(([, range]) => isUncertain(range)).map(([key]) => key);
  const singles = uncertain.flatMap((input) =>
    (['low', 'high'] as const).map((end): DesignSingle => {
      const values = valuesAt(ranges, (key) => (key === input ? end : 'expected'));
      return { input, end, value: values[input]!, need: needOf(request, values) };
    }),
  );
  const size = ({ count }: DesignNeed): number => count ?? Number.POSITIVE_INFINITY;
  const cornerOf = (most: boolean): DesignNeed => {
    const ends = new Map(
      uncertain.map((input) => {
        const [low, high] = singles.filter((one) => one.input === input) as [DesignSingle, DesignSingle];
        return [input, size(low.need) > size(high.need) === most ? low.end : high.end] as const;
      }),
    );
    return needOf(
      request,
      valuesAt(ranges, (key) => ends.get(key) ?? 'expected'),
    );
  };
  const cases = { expected, fewest: cornerOf(false), most: cornerOf(true) };
  const { attained, formula } = question;
  return {
    request,
    cases,
    singles,
    byFormula: formula === null ? null : Math.ceil(formula.people(expected.values)),
    curve: countsOf(request, cases).map((count) => ({
      count,
      attained: {
        expected: attained(count, cases.expected.values),
        fewest: attained(count, cases.fewest.values),
        most: attained(count, cases.most.values),
      },
    })),
  };
}
