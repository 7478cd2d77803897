import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import type { Agreed } from '../../../../packages/analysis/src/raises/body/consensus.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { riseEstimates } from '../../../../packages/analysis/src/raises/body/rise-estimates.ts';

/** Second derivative of a minimum-jerk move of 60 mm in 0.8 s, up from 0 s, down from 1.2 s, every 2.5 s. */
function acceleration(timeS: number): number {
  const phase = timeS % 2.5;
  const move = (u: number): number => (u <= 0 || u >= 1 ? 0 : (0.06 / 0.64) * (60 * u - 180 * u * u + 120 * u ** 3));
  return move(phase / 0.8) - move((phase - 1.2) / 0.8);
}
const signal = {
  startS: 0,
  sampleRateHz: 100,
  upward: Float64Array.from({ length: 2000 }, (_, i) => acceleration(i / 100)),
};

/** Eight repetitions as paths might agree on them: the least-squares rise 15 % low, all times late by `lateS`. */
function agreed(lateS: number): Agreed[] {
  return Array.from({ length: 8 }, (_, k) => ({
    startS: 2.5 * k + lateS,
    highFromS: 2.5 * k + 0.8 + lateS,
    topS: 2.5 * k + 1 + lateS,
    highToS: 2.5 * k + 1.2 + lateS,
    endS: 2.5 * k + 2 + lateS,
    startSpreadS: 0,
    topSpreadS: 0,
    endSpreadS: 0,
    ownRiseM: 0.051,
    ownVariance: 1e-6,
    ownSpreadM: 0,
    dipShare: 0,
    gapShare: 0,
    share: 1,
  }));
}

function rhythm(noiseVariance: number) {
  return { ...priorRhythm(bodyDefaults, 10, noiseVariance), riseM: 0.051, riseSpread: 0.1 };
}

test('in a quiet recording the integral corrects a template that reads 15 % low', () => {
  for (const { riseM } of riseEstimates(agreed(0), signal, rhythm(1e-6), bodyDefaults)) {
    expect(Math.abs(riseM - 0.06)).toBeLessThan(0.001);
  }
});

test('in a noisy one the estimate stays with the template and says less surely what it is', () => {
  const quiet = riseEstimates(agreed(0), signal, rhythm(1e-6), bodyDefaults);
  const noisy = agreed(0).map((one) => ({ ...one, ownVariance: 1e-4 }));
  const loud = riseEstimates(noisy, signal, rhythm(1), bodyDefaults);
  expect(loud[0].riseM).toBeLessThan(0.056);
  expect(loud[0].uncertaintyM).toBeGreaterThan(2 * quiet[0].uncertaintyM);
});
