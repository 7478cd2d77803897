import { type SampleBlock, SourceClock } from '@surae/sensors';
import { expect, test } from 'vitest';
import { hostMsAt, hostUncertaintyMsAt } from '../../../packages/sensors/src/together/source-clock.ts';

function block(lastS: number, hostTimeMs: number, more: Partial<SampleBlock> = {}): SampleBlock {
  return {
    firstIndex: 0,
    deviceTimesS: Float64Array.of(lastS - 0.05, lastS),
    hostTimeMs,
    channels: [{ quantity: 'force', axis: null, unit: 'N', samples: Float64Array.of(1, 2) }],
    ...more,
  };
}

test('by hand: a source that counts 2 % fast, its blocks 0, 40 and 90 ms late in turn', () => {
  const clock = new SourceClock();
  for (let i = 0; i < 300; i++) clock.take(block(0.102 * i, 700 + 100 * i + [0, 40, 90][i % 3]));
  const fit = clock.fitted!;
  expect(fit.offsetMs).toBeCloseTo(700, 6);
  expect(fit.driftPpm).toBeCloseTo(20_000, 3);
  expect([fit.fromS, fit.toS]).toEqual([0, 0.102 * 299]);
  // in the middle 149.5 blocks have come
  expect(fit.middleMs).toBeCloseTo(700 + 14_950, 5);
  expect(hostMsAt(fit, 10.2)).toBeCloseTo(10_700, 5);
  // 0.1 ms of the clock of a page in the middle; at an end the slope adds its own
  expect(hostUncertaintyMsAt(fit, 0.102 * 149.5)).toBeCloseTo(fit.uncertaintyMs, 9);
  const halfSpanMs = 0.102 * 149.5 * 1000;
  const atEnd = Math.hypot(fit.uncertaintyMs, fit.driftUncertaintyPpm * 1e-6 * halfSpanMs);
  expect(hostUncertaintyMsAt(fit, 0)).toBeCloseTo(atEnd, 9);
  expect(atEnd).toBeGreaterThan(fit.uncertaintyMs);
});

test('says nothing while too little came, and is not led astray by late blocks and those without a time', () => {
  const clock = new SourceClock();
  expect(clock.fitted).toBeNull();
  for (let i = 0; i < 20; i++) clock.take(block(0.1 * i, 100 * i));
  expect(clock.fitted).toBeNull();
  for (let i = 20; i < 200; i++) clock.take(block(0.1 * i, 100 * i));
  const { fitted: fit } = clock;
  clock.take(block(25, 1000, { isLate: true }));
  clock.take(block(25, 1000, { deviceTimesS: null }));
  expect(clock.fitted).toEqual(fit);
  expect(fit!.offsetMs).toBeCloseTo(0, 6);
});
