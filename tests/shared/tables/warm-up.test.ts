import { WARM_UP } from '@surae/shared';
import { expect, test } from 'vitest';

test('ten raises, a minute, three practice raises, each with where it comes from', () => {
  expect(Object.values(WARM_UP).map(({ value }) => value)).toEqual([10, 60, 3, 0.85]);
  for (const { source, mark } of Object.values(WARM_UP)) expect(`${source}${mark}`.length).toBeGreaterThan(10);
});
