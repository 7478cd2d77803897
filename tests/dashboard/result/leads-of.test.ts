import { expect, test } from 'vitest';
import { leadsOf } from '../../../apps/dashboard/src/result/leads-of.ts';

test('a leg is named before an answer that does not begin with it, and once', () => {
  expect(
    leadsOf([
      { side: 'left', lead: 'Left did more than before.' },
      { side: 'right', lead: 'no earlier visit' },
    ]),
  ).toEqual([
    { side: 'left', text: 'Left did more than before.' },
    { side: 'right', text: 'Right: no earlier visit' },
  ]);
});
