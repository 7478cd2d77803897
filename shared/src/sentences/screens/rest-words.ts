import { sentences } from '../sentence.ts';

/** Words of the rest between the two sides. */
export const REST_WORDS = sentences('screen.rest', {
  title: 'Rest',
  'title-over': 'The rest is over',
  'next-left': 'The left leg comes next.',
  'next-right': 'The right leg comes next.',
  left: 'left of {whole}',
  'early-price':
    'Before {whole} are over, no ratio of the two sides is given for this visit. The counts themselves stay.',
  'end-early': 'End the rest now',
  'go-on-left': 'Go on with the left leg',
  'go-on-right': 'Go on with the right leg',
  'no-stop-time': 'When the first set stopped was not recorded: the length of the rest is not known.',
  'one-minute': 'One minute left.',
  'half-a-minute': 'Thirty seconds left.',
  over: 'The rest is over.',
  'first-left': 'Left leg',
  'first-right': 'Right leg',
  attempted: 'repetitions attempted',
  valid: 'of them valid: {count}',
  counted: 'counted while it ran',
  'not-counted': 'not measured',
});

/** Words where left and right were mixed up; `{leg}` and `{other}` are the words left and right. */
export const SWAP_WORDS = sentences('screen.swap', {
  one: 'It was the {other} leg, not the {leg} one: name it so',
  both: 'Left and right were mixed up: change their names',
  back: 'Change the names back',
  done: 'The names of the legs were changed at {time}. What was recorded is the same; that it was changed is kept.',
});
