import { expect, test } from 'vitest';
import { NOTHING_TOLD } from '../../../packages/study/src/listed/told.ts';
import { trialContext } from '../../../packages/study/src/listed/trial-context.ts';

test('reason and ratings that were told reach the analysis; zero is told, and empty is not', () => {
  expect(
    trialContext({ ...NOTHING_TOLD, end_reason: 'fatigue', exertion: 10, pain_peak: 0, surface: 'floor' }),
  ).toEqual({
    endReason: 'fatigue',
    exertion: 10,
    painPeak: 0,
  });
  expect(trialContext({ ...NOTHING_TOLD, exertion: 6.5 })).toEqual({ exertion: 6.5 });
  expect(trialContext(NOTHING_TOLD)).toEqual({});
});
