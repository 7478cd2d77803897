import { IRRITABILITY_INPUTS } from '../irritability-grades.ts';
import type { FactEntry } from './fact-entry.ts';
import { codeFact, numberFact } from './fact-made.ts';
import { TOLERANCE_RUNGS } from './tolerance-rungs.ts';

const pain = [0, 10] as const;
const rise = [-10, 10] as const;
const open = [0, null] as const;
const any = [-10_000, 10_000] as const;

/** One session with the morning after it; `last` is the newest, `before` the one before it. */
function ofSession(which: 'last' | 'before'): readonly FactEntry[] {
  return [
    /** what was done of what was planned: the least of sets, repetitions and tempo */
    numberFact(`share-done-${which}`, 'leg', '1', open),
    numberFact(`pain-during-${which}`, 'leg', '1', pain),
    /** the worst in the hours after it, up to the night */
    numberFact(`pain-after-${which}`, 'leg', '1', pain),
    numberFact(`exertion-${which}`, 'leg', '1', pain),
    /** pain at the first steps of the morning after, over its usual level */
    numberFact(`morning-rise-${which}`, 'leg', '1', rise),
    /** minutes of stiffness of that morning over the usual ones */
    numberFact(`stiffness-rise-${which}`, 'leg', 'min', any),
    /** minutes of stiffness of that morning over twice the usual ones */
    numberFact(`stiffness-over-double-${which}`, 'leg', 'min', any),
  ];
}

/** What sessions and mornings say of a leg. */
export const COURSE_FACTS: readonly FactEntry[] = [
  ...ofSession('last'),
  ...ofSession('before'),
  /** sessions that were logged in a row at the dose of now */
  numberFact('sessions-logged', 'leg', '1', open),
  /** whether the newest session was done at the dose of now, and whether the level was lowered since */
  codeFact('last-at-dose', 'leg', ['yes', 'no'], { standIn: 'yes' }),
  codeFact('lowered-since', 'leg', ['yes', 'no'], { standIn: 'no' }),
  /** whether the last two sessions and the mornings after them were told with all that a step goes by: pain in them and after them, effort, share done */
  codeFact('told-in-full', 'leg'),
  numberFact('planned-two-weeks', 'leg', '1', open),
  /** share of the planned sessions of two weeks without a log, or with nothing done */
  numberFact('left-out-two-weeks', 'leg', '1', [0, 1]),
  /** whether the newest planned session was logged */
  codeFact('last-logged', 'leg'),
  /** whether the morning after the newest session was told */
  codeFact('morning-logged', 'leg', ['yes', 'no', 'not-yet']),
  /** pain of the morning after the newest session, and what this morning is beside the usual ones */
  numberFact('morning-pain-last', 'leg', '1', pain),
  codeFact('morning-now', 'leg', ['flare', 'no-flare', 'not-told'], { standIn: 'not-told' }),
  /** planned sessions up to now without a log, the newest in a row: unknown, and not known to be left out */
  numberFact('missed-in-row', 'leg', '1', open),
  codeFact('missed-asked', 'leg', ['yes', 'no'], { standIn: 'no' }),
  numberFact('days-since-session', 'leg', 'd', open),
  /** days of the last seven with too much pain in a session or on the morning after; what was not told widens the bounds */
  numberFact('hard-days', 'leg', '1', open),
  /** weeks with a middle value of the mornings, and its slope over them, per week (Theil-Sen) */
  numberFact('morning-weeks', 'leg', '1', open),
  numberFact('morning-slope', 'leg', '1', rise),
  /** lower bound of that slope, see `TREND_NUMBERS`: above 0 where chance alone seldom makes such a rise */
  numberFact('morning-slope-least', 'leg', '1', rise),
  /** the middle values of this week beside those of the last one */
  codeFact('week-trend', 'leg', ['rising', 'not-rising', 'too-few'], { standIn: 'too-few' }),
  numberFact('days-since-heavy', 'leg', 'd', open),
  /** since bounces or hops; where none was logged, at least as long as anything was */
  numberFact('days-since-bounces', 'leg', 'd', open),
  /** the highest rung that was done with pain up to the limit and a morning after that passed */
  codeFact('rung-held', 'leg', ['not-tried', 'none', ...TOLERANCE_RUNGS.map(({ code }) => code)], {
    standIn: 'not-tried',
  }),
];

/** What is left to change in the dose of a leg, and where its programme stands. */
export const DOSE_FACTS: readonly FactEntry[] = [
  codeFact('programme-begun', 'leg', ['yes', 'no'], { standIn: 'no' }),
  /** on the floor with one leg: all sets of the most repetitions were done */
  codeFact('level-two-met', 'leg', ['yes', 'no'], { standIn: 'no' }),
  /** week of heavy slow training that is being done; 0 is none yet */
  numberFact('heavy-slow-week', 'leg', '1', open),
  /** the dose was made less after a session that was too much, and is not back yet */
  codeFact('dose-eased', 'leg', ['yes', 'no'], { standIn: 'no' }),
  codeFact('week-step-due', 'leg', ['yes', 'no'], { standIn: 'no' }),
  /** from the repetitions of now to the most of the level */
  numberFact('repetitions-left', 'leg', '1', open),
  numberFact('range-left', 'leg', 'deg', [0, 90]),
  codeFact('load-left', 'leg'),
  codeFact('speed-left', 'leg'),
  codeFact('impact-left', 'leg'),
  /** what a return to running asks for is met, as its own rules say */
  codeFact('return-criteria', 'leg'),
  /** what the leg was tested by */
  codeFact('tested-by', 'leg', ['raises', 'hold', 'both', 'nothing']),
  numberFact('days-in-programme', 'leg', 'd', open),
  numberFact('share-six-weeks', 'leg', '1', open),
  /** a change over six weeks that is larger than the detectable one of four in five */
  codeFact('changed-six-weeks', 'leg'),
  codeFact('important-change', 'leg'),
  /** as graded for the irritability */
  numberFact('morning-stiffness', 'leg', 'min', open, {
    source: IRRITABILITY_INPUTS.morningStiffness.source,
    mark: IRRITABILITY_INPUTS.morningStiffness.mark,
  }),
  codeFact('rest-pain', 'leg', Object.keys(IRRITABILITY_INPUTS.restPain.grades)),
];
