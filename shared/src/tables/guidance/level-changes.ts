import { COMPARISON_RULES } from '../comparison-rules.ts';
import type { Condition } from './condition.ts';
import { AT_HEEL_BONE } from './range-rules.ts';
import type { GuidanceRule, RuleNumber, Touch } from './rule-entry.ts';
import { guidanceRule, ruleNumber } from './rule-made.ts';

const days = ruleNumber('level-days', 7, 'd');
const one = ruleNumber('level-one', 1);
const two = ruleNumber('level-two', 2);
const three = ruleNumber('level-three', 3);
const four = ruleNumber('level-four', 4);
const pain = COMPARISON_RULES.painMost;
const below = ruleNumber('learn-pain', 4);
const raises = {
  some: ruleNumber('raises-some', 1),
  ten: ruleNumber('raises-ten', 10),
  twenty: ruleNumber('raises-twenty', 20),
} as const;

const notHigh: Condition = { fact: 'irritability', oneOf: ['low', 'moderate'] };
const settled: Condition = {
  any: [
    { fact: 'place', is: 'no' },
    { fact: 'settles-overnight', is: 'yes' },
  ],
};
/** What was tested before a flare is no ground for a higher level. */
const calm = ruleNumber('level-calm', 14, 'd');
const graded: Condition = { any: [{ fact: 'place', is: 'no' }, notHigh] };

/** Raises on one leg are borne: so many that count, with pain below that of learning them, and a night that settles it. */
function bears(least: 'ten' | 'twenty'): readonly Condition[] {
  return [
    { fact: 'valid-raises', atLeast: least },
    { fact: 'pain-single-raise', below: 'below' },
    settled,
    graded,
    { fact: 'days-since-flare', atLeast: 'calm' },
  ];
}

function to(
  level: string,
  rank: number,
  when: readonly Condition[],
  numbers: Readonly<Record<string, RuleNumber>>,
  more: Partial<GuidanceRule> = {},
  touches: readonly Touch[] = [],
): GuidanceRule {
  return guidanceRule({
    code: `change-to-${level}`,
    about: 'change',
    rank,
    follows: { about: 'step', code: 'progress' },
    when: { all: [...when, { fact: 'days-at-level', atLeast: 'days' }] },
    numbers: { ...numbers, days },
    proposes: { kind: 'level', code: level, touches: ['loading', 'increase', ...touches] },
    ...more,
  });
}

/**
 * From one level to the next, by what would let somebody begin there, and after a week at least: one step at a time. From the floor to
 * the heavy level the edge of a step may be left out, and is for a heel that is sore at the bone.
 */
export const LEVEL_CHANGES: readonly GuidanceRule[] = [
  to(
    'learn',
    2,
    [
      { fact: 'level-now', below: 'one' },
      { fact: 'valid-raises', atLeast: 'some' },
      graded,
      { fact: 'pain-double-raise', atMost: 'pain' },
      { fact: 'pain-single-raise', atMost: 'pain' },
    ],
    { one, some: raises.some, pain },
  ),
  to('single', 3, [{ fact: 'level-now', atLeast: 'one' }, { fact: 'level-now', below: 'two' }, ...bears('ten')], {
    one,
    two,
    ten: raises.ten,
    below,
    calm,
  }),
  to('heavy', 4, [{ fact: 'level-now', atLeast: 'two' }, { fact: 'level-now', below: 'four' }, ...bears('twenty')], {
    two,
    four,
    twenty: raises.twenty,
    below,
    calm,
  }),
  // not everybody comes to twenty raises: four weeks of the level before stand for them, with a calm tendon
  guidanceRule({
    code: 'change-to-heavy-late',
    about: 'change',
    rank: 5,
    follows: { about: 'step', code: 'progress' },
    when: {
      all: [
        {
          any: [
            { all: [{ fact: 'level-now', atLeast: 'three' }, { not: AT_HEEL_BONE }] },
            {
              all: [{ fact: 'level-now', atLeast: 'two' }, AT_HEEL_BONE, { fact: 'level-two-met', is: 'yes' }],
            },
          ],
        },
        { fact: 'level-now', below: 'four' },
        {
          any: [
            { fact: 'place', is: 'no' },
            { fact: 'irritability', is: 'low' },
          ],
        },
        ...bears('ten'),
        { fact: 'days-at-level', atLeast: 'days' },
      ],
    },
    numbers: { two, three, four, ten: raises.ten, below, calm, days: ruleNumber('level-days-late', 28, 'd') },
    standIns: ['level-two-met'],
    proposes: { kind: 'level', code: 'heavy', touches: ['loading', 'increase'] },
  }),
  to(
    'range',
    6,
    [
      { not: AT_HEEL_BONE },
      { fact: 'level-now', atLeast: 'two' },
      { fact: 'level-now', below: 'three' },
      { fact: 'level-two-met', is: 'yes' },
      ...bears('ten'),
    ],
    { two, three, ten: raises.ten, below, calm },
    { standIns: ['level-two-met'] },
    ['step', 'below-level'],
  ),
];
