import { sentences } from '../sentence.ts';

/** Words of the page that ends a visit. */
export const HAND_OVER_WORDS = sentences('screen.hand-over', {
  title: 'Hand over and end the visit',
  explain: 'One press ends the visit. The page for the patient can be had again at any time; no name is on it.',
  plan: 'The plan',
  'no-plan': 'No plan was noted.',
  'plan-line': '{what}: {side}',
  print: 'Print the page for the patient',
  file: 'Give it as a file',
  code: 'Show a code for their phone',
  nothing: 'Give nothing',
});
