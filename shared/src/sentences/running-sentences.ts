import { sentences } from './sentence.ts';

/** What is proposed for a day of running; blanks are filled with the proposal. */
export const RUN_STEP_SENTENCES = sentences('run-step', {
  'not-yet': 'Suggestion: no running yet. Something that is asked for before it is not met, or cannot be told.',
  first: 'Suggestion: a first session of {most} of running in all, whatever was run before.',
  rest: 'Suggestion: no run today; the next one from {from} on.',
  same: 'Suggestion: no more than last time, up to {most}, until it is known how the last session was borne.',
  ease: 'Suggestion: no more than last time, up to {most}, since the pain or the morning after was over its limit.',
  step: 'Suggestion: up to {most}, if it is longer time that goes up. Speed or hills can go up in its place, and only one of them.',
  again: 'Suggestion: begin again with {most} of running in all, after the gap.',
});

/** What would settle a proposal for a day of running. */
export const RUN_SETTLED_BY = sentences('run-settled-by', {
  criteria: 'Settle each point asked for before running that cannot be told.',
  pain: 'Ask for the worst pain in the last session.',
  morning: 'Ask how the morning after it was.',
  'runs-of-days': 'Ask whether there were runs on the days that nobody wrote down. Until then the lowest cap is taken.',
  'time-of-runs': 'Ask how long each run took.',
  'way-of-runs': 'Ask how far each run went.',
});

/** What the cap says of a race day; it is arithmetic of a limit and says nothing of how the tendon will do. */
export const RACE_SENTENCES = sentences('race', {
  yes: 'The race of {race} is within the cap on {day}: the cap comes to it between {earliest} and {repeated}.',
  no: 'The race of {race} is longer than the cap on {day}, which is {longest} at most. The first day on which it would come to it is {earliest}.',
  'cannot-tell': 'It cannot be told whether the race of {race} is within the cap on {day}.',
});

/** What a race day is open by, and what the range takes for granted. */
export const RACE_OPEN_SENTENCES = sentences('race-open', {
  repeats:
    'The cap comes to it on {earliest} if every step is taken, and on {repeated} if {share} of the runs are repeated.',
  beginning:
    'Runs may not begin yet, and nobody knows when they will. If they began now and every step were taken, the cap would come to it on {earliest}.',
  cap: 'From what was written down the cap is {longest} at most on that day. Days or runs are missing.',
  assumed:
    'The later day takes {share} of the runs to be repeated, because of pain, a morning, or a day that was not told; the earlier one takes every step to be taken. Both take a run every {every} days, up to the cap.',
  arithmetic: 'It is arithmetic of a limit, and no forecast of what the tendon bears.',
});

/** A run beside the longest of the thirty days before it. */
export const LONGEST_RUN_SENTENCES = sentences('longest-run', {
  within: 'This run was not more than {growth} over the longest of the {window} days before it.',
  small: 'This run was a little longer than the longest of the {window} days before it.',
  middle: 'This run was much longer than the longest of the {window} days before it.',
  large: 'This run was more than twice the longest of the {window} days before it.',
  doubt:
    'In the runners of this study more overuse injuries of any kind followed such runs. They had no complaint at the start, so that it is no proof for a sore tendon.',
  weeks: 'From one week to the next the study found no relation.',
});

/** What a load estimate leaves open. */
export const LOAD_DOUBT_SENTENCES = sentences('load-doubt', {
  'few-people': 'Load estimate, rough: the loads beside a raise rest on eight people.',
  'methods-differ': 'Two ways of measuring differ by about twice, so that only ranges are shown.',
  'speed-not-in-peak':
    'Quicker steps have a higher peak and there are fewer of them. Which of the two counts is not known.',
  'hills-not-modelled': 'Hills are not counted.',
});

/** Why a person's own flare threshold cannot be told; blanks are numbers of `FLARE_NUMBERS`. */
export const NO_THRESHOLD_SENTENCES = sentences('no-threshold', {
  'few-weeks': 'Cannot tell yet: sessions of at least {weeks} weeks are asked for.',
  'few-flares': 'Cannot tell yet: at least {flares} flares are asked for, and nobody is to seek them.',
  'few-steady': 'Cannot tell yet: at least {steady} sessions with a steady morning after them are asked for.',
  'mornings-missing': 'Cannot tell: too many mornings or loads were not written down, or planned sessions have no log.',
  'one-load': 'Cannot tell: every session had the same load.',
  'no-relation': 'Cannot tell: as far as these sessions show, flares did not follow the load.',
  'beyond-loads': 'Cannot tell: the threshold may lie beyond the loads that were done.',
});

/** What a person's own flare threshold takes for granted. */
export const THRESHOLD_DOUBT_SENTENCES = sentences('threshold-doubt', {
  'days-not-independent': 'It takes each session by itself, though one flare may last over several.',
  'tolerance-unchanged': 'It takes what the tendon bears to be the same in all these weeks.',
  'load-only': 'It knows of nothing but this load. Flares with other reasons make it too low.',
});

/** What is asked for before running, and before going on alone. */
export const RETURN_SENTENCES = sentences('return', {
  'brisk-walk': 'A brisk walk of half an hour with pain of at most {pain}',
  raises: 'At least {raises} single-leg raises that count',
  'ten-raises': 'Ten single-leg raises with pain of at most {pain}',
  'low-grade': 'Low irritability',
  stable: 'At least {days} steady days',
  hops: 'Twenty single-leg hops with pain of at most {pain}, and no rise on the morning after',
  ratio: 'This leg likely at {ratio} of the other one, or more',
  push: 'The target for pushes, where one was set',
  'usual-training': 'Usual training for {days} days, with morning pain of at most {pain}',
  questionnaire: 'An important change on a questionnaire',
  endurance: 'Endurance within its reference',
  strength: 'Strength within its reference',
  sides: 'No difference of the sides that is likely to matter: at {line} of the other one, or more',
});
