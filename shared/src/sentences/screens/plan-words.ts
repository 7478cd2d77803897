import { sentences } from '../sentence.ts';

/** Words of the page where the plan is noted. Nothing is proposed on it. */
export const PLAN_WORDS = sentences('screen.plan', {
  title: 'Plan',
  explain: 'Note what you agreed on, in a few short lines. Nothing is proposed here.',
  lines: 'What is to be done',
  side: 'For which leg',
  left: 'left leg',
  right: 'right leg',
  both: 'both legs',
  own: 'In your own words',
  'own-help': 'One line each, {most} at most. Do not write a name.',
  'too-many': 'More than {most} lines: leave some out.',
  keep: 'Keep this plan',
  none: 'No plan noted',
  'not-kept': 'The plan could not be kept on the device. Nothing before it is lost; try again.',
});

/**
 * Lines that are often noted, for choosing; the text is what is kept. They are labels of what a clinician decided, and no
 * advice. Common practice, no source.
 */
export const PLAN_CHOICES = sentences('plan-choice', {
  holds: 'Holds, slightly up on the toes',
  'two-leg-raises': 'Heel raises on two legs',
  'one-leg-raises': 'Heel raises on one leg',
  'seated-raises': 'Seated heel raises',
  'floor-only': 'Heel never below the floor line',
  'less-running': 'Less running for now',
  'heel-lift': 'Heel lift in the shoe',
  'go-on': 'Go on as before',
  'test-again': 'Test again as agreed',
});
