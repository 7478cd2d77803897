import { sentences } from '../sentence.ts';

/** What comes next for somebody who was not tested for an answer to the safety list: its lines by their ids, in the words of who reads the page. */
export const LEGS_NEXT_WORDS = sentences('screen.legs-next', {
  'not-tested': 'You were not tested on this day, because of what you told us before the test. That comes first:',
  'safety.rupture': 'Have your calf looked at by a doctor today.',
  'safety.clot':
    'Have your calf looked at by a doctor today. Chest pain or hard to breathe? Ring the emergency number of your country now.',
  'safety.infection': 'Have this looked at by a doctor today.',
  'safety.zero-raises':
    'A rise on one leg was not possible. If that is new and came suddenly, have your calf looked at by a doctor today.',
  'safety.bone': 'Have the bone looked at before you load the leg.',
  'safety.fluoroquinolone': 'Ask who gave you the medicine before you load the leg or do exercises.',
  'safety.steroid': 'Ask a doctor before the leg is tested.',
  'safety.surgery-fracture': 'You and your clinic decide if your leg is tested, and how.',
  'safety.nerve-vessel': 'Have this looked at by a doctor first.',
});
