import { sentences } from '../sentence.ts';

/** Words of the page on which the test of a visit is chosen. */
export const CHOICE_WORDS = sentences('screen.choice', {
  title: 'What is tested today?',
  explain: 'Both legs are tested in the same way.',
  'explain-left': 'The left leg alone is tested.',
  'explain-right': 'The right leg alone is tested.',
  'last-time': 'As last time',
  proposed: 'Proposed',
  'also-proposed': 'Also proposed',
  'last-of': '{date}: {surface}, {place}.',
  'last-counts': 'Left {left}, right {right} repetitions.',
  'no-count': 'none',
  'last-blocked': 'The test of {date} is not for today. It stands below, with the reason.',
  'leg-left': 'Left tendon: {grade}.',
  'leg-right': 'Right tendon: {grade}.',
  low: 'low irritability',
  moderate: 'moderate irritability',
  high: 'high irritability',
  'not-graded': 'irritability not graded, treated as {grade}; answers missing: {missing} of {all}',
  'why-few':
    'Fewer than {limit} single-leg raises last time ({count}). Raises on both legs fit better, but this visit has no step for them: count them by hand, or choose one of these.',
  order: 'Of two tests on one day the push comes first: raises to fatigue cost about 20 % of the greatest force.',
  others: 'Other tests',
  blocked: 'Not today',
  'go-over': 'Go on all the same',
  'go-over-why': 'Why? It is kept with the visit.',
  'nothing-left': 'No test is left for today. Go back to an earlier answer, or leave the visit here.',
  floor: 'level floor',
  incline10: 'board of 10 degrees, toes up',
  step: 'edge of a step',
  seated: 'seated',
  standing: 'standing',
  'long-sitting': 'long sitting',
  foot: 'sensor on top of the foot',
  heel: 'string at the heel',
  trunk: 'sensor at the lower back',
  platform: 'force platform',
  inline: 'cell in line',
  'legs-left': 'left leg',
  'legs-right': 'right leg',
  'legs-both': 'both legs',
  'gone-over': 'Chosen although: {rule} Reason: {reason}.',
  change: 'Choose another test',
});

/** Why a test is not for today, as it stands beside it. */
export const CHOICE_BLOCK_SENTENCES = sentences('choice-block', {
  'insertion-not-floor': 'The heel bone is sore ({legs}), and here the heel starts below the toes. Level floor only.',
  'high-to-fatigue': 'High irritability ({legs}): no test to fatigue. Ten raises at the beat, or a push.',
  'step-not-low': 'Over a step only where irritability is known to be low ({legs}).',
  'ladder-below': 'A leg that was tried today stopped at ten raises or before ({legs}).',
  'sudden-loss': 'A raise is lost, said to be new and sudden ({legs}): the first line of the safety list comes first.',
  'isometric-lock': 'A ticked line of the safety list keeps from a maximal isometric effort.',
});

/** Reasons with which a clinician goes over a rule that allows it; the code is what is stored. */
export const CHOICE_REASONS = sentences('choice-reason', {
  'tried-today': 'tried today without more pain',
  'same-as-before': 'the earlier test was done so and is to be repeated',
  'agreed-with-person': 'talked over with the person',
});
