import { sentences } from '../sentence.ts';

/** Words where one leg may have been tested twice; `{leg}` and `{other}` are the words left and right. */
export const SAME_LEG_WORDS = sentences('screen.same-leg', {
  'rest-left': 'Now change sides: stand on the left leg, and put the sensor on it if it is worn on the leg.',
  'rest-right': 'Now change sides: stand on the right leg, and put the sensor on it if it is worn on the leg.',
  'ready-unmoved':
    'The sensor lies as it lay on the {other} leg, turned by {turned} degrees. Is it on the {leg} leg now? If not, put it there first.',
  'likely-title': 'Was it the {other} leg once more?',
  likely:
    'The sensor lay as it lay on the {other} leg, turned by {turned} degrees. That is not proof: whoever was there can say.',
  'heights-too': 'The reference heights are alike too, within {share} %. Two legs of one person can be.',
  title: 'Was the {other} leg tested twice?',
  'cannot-tell': 'Nothing that was recorded can tell whether both were the same leg. Whoever was there can say.',
  tired: 'As a rule the first one counts: in the second the leg was tired already. Both are kept.',
  'first-counts': 'The {other} leg twice: the first counts',
  'second-counts': 'The {other} leg twice: the second counts',
  'was-other': 'No, it was the {leg} leg',
  'told-first':
    'The {other} leg was tested twice. The first one counts, the second is kept. The {leg} leg has not been tested in this test yet.',
  'told-second':
    'The {other} leg was tested twice. The second one counts, done with a tired leg; the first is kept. The {leg} leg has not been tested in this test yet.',
  'told-first-done': 'The {other} leg was tested twice. The first one counts, the second is kept.',
  'told-second-done':
    'The {other} leg was tested twice. The second one counts, done with a tired leg; the first is kept.',
  'count-first': 'Let the first one count',
  'count-second': 'Let the second one count',
  undo: 'Take back what was said of it',
});
