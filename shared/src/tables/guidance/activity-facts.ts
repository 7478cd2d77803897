import type { FactEntry } from './fact-entry.ts';
import { codeFact, numberFact } from './fact-made.ts';
import { RUN_LOADS } from './run-loads.ts';

const pain = [0, 10] as const;
const open = [0, null] as const;
const yesNo = ['yes', 'no'] as const;

/** What is asked about running and about standing or walking at work; a missing answer is taken to be the one that asks for more care. */
export const ACTIVITY_FACTS: readonly FactEntry[] = [
  codeFact('runs', 'person', yesNo, { standIn: 'yes' }),
  /** whether running is done now, or paused for the tendon */
  codeFact('running-now', 'person', ['running', 'paused', 'not-told'], { standIn: 'not-told' }),
  codeFact('job-on-feet', 'person', yesNo, { standIn: 'yes' }),
  /** whether it was asked how much of the running goes up or down hill: hills are not modelled */
  codeFact('hills-asked', 'person', yesNo, { standIn: 'no' }),
  /** how the tendon load of the last run or jumps was graded, see `RUN_LOADS`; the heaviest where it was not */
  codeFact('last-load', 'leg', ['light', 'medium', 'high'], {
    source: RUN_LOADS.high.source,
    mark: RUN_LOADS.high.mark,
    standIn: 'high',
    graded: true,
  }),
  /** whole days since that session without a medium or high tendon load */
  numberFact('recovery-days', 'leg', 'd', open),
  numberFact('days-since-run', 'person', 'd', open),
];

/** What a return to running, and to everything, is held against. */
export const RETURN_FACTS: readonly FactEntry[] = [
  /** the worst in a brisk walk of half an hour */
  numberFact('pain-brisk-walk', 'leg', '1', pain),
  /** the worst in ten single-leg raises */
  numberFact('pain-ten-raises', 'leg', '1', pain),
  /** days since the last morning, session or week that was no steady one */
  numberFact('days-stable', 'leg', 'd', open),
  /** the worst in twenty single-leg hops */
  numberFact('pain-twenty-hops', 'leg', '1', pain),
  /** pain of the morning after those hops, over the usual one */
  numberFact('rise-after-hops', 'leg', '1', [-10, 10]),
  /** whether the other leg may stand for a comparison at all */
  codeFact('ratio-allowed', 'leg'),
  /** this leg of the other one; its bounds are those that the comparison calls likely */
  numberFact('side-ratio', 'leg', '1', open),
  codeFact('push-target-set', 'leg'),
  /** isometric peak over the target that was set */
  numberFact('push-of-target', 'leg', '1', open),
  /** days of usual training, without a break */
  numberFact('days-usual-training', 'leg', 'd', open),
  /** the worst of the mornings in those days */
  numberFact('worst-morning-lately', 'leg', '1', pain),
  /** a change of the total of a questionnaire that its table calls important */
  codeFact('questionnaire-changed', 'leg'),
  codeFact('endurance-in-reference', 'leg'),
  codeFact('strength-in-reference', 'leg'),
  /** every criterion of a full return; what cannot be told is missing */
  codeFact('full-return-met', 'leg'),
];
