import { sentences } from '../sentence.ts';

/** Words of the page that asks how a set ended. */
export const ENDING_WORDS = sentences('screen.ending', {
  'title-left': 'Left leg: how did it end?',
  'title-right': 'Right leg: how did it end?',
  'live-count': 'Repetitions counted while it ran: {count}.',
  reason: 'Why did the set end?',
  'tester-only': 'Choose the reason to go on.',
  pain: 'Most pain in the tendon during the set',
  'pain-low': 'no pain',
  'pain-high': 'worst thinkable',
  sharp: 'Was it sharp or tearing?',
  'sharp-yes': 'yes',
  'sharp-no': 'no',
  'pain-where': 'A burning calf muscle does not count here: ask which it was.',
  'pain-over': 'Above {limit}, the pain limit of this protocol.',
  exertion: 'How hard was it at the end?',
  'exertion-low': 'no effort',
  'exertion-high': 'nothing left',
  'not-asked': 'not asked',
  pop: 'a pop, or a sudden give',
  tolerance: 'The count shows what was tolerated before the pain limit, not what the calf could do.',
  accept: 'Accept this set',
  redo: 'Or do this leg again, because of',
  'redo-left': 'Or do the left leg again, because of',
  'redo-right': 'Or do the right leg again, because of',
  'redo-why': 'The set just recorded is kept, and not counted.',
  'redo-undo-left': 'The last set of the left leg was set aside, and is kept.',
  'redo-undo-right': 'The last set of the right leg was set aside, and is kept.',
  'redo-undo': 'Undo: count that set after all',
  'redo-tired': 'A second set on the same leg is done on a tired calf: leave ten minutes before it.',
});

/** Short names of the ends, for choosing; the codes are the reasons that protocols list. */
export const END_CHOICES = sentences('end-choice', {
  fatigue: 'tired out',
  pain: 'pain',
  'other-stop': 'another reason: cramp, fear, breath, balance',
  'heel-cannot-leave': 'heel could not leave the surface',
  'two-prompted-faults': 'two faults in a row after a prompt',
  safety: 'tester stopped it for safety',
  technical: 'something technical',
  cap: 'preset number reached',
  'fixed-count-done': 'fixed number done',
  'trials-done': 'all trials done',
});

/** Why a set is done again; the code is what is stored. */
export const REDO_REASONS = sentences('redo-reason', {
  'set-up': 'sensor or set-up',
  misunderstood: 'task misunderstood',
  interrupted: 'interrupted',
  'wrong-side': 'other leg was tested',
  other: 'another reason',
});

/** What is done when a test was stopped for safety, in large words. Common practice, no source. */
export const STOP_STEPS = sentences('stop-step', {
  sit: 'Sit down. No load on the leg.',
  breath: 'Chest pain, breathless or faint: emergency call.',
  pop: 'A pop, a gap, a sudden give: same-day referral, as for a rupture.',
  write: 'No further test today. Write down what happened.',
});

/**
 * What fills the screen after a pop or a sudden give; the line of the safety list about a rupture, with its next step, stands among it.
 * Gap and calf squeeze: Maffulli 1998 Am J Sports Med 26:266; the rest is common practice, no source.
 */
export const RUPTURE_WORDS = sentences('screen.rupture', {
  'title-left': 'Left leg: a pop, or a sudden give',
  'title-right': 'Right leg: a pop, or a sudden give',
  sit: 'Sit down. No weight on this leg; do not try it out.',
  look: 'Feel along the tendon for a gap. Squeeze the calf: does the foot point down?',
  breath: 'Chest pain, breathless or faint: emergency call.',
  kept: 'What was recorded is kept. It gives no score.',
  keep: 'Keep this: no further test today',
  back: 'It was something else',
});
