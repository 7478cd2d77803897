import { REST_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { restTime } from '../../../apps/dashboard/src/pages/rest-time.ts';

test('what is left, of how much; a rest of unknown length is said and never shown as a whole one', () => {
  expect(restTime(65, 120).values).toContain('1:05');
  expect(restTime(65, 120).values.join(' ')).toContain('2:00');
  expect(restTime(undefined, 120).values).toEqual([REST_WORDS['no-stop-time'].text]);
});
