import { sentences } from '../sentence.ts';

/** Words of the page where the plan is written. What stands there is the clinician's alone. */
export const PLAN_WORDS = sentences('screen.plan', {
  title: 'Plan',
  explain: 'You write the plan; only what you keep here reaches the pages for the patient.',
  locked:
    'No exercise and no run can be planned: a ticked line of the safety list, or a list that was not gone through, keeps from loading. Advice can be noted.',
  'rupture-first':
    'Not one raise counted. Look for signs of a rupture first: until then each exercise and each run asks for a reason.',
  'lost-raise':
    'No exercise and no run can be planned: a raise is lost, said to be new and sudden. The first line of the safety list comes first. Advice can be noted.',
  'so-far': 'The plan so far, from {day}',
  held: 'Held back because of what was found since. These lines are not on the pages for the patient:',
  'take-over': 'Take over the plan so far',
  'end-plan': 'End the plan: nothing from today on',
  today: 'The plan from today',
  empty: 'Nothing is planned yet.',
  begun: 'Begun on {day} and not kept yet. Look through these lines, then keep them or take them away.',
  'take-away': 'Take all of these lines away',
  add: 'Add an exercise',
  'add-explain':
    'Each begins from common numbers (common practice, no source). Look at each number before you keep it.',
  'add-run': 'Running',
  'run-why': 'Why this limit, as the patient reads it',
  'run-why-none': 'not said',
  'by-time': 'Limit by minutes',
  'by-way': 'Limit by kilometres',
  advice: 'Advice',
  remove: 'Take this out',
  'remove-what': 'Take this out: {what}',
  undo: 'Undo the last press',
  side: 'For which leg',
  left: 'left leg',
  right: 'right leg',
  both: 'both legs',
  own: 'In your own words',
  'own-help': 'One line each. Do not write a name. A plan has {most} lines at most.',
  'too-many': 'More than {most} lines: leave some out.',
  rules: 'A line above needs a reason, or is to be taken out.',
  reason: 'Why you go over it (kept with the plan)',
  keep: 'Keep this plan',
  none: 'No plan noted',
  unchanged: 'Nothing changes: the plan from {day} goes on',
  'not-kept': 'The plan could not be kept on the device. Nothing before it is lost; try again.',

  'tension-raise': 'Time under tension: {count} times {each} s = {set} s a set, {sets} sets = {all} s.',
  'tension-holds': 'Time under tension: {count} holds of {each} s = {set} s a set, {sets} sets = {all} s.',
  'tension-hold': 'Time under tension: {each} s a hold, {sets} holds = {all} s.',

  sets: 'Sets',
  repetitions: 'Repetitions',
  holdS: 'Hold',
  upS: 'Up in',
  topS: 'At the top',
  downS: 'Down in',
  restS: 'Rest between sets',
  loadKg: 'Weight',
  lowestFootDeg: 'Lowest heel',
  painLimit: 'Pain limit',
  perWeek: 'Times a week',
  weeks: 'For',
  runMin: 'At most',
  runM: 'At most',
  daysBetween: 'Days between runs',
  runPartMin: 'Run in turns of',
  walkPartMin: 'Walk in turns of',

  less: '{what}: less',
  more: '{what}: more',
  open: 'left open',
  'open-loadKg': 'none',
  'open-weeks': 'no end',
  'value-s': '{value} s',
  'value-kg': '{value} kg',
  'value-deg-level': 'level',
  'value-deg-above': '{value}° above level',
  'value-deg-below': '{value}° below level',
  'value-of-ten': '{value} of 10',
  'value-weeks': '{value} weeks',
  'value-week': '1 week',
  'value-min': '{value} min',
  'value-km': '{value} km',
  'value-no-run': 'no run',
});

/** Why a line of a plan is not kept as it is, as it stands beside it. */
export const PLAN_RULE_SENTENCES = sentences('plan-rule', {
  'safety-lock': 'The safety list keeps from loading. Take this line out.',
  'sudden-loss': 'A raise is lost, said to be new and sudden. Take this line out.',
  'rupture-first':
    'Not one raise counted, and signs of a rupture were not looked for. Look for them first, or give a reason here.',
  'isometric-lock': 'A ticked line of the safety list keeps from a hard effort without movement.',
  'insertion-step':
    'The heel bone is sore. At the edge of a step the heel drops and the tendon is pressed against the bone.',
  'insertion-stretch': 'The heel bone is sore. A stretch of the calf presses the tendon against the bone.',
  'insertion-range': 'The heel bone is sore: the heel goes no lower than level, unless you give a reason here.',
});

/** What a rule against a line looked at, and how firmly it stands. */
export const PLAN_RULE_READS = sentences('plan-rule-reads', {
  'safety-lock':
    'The safety list of this visit: a line that keeps from loading is ticked, or the list was not gone through.',
  'sudden-loss': 'The tries before the test: a raise could not be done, said to be new and sudden.',
  'rupture-first': 'The raises of this leg: not one counted, and whether signs of a rupture were looked for.',
  'isometric-lock': 'The safety list of this visit: a line that keeps from a hard effort without movement is ticked.',
  'insertion-step': 'Where each leg is sore, and that the exercise is done at the edge of a step.',
  'insertion-stretch': 'Where each leg is sore, and that the exercise stretches the calf.',
  'insertion-range': 'Where each leg is sore, and how far down the heel goes.',
  leg: '{leg}: {where}',
  'not-asked': 'not asked in this visit',
  'sure-never': 'It stands as long as that is so, and no reason goes over it here.',
  'sure-reason': 'It stands unless a clinician gives a reason, which is kept in the plan.',
});

/** What would change a rule against a line. */
export const PLAN_RULE_CHANGED_BY = sentences('plan-rule-changed-by', {
  'safety-lock': 'The safety list is gone through again, and no line that keeps from loading is ticked.',
  'sudden-loss': 'A rupture was looked for and there is none, and the loss is no longer noted as new and sudden.',
  'rupture-first': 'The signs of a rupture were looked for and there is none, or a clinician gives a reason.',
  'isometric-lock': 'The line is no longer ticked, or a clinician gives a reason.',
  'insertion-step':
    'The heel bone is no longer sore, another leg or exercise is chosen, or a clinician gives a reason.',
  'insertion-stretch':
    'The heel bone is no longer sore, another leg or exercise is chosen, or a clinician gives a reason.',
  'insertion-range': 'The heel bone is no longer sore, the heel stays at level, or a clinician gives a reason.',
});

/** What a line of a plan tells, to the clinician and to who does it: short, plain, without a judgement. */
export const PLAN_LINE_WORDS = sentences('plan-line', {
  line: '{what}: {how}',
  running: 'Running',
  left: 'left leg',
  right: 'right leg',
  both: 'both legs',
  'in-turn': 'each leg in turn',
  'sets-of': '{sets} sets of {count}',
  'sets-hold': '{sets} holds of {seconds} s',
  'sets-of-holds': '{sets} sets of {count} holds of {seconds} s',
  'only-sets': '{sets} sets',
  'only-count': '{count} times',
  tempo: '{up} s up and {down} s down',
  'tempo-top': '{up} s up, {top} s at the top, {down} s down',
  load: 'with {value} {unit}',
  'range-level': 'heel never below the floor line',
  'range-above': 'heel never lower than {degrees}° above the floor line',
  'range-below': 'heel down to {degrees}° below the floor line',
  rest: '{seconds} s rest between sets',
  pain: 'pain up to {limit} of 10',
  'every-day': 'every day',
  'twice-a-day': 'twice a day',
  'once-a-week': 'once a week',
  'per-week': '{count} times a week',
  until: 'until {day}',
  'no-running': 'no running for now',
  'run-minutes': '{minutes} min of running at most',
  'run-way': '{way} km at most',
  'run-walk': 'run {run} min and walk {walk} min in turn',
  'day-between': 'a day without a run between two',
  'days-between': '{days} days without a run between two',
  'foot-level': 'Picture. A foot on the floor. The heel never goes below the floor line.',
  'foot-above': 'Picture. A foot with its heel above the floor line. The heel stays up.',
  'foot-below': 'Picture. A foot on the edge of a step. The heel may go below the floor line, as far as it is drawn.',
  'floor-line': 'floor line',
});
