import { KEEP_UP } from './return-criteria.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { guidanceRule } from './rule-made.ts';
import { RUNNING_NUMBERS } from './running-numbers.ts';

const { firstS, parts, walkLeastS, walkMostS, daysBetween } = RUNNING_NUMBERS;
const first = { firstS, parts, walkLeastS, walkMostS, daysBetween };
const { leastPerWeek, mostPerWeek, months } = KEEP_UP;
const keepUp = { leastPerWeek, mostPerWeek, months };

/** A first run where everything that is asked for is met, and what is kept up where nothing is left to ask for. */
export const RETURN_RULES: readonly GuidanceRule[] = [
  guidanceRule({
    code: 'first-run',
    about: 'run-start',
    when: {
      all: [{ fact: 'return-criteria', is: 'yes' }, { not: { fact: 'running-now', is: 'running' } }],
    },
    numbers: first,
    standIns: ['running-now'],
    proposes: { kind: 'limit', code: 'first-run', touches: ['loading', 'impact'], amounts: Object.keys(first) },
  }),
  guidanceRule({
    code: 'keep-up',
    about: 'full-return',
    when: { fact: 'full-return-met', is: 'yes' },
    numbers: keepUp,
    proposes: { kind: 'limit', code: 'keep-up', touches: ['loading'], amounts: Object.keys(keepUp) },
  }),
];
