import {
  COMPARISON_RULES,
  type GuidanceRule,
  type IrritabilityGrade,
  RUNNING_NUMBERS,
  type RuleNumber,
  type RunningNumbers,
} from '@surae/shared';

/** Numbers of a run and limits of pain, as the rules of a clinic have them. */
export interface NumbersInUse {
  readonly running: RunningNumbers;
  /** pain up to which something is gone on with, and the same with high irritability, of 10 [1] */
  readonly painMost: RuleNumber;
  readonly painMostIrritable: RuleNumber;
}

/**
 * Numbers that are reckoned with outside the rules, as the rules hold them: where a clinic changed one in its own copy, its own number
 * counts here too. A number that no rule holds stays as it is published.
 *
 * @param rules - as the clinic has them [-]
 * @returns see {@link NumbersInUse} [unit of the number]
 *
 * Source: ours
 */
export function numbersInUse(rules: readonly GuidanceRule[]): NumbersInUse {
  const held = new Map(rules.flatMap(({ numbers }) => Object.values(numbers)).map((one) => [one.id, one]));
  const inUse = (published: RuleNumber): RuleNumber => held.get(published.id) ?? published;
  const names = Object.keys(RUNNING_NUMBERS) as readonly (keyof RunningNumbers)[];
  return {
    running: Object.fromEntries(names.map((name) => [name, inUse(RUNNING_NUMBERS[name])])) as RunningNumbers,
    painMost: inUse(COMPARISON_RULES.painMost),
    painMostIrritable: inUse(COMPARISON_RULES.painMostIrritable),
  };
}

/**
 * Pain up to which something is gone on with: less for a tendon of high irritability.
 *
 * @param treatAs - the grade that limits are chosen by; null where a leg is not sore [-]
 * @param numbers - see {@link numbersInUse} [of 10]
 * @returns the limit [of 10]
 *
 * Source: see `COMPARISON_RULES`
 */
export function painLimitOf(
  treatAs: IrritabilityGrade | null,
  { painMost, painMostIrritable }: Pick<NumbersInUse, 'painMost' | 'painMostIrritable'>,
): number {
  return (treatAs === 'high' ? painMostIrritable : painMost).value;
}
