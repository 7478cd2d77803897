import { sentences } from '../sentence.ts';

/** Words where the mass on the plate is not the mass that was typed, in kilograms. */
export const MASS_CHOICE_WORDS = sentences('screen.mass-choice', {
  ask: 'Which mass counts? Both are kept. Work and multiples of body weight follow from the one that counts.',
  plate: 'The {shown} kg of the plate count',
  typed: 'The {told} kg that were typed count',
  'counts-plate':
    'The mass of the plate counts: {shown} kg (to {u} kg, its own error not in it). Typed were {told} kg. Both are kept.',
  'counts-typed': 'The typed mass counts: {told} kg. The plate shows {shown} kg. Both are kept.',
  'not-kept': 'This was not kept. Try again.',
});
