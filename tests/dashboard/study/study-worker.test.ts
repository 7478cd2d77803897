import { expect, test } from 'vitest';
import { workersAtOnce } from '../../../apps/dashboard/src/study/study-worker.ts';

test('all cores but one work, and one where there is no other', () => {
  expect([1, 2, 8].map(workersAtOnce)).toEqual([1, 1, 7]);
});
