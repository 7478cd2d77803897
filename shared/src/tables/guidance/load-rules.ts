import type { Condition } from './condition.ts';
import type { GuidanceRule, RuleNumber } from './rule-entry.ts';
import { guidanceRule, ruleNumber } from './rule-made.ts';

const six = ruleNumber('load-raises-six', 6);
const sixteen = ruleNumber('load-raises-sixteen', 16);
const most = ruleNumber('load-raises-most', 25);

function load(
  code: string,
  rank: number,
  when: Condition,
  numbers: Readonly<Record<string, RuleNumber>>,
  amounts: readonly string[] = [],
): GuidanceRule {
  return guidanceRule({
    code: `load-${code}`,
    about: 'load',
    rank,
    when,
    numbers,
    proposes: { kind: 'load', code, touches: ['loading'], amounts },
  });
}

/**
 * How a load is found from the single-leg raises that counted at body weight. It is never found by a formula from many repetitions, and
 * never from a push without movement.
 */
export const LOAD_RULES: readonly GuidanceRule[] = [
  // as few as that: body weight is already a heavy load
  load('less-than-body', 0, { fact: 'valid-raises', below: 'six' }, { six }),
  load(
    'body-fewer',
    1,
    {
      all: [
        { fact: 'valid-raises', atLeast: 'six' },
        { fact: 'valid-raises', below: 'sixteen' },
      ],
    },
    { six, sixteen, fewer: ruleNumber('load-fewer', 2) },
    ['fewer'],
  ),
  load(
    'body-then-add',
    2,
    {
      all: [
        { fact: 'valid-raises', atLeast: 'sixteen' },
        { fact: 'valid-raises', atMost: 'most' },
      ],
    },
    { sixteen, most, sets: ruleNumber('load-sets', 3), repetitions: ruleNumber('load-repetitions', 15) },
    ['sets', 'repetitions'],
  ),
  load(
    'add-by-trial',
    3,
    { fact: 'valid-raises', above: 'most' },
    {
      most,
      percent: ruleNumber('load-begin-percent', 10, '%'),
      least: ruleNumber('load-trial-least', 12),
      upTo: ruleNumber('load-trial-most', 15),
      reserve: ruleNumber('load-reserve', 1),
    },
    ['percent', 'least', 'upTo', 'reserve'],
  ),
  guidanceRule({
    code: 'load-not-from-hold',
    about: 'prompt',
    source: 'isometric force and calf repetition maximum: Int J Appl Sports Sci 34(1) (agreement 0.62 to 0.77)',
    mark: 'read',
    when: { fact: 'tested-by', is: 'hold' },
    proposes: { kind: 'prompt', code: 'load-not-from-hold', touches: [] },
  }),
];
