import { findEfforts } from '@surae/analysis';
import { expect, test } from 'vitest';
import { assessedEffort } from '../../../packages/analysis/src/assess/assessed-effort.ts';
import { strengthSettings } from '../../support/effort-settings.ts';
import { exponentialEffort, madeTrace } from '../../support/made-pull.ts';

const trace = madeTrace({
  efforts: [exponentialEffort(3, 1000, 0.08, 3)],
  lengthS: 10,
  sampleRateHz: 1000,
  noise: 1,
  rest: () => 200,
});
const none = { relativeU: 0, zeroU: 0, correlation: 0 };
const [effort] = findEfforts(trace, { polarity: 'find' }, strengthSettings).efforts;

test('forces, impulse and rates carry it, times and ratios do not', () => {
  const plain = assessedEffort(effort, 2, none);
  const known = assessedEffort(effort, 2, { relativeU: 0.02, zeroU: 3, correlation: -0.5 });
  expect(plain).toMatchObject(effort);
  expect(plain.index).toBe(2);
  for (const [before, after] of [
    [effort.peak.net, known.peak.net],
    [effort.bestMean!.net, known.bestMean!.net],
    [effort.impulse, known.impulse],
    [effort.rates[1].rate!, known.rates[1].rate!],
    [effort.early.impulse!, known.early.impulse!],
  ]) {
    expect(after.value).toBe(before.value);
    expect(after.u).toBeCloseTo(Math.hypot(before.u, 0.02 * before.value), 9);
  }
  // the zero is in what the sensor reads, and shares an error with the slope
  for (const [before, after] of [
    [effort.rest, known.rest],
    [effort.peak.gross, known.peak.gross],
    [effort.bestMean!.gross, known.bestMean!.gross],
  ]) {
    const slope = 0.02 * before.value;
    expect(after.u).toBeCloseTo(Math.sqrt(before.u ** 2 + slope ** 2 + 9 - 3 * slope), 9);
  }
  expect([known.early.reached, known.onsetS, known.plateauS, known.unsteadiness]).toEqual([
    effort.early.reached,
    effort.onsetS,
    effort.plateauS,
    effort.unsteadiness,
  ]);
});

test('reasons and open questions; what nobody looked at is no question', () => {
  const open = { code: 'tare-error', met: 'cannot_tell', value: null, limit: 5 } as const;
  const bad = { code: 'clipped', met: 'no', value: null, limit: null } as const;
  const unseen = { code: 'lifted', met: 'cannot_tell', value: null, limit: null } as const;
  const judged = { ...effort, acceptance: { accepted: 'no', findings: [open, bad, unseen] } as const };
  expect(assessedEffort(judged, 1, none)).toMatchObject({
    accepted: 'no',
    reasons: ['clipped'],
    undecided: ['tare-error'],
  });
});
