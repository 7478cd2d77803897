import { expect, test } from 'vitest';
import { stepAskedFor } from '../../../apps/dashboard/src/journey/step-asked-for.ts';

test('it names the step and reaches the page of the visit out of every element', () => {
  const event = stepAskedFor('choice');
  expect(event).toMatchObject({ type: 'step-asked-for', detail: 'choice', bubbles: true, composed: true });
});
