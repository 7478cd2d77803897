import fc from 'fast-check';
import { expect, test } from 'vitest';
import { untilUpBeatMs } from '../../../apps/dashboard/src/live/beat-phase.ts';
import { runs } from '../../support/runs.ts';

test('at sixty beats a minute an up comes every two seconds', () => {
  expect([0, 500, 1999, 2000, 2500].map((sinceMs) => untilUpBeatMs(sinceMs, 60))).toEqual([0, 1500, 1, 0, 1500]);
});

test('whenever the sound is turned on again, its ups fall on the ups of before', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 600_000 }), fc.constantFrom(30, 60, 120), (sinceMs, beatsPerMinute) => {
      const waitMs = untilUpBeatMs(sinceMs, beatsPerMinute);
      const cycleMs = 120_000 / beatsPerMinute;
      expect((sinceMs + waitMs) % cycleMs).toBe(0);
      expect(waitMs).toBeGreaterThanOrEqual(0);
      expect(waitMs).toBeLessThan(cycleMs);
    }),
    runs(100, 1000),
  );
});
