import { COMPARISON_RULES } from '../comparison-rules.ts';
import type { Condition } from './condition.ts';
import { HEAVY_SLOW } from './heavy-slow.ts';
import { PROGRAMMES } from './programmes.ts';
import { AT_HEEL_BONE } from './range-rules.ts';
import type { GuidanceRule, Touch } from './rule-entry.ts';
import { guidanceRule, ruleNumber } from './rule-made.ts';
import { ONE_LEG_BORNE, ONE_LEG_BORNE_NUMBERS } from './start-rules.ts';

const notHigh: Condition = { fact: 'irritability', oneOf: ['low', 'moderate'] };
const ten = ruleNumber('raises-ten', 10);

function option(
  code: string,
  when: readonly Condition[],
  touches: readonly Touch[],
  numbers: GuidanceRule['numbers'] = {},
): GuidanceRule {
  const { source, mark } = PROGRAMMES.find((one) => one.code === code) ?? { source: 'ours', mark: 'computed' };
  return guidanceRule({
    code: `option-${code}`,
    about: 'option',
    source,
    mark,
    // the lowest level that something asks for is not passed by another way
    when: { all: [...when, ...ONE_LEG_BORNE] },
    numbers: { ...numbers, ...ONE_LEG_BORNE_NUMBERS },
    standIns: ['rung-held'],
    proposes: { kind: 'programme', code, touches: ['loading', 'begin', ...touches] },
  });
}

/** Weeks of heavy slow training, each with its own source; who is beyond the last one is proposed none. */
const weekRules = HEAVY_SLOW.map(({ id, weeks: [from, to], source, mark }, rank) =>
  guidanceRule({
    code: id.replace('.', '-'),
    about: 'week',
    rank,
    source,
    mark,
    when: {
      all: [
        { fact: 'heavy-slow-week', atLeast: 'from' },
        { fact: 'heavy-slow-week', below: 'after' },
      ],
    },
    numbers: {
      from: ruleNumber(`heavy-slow-from-${from}`, from, '1', { source, mark }),
      after: ruleNumber(`heavy-slow-after-${to}`, to + 1, '1', { source, mark }),
    },
    proposes: { kind: 'programme', code: id, touches: ['loading'] },
    sentence: 'heavy-slow-week',
    changedBy: 'heavy-slow-week',
  }),
);

/** Programmes beside the levels, weeks of heavy slow training, and the limit of pain. */
export const PROGRAMME_RULES: readonly GuidanceRule[] = [
  ...weekRules,
  option(
    'lowering-step',
    [{ fact: 'place', is: 'mid-portion' }, { fact: 'valid-raises', atLeast: 'ten' }, notHigh],
    ['step', 'below-level'],
    { ten },
  ),
  option('lowering-level', [AT_HEEL_BONE, { fact: 'valid-raises', atLeast: 'ten' }, notHigh], [], { ten }),
  option('combined', [{ fact: 'valid-raises', atLeast: 'ten' }, notHigh], [], { ten }),
  option('heavy-slow', [{ fact: 'valid-raises', atLeast: 'ten' }, notHigh], [], { ten }),
  option(
    'hard-holds',
    [
      { fact: 'irritability', is: 'low' },
      { fact: 'rig-at-hand', is: 'yes' },
    ],
    ['hard-hold'],
  ),
  // a leg that is not sore is trained too: it loses strength with the other one, and what it may do is no measure for the sore one
  guidanceRule({
    code: 'train-both',
    about: 'prompt',
    when: {
      all: [
        { fact: 'place', is: 'no' },
        { fact: 'sore-legs', oneOf: ['left', 'right'] },
      ],
    },
    proposes: { kind: 'prompt', code: 'train-both', touches: ['loading'] },
  }),
  guidanceRule({
    code: 'pain-limit-high',
    about: 'pain-limit',
    rank: 0,
    when: { fact: 'irritability', is: 'high' },
    numbers: { most: COMPARISON_RULES.painMostIrritable, rise: COMPARISON_RULES.painRiseMost },
    standIns: ['irritability'],
    proposes: { kind: 'limit', code: 'pain', touches: ['loading'], amounts: ['most', 'rise'] },
    sentence: 'pain-limit',
  }),
  guidanceRule({
    code: 'pain-limit',
    about: 'pain-limit',
    rank: 1,
    source: COMPARISON_RULES.painMost.source,
    mark: COMPARISON_RULES.painMost.mark,
    when: notHigh,
    numbers: { most: COMPARISON_RULES.painMost, rise: COMPARISON_RULES.painRiseMost },
    standIns: ['irritability'],
    proposes: { kind: 'limit', code: 'pain', touches: ['loading'], amounts: ['most', 'rise'] },
  }),
];
