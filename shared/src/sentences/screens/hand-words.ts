import { sentences } from '../sentence.ts';

/** Words of a set that somebody counts by hand. */
export const HAND_WORDS = sentences('screen.hand', {
  source: 'count by hand, no sensor',
  explain:
    'You tap once for each raise. Only the count is kept, and the tempo of your taps. Heights and work are not measured, and no rule is judged but what you mark.',
  error: 'A count by hand is taken to be right within two repetitions (common practice, no source).',
  tap: 'Tap for each raise, or press forward on a presenter',
  'tap-label': 'Count one raise',
  back: 'Take the last one back',
  counted: '{n}, counted by hand',
  'taken-back': 'One taken back: {n} counted by hand',
  hidden:
    'At {time} s this page was hidden for {seconds} s. Nothing was counted in that time: do the set again if it matters.',
  label: 'counted by hand',
  between: 'between {low} and {high}, as far as a count by hand can tell',
  told: '{what}, counted by hand',
  'ended-with': 'Repetitions counted by hand: {count}.',
  tried: '{leg}: {attempted} counted by hand. No rule was judged.',
  'tried-marked': '{leg}: {attempted} counted by hand, {marked} of them marked with a fault. No other rule was judged.',
  'no-height': 'Counted by hand: height not measured.',
  'no-trace': 'Taps have no height to draw. Every tap, and every one that was taken back, is in the samples.',
  'score-both': 'Repetitions that count, counted by hand',
  'score-left': 'Repetitions that count, left counted by hand',
  'score-right': 'Repetitions that count, right counted by hand',
});

/** Words of the switch between the hands that hold the device. */
export const HAND_SWITCH_WORDS = sentences('screen.hand-switch', {
  'for-right': 'Buttons for the right thumb: change',
  'for-left': 'Buttons for the left thumb: change',
});
