import { expect, test } from 'vitest';
import { sideDash } from '../../../apps/dashboard/src/charts/side-dash.ts';

test('the line of the right leg is dashed, and no other', () => {
  expect([...sideDash('right')].length).toBe(2);
  expect([sideDash('left'), sideDash(null), sideDash(undefined)]).toEqual([[], [], []]);
});
