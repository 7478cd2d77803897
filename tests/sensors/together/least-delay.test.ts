import { cableDelay, radioDelay } from '@surae/sensors';
import { expect, test } from 'vitest';

test('a delay is never negative, and a radio is not quicker than a cable', () => {
  for (const { fromMs, toMs } of [radioDelay, cableDelay]) {
    expect(fromMs).toBeGreaterThanOrEqual(0);
    expect(toMs).toBeGreaterThan(fromMs);
  }
  expect(radioDelay.toMs).toBeGreaterThanOrEqual(cableDelay.toMs);
});
