import { agreementDefaults, peopleForError, peopleForIntraclass, peopleForLimits } from '@surae/analysis';
import type { Wish } from './agree-arguments.ts';
import { plain } from './readable-number.ts';

/** One wish with the people that it needs, for each number of tests a person; undefined beyond what any study has. */
export interface Plan {
  readonly wish: 'icc_width' | 'error_within' | 'limit_within';
  readonly value: number;
  readonly expected: number | undefined;
  readonly people: readonly { readonly repeats: number; readonly people: number | undefined }[];
}

const REPEATS = [2, 3, 4, 5] as const;

/** How many people, tested how often, make every wish come true. */
export function plansFor(wish: Wish, iccOfTable: number | undefined): Plan[] {
  const { level } = agreementDefaults;
  const plans: Plan[] = [];
  const { iccWidth, errorWithin, limitWithin } = wish;
  const expected = wish.iccExpected ?? iccOfTable;
  if (iccWidth !== undefined) {
    const isUsable = expected !== undefined && expected >= 0 && expected < 1;
    const people = REPEATS.map((repeats) => ({
      repeats,
      people: isUsable ? peopleForIntraclass(iccWidth, expected, repeats, level) : undefined,
    }));
    plans.push({ wish: 'icc_width', value: iccWidth, expected: isUsable ? expected : undefined, people });
  }
  if (errorWithin !== undefined) {
    const people = REPEATS.map((repeats) => ({ repeats, people: peopleForError(errorWithin, repeats, level) }));
    plans.push({ wish: 'error_within', value: errorWithin, expected: undefined, people });
  }
  if (limitWithin !== undefined) {
    const people = [{ repeats: 2, people: peopleForLimits(limitWithin, level) }];
    plans.push({ wish: 'limit_within', value: limitWithin, expected: undefined, people });
  }
  return plans;
}

/** The plans as lines of text. */
export function planText(plans: readonly Plan[]): string[] {
  if (plans.length === 0) return [];
  return ['  People that a study needs', ...plans.flatMap(onePlan)];
}

function onePlan({ wish, value, expected, people }: Plan): string[] {
  const wished = {
    icc_width: `for an interval of ICC(1,1) no wider than ${value}, where ${Number(expected?.toPrecision(3))} is expected`,
    error_within: `for a standard error whose upper bound lies no more than ${plain(100 * value, 0)} % above it`,
    limit_within: `for a limit of agreement known to ${value} standard deviations`,
  }[wish];
  if (wish === 'icc_width' && expected === undefined) {
    return [`  for an interval of ICC(1,1) no wider than ${value}: cannot tell, give --icc-expected from 0 to below 1`];
  }
  return [
    `  ${wished}`,
    ...people.map(
      ({ repeats, people: count }) => `    ${repeats} tests each: ${count === undefined ? 'more than 100000' : count}`,
    ),
  ];
}
