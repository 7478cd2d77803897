import { decodeBlocks, encodeBlock } from '@surae/records';
import { expect, test } from 'vitest';
import { lastKeptS } from '../../../apps/dashboard/src/live/kept-trial.ts';
import { madeChoice, trialBytes } from '../../support/made-pull-visit.ts';

test('what is kept ends with the last whole block; a block that was cut off is lost, and nothing else', () => {
  const { pieces } = trialBytes(madeChoice('left'), 0, 70);
  const whole = pieces.slice(0, 4);
  // 400 samples at 200 a second, from 70 s on, jitter aside
  expect(lastKeptS(whole)).toBeGreaterThan(71.9);
  expect(lastKeptS(whole)).toBeLessThan(72.1);
  expect(lastKeptS([...whole, pieces[4].subarray(0, 50)])).toBe(lastKeptS(whole));
  expect(lastKeptS([])).toBeUndefined();
  // written last, and earlier all the same
  const late = encodeBlock({ ...decodeBlocks(whole.slice(1, 2))[0], isLate: true });
  expect(lastKeptS([...whole, late])).toBe(lastKeptS(whole));
});
