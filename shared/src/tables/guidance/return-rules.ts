import { KEEP_UP } from './return-criteria.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { guidanceRule } from './rule-made.ts';
import { RUNNING_NUMBERS } from './running-numbers.ts';

const { growth, window, floorS, floorM } = RUNNING_NUMBERS;
const cap = { growth, window, floorS, floorM };
const { firstS, parts, walkLeastS, walkMostS, daysBetween } = RUNNING_NUMBERS;
const first = { firstS, parts, walkLeastS, walkMostS, daysBetween };
const { leastPerWeek, mostPerWeek, months } = KEEP_UP;
const keepUp = { leastPerWeek, mostPerWeek, months };

/** The cap of a run, a first run where everything that is asked for is met, and what is kept up where nothing is left to ask for. */
export const RETURN_RULES: readonly GuidanceRule[] = [
  // the one session is capped, and not the week alone; it says how long a run is at most, and proposes none for today
  guidanceRule({
    source: growth.source,
    mark: growth.mark,
    code: 'run-cap',
    about: 'run-cap',
    of: 'person',
    when: { fact: 'runs', is: 'yes' },
    numbers: cap,
    standIns: ['runs'],
    proposes: { kind: 'limit', code: 'run-cap', touches: ['loading'], amounts: Object.keys(cap) },
  }),
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
