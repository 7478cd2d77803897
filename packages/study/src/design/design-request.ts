import { boundedDeviation } from '@surae/analysis';
import type {
  DesignFault,
  DesignFaultCode,
  DesignId,
  DesignInput,
  DesignQuestion,
  DesignValues,
  InputKey,
  InputKind,
} from './design-question.ts';
import { MEAN_QUESTIONS } from './mean-questions.ts';
import { WIDTH_QUESTIONS } from './width-questions.ts';

/** Every question in every way. */
export const DESIGN_QUESTIONS: readonly DesignQuestion[] = [...MEAN_QUESTIONS, ...WIDTH_QUESTIONS];

/** Level of the interval that a spread has by the number of people it was found in. */
export const SPREAD_LEVEL = 0.95;

/** What was told of an input: one number, or lowest, expected and highest; of a spread how many people it was found in. */
export interface DesignTold {
  readonly numbers: readonly number[];
  readonly people: number | null;
}

/** What an input may plausibly be. */
export interface DesignRange {
  readonly low: number;
  readonly expected: number;
  readonly high: number;
}

/** A question with all of its inputs, ready to be answered. */
export interface DesignRequest {
  readonly question: DesignQuestion;
  /** as it was told; inputs that were not told are not in it */
  readonly told: ReadonlyMap<InputKey, DesignTold>;
  readonly ranges: ReadonlyMap<InputKey, DesignRange>;
}

export type DesignReading =
  | { readonly ok: true; readonly request: DesignRequest }
  | { readonly ok: false; readonly faults: readonly DesignFault[] };

const MAY_BE: Readonly<Record<InputKind, { readonly code: DesignFaultCode; readonly holds: (x: number) => boolean }>> =
  {
    size: { code: 'not-above-0', holds: (x) => x > 0 },
    difference: { code: 'no-difference', holds: (x) => x !== 0 },
    signed: { code: 'not-a-number', holds: () => true },
    share: { code: 'not-a-share', holds: (x) => x > 0 && x < 1 },
    icc: { code: 'not-an-icc', holds: (x) => x >= 0 && x < 1 },
    alike: { code: 'not-an-icc', holds: (x) => x >= 0 && x <= 1 },
    correlation: { code: 'not-a-correlation', holds: (x) => x > -1 && x < 1 },
    'drop-out': { code: 'not-a-drop-out', holds: (x) => x >= 0 && x < 1 },
    repeats: { code: 'not-repeats', holds: (x) => Number.isInteger(x) && x >= 2 && x <= 100 },
    legs: { code: 'not-legs', holds: (x) => x === 1 || x === 2 },
  };

function faultOf(
  { kind, isUncertain, hasPeople }: DesignInput,
  { numbers, people }: DesignTold,
): DesignFaultCode | null {
  if (numbers.length !== 1 && !(isUncertain && numbers.length === 3))
    return isUncertain ? 'not-in-order' : 'one-number';
  if (!numbers.every(Number.isFinite)) return 'not-a-number';
  const { code, holds } = MAY_BE[kind];
  if (!numbers.every(holds)) return code;
  const [low, expected, high] = numbers;
  if (numbers.length === 3 && !(low! <= expected! && expected! <= high!)) return 'not-in-order';
  if (kind === 'difference' && Math.sign(low!) !== Math.sign(numbers.at(-1)!)) return 'no-difference';
  if (people === null) return null;
  const isKnown = hasPeople && numbers.length === 1 && Number.isInteger(people) && people >= 2 && people <= 1_000_000;
  return isKnown ? null : 'not-people';
}

function rangeOf({ numbers, people }: DesignTold): DesignRange {
  const [one, expected, high] = numbers;
  if (people !== null) {
    const { value, ...bounds } = boundedDeviation(one!, people - 1, SPREAD_LEVEL);
    return { ...bounds, expected: value };
  }
  return numbers.length === 1
    ? { low: one!, expected: one!, high: one! }
    : { low: one!, expected: expected!, high: high! };
}

/** One value of each input. */
export function valuesAt(
  ranges: ReadonlyMap<InputKey, DesignRange>,
  at: (key: InputKey) => keyof DesignRange,
): DesignValues {
  return Object.fromEntries([...ranges].map(([key, range]) => [key, range[at(key)]]));
}

/** What cannot be at any corner of the ranges: each uncertain input at either end, the others at theirs. */
function refusedSomewhere(
  { refuses, inputs }: DesignQuestion,
  ranges: ReadonlyMap<InputKey, DesignRange>,
): DesignFault[] {
  const open = inputs.filter(({ isUncertain }) => isUncertain).map(({ key }) => key);
  for (let corner = 0; corner < 2 ** open.length; corner++) {
    const fault = refuses(valuesAt(ranges, (key) => ((corner >> Math.max(0, open.indexOf(key))) & 1 ? 'high' : 'low')));
    if (fault !== null) return [fault];
  }
  return [];
}

/** The question of a name that asks for what was told; the first way where nothing tells. */
export function questionFor(id: DesignId, keys: Iterable<InputKey>): DesignQuestion {
  const named = DESIGN_QUESTIONS.filter((one) => one.id === id);
  const told = [...keys];
  const asks = ({ inputs }: DesignQuestion): number =>
    told.filter((key) => inputs.some((input) => input.key === key)).length;
  return named.reduce((best, one) => (asks(one) > asks(best) ? one : best));
}

/** A question with what was told of its inputs, or everything that cannot be. */
export function readDesign(question: DesignQuestion, told: ReadonlyMap<InputKey, DesignTold>): DesignReading {
  const faults: DesignFault[] = [];
  const ranges = new Map<InputKey, DesignRange>();
  for (const input of question.inputs) {
    const { key, usual } = input;
    const given = told.get(key) ?? (usual === null ? undefined : { numbers: [usual], people: null });
    const code = given === undefined ? 'missing' : faultOf(input, given);
    if (code !== null) faults.push({ input: key, code });
    else ranges.set(key, rangeOf(given!));
  }
  if (faults.length === 0) faults.push(...refusedSomewhere(question, ranges));
  if (faults.length > 0) return { ok: false, faults };
  const own = new Map([...told].filter(([key]) => question.inputs.some((input) => input.key === key)));
  return { ok: true, request: { question, told: own, ranges } };
}
