import { describe, expect, test } from 'vitest';
import { heelHeight, heelTravel } from '../../../packages/simulation/src/foot-lever.ts';
import { stringReading } from '../../../packages/simulation/src/sensors/heel-string.ts';
import { simulateSet } from '../../../packages/simulation/src/simulate-set.ts';
import { foot26 } from '../../support/simulated-worlds.ts';

describe('a string from the floor to the heel', () => {
  test.each([
    [25, 0.1, 1.1],
    [35, 0.1, 2.5],
    [45, 0.1, 4.8],
    [35, 0.3, 1.3],
    [45, 0.3, 2.6],
  ])('at %i degrees and %d m of string at rest reads too much: %d %%', (pitchDeg, restLengthM, percent) => {
    const pitch = (pitchDeg * Math.PI) / 180;
    const height = heelHeight(foot26, pitch);
    const reading = stringReading(height, heelTravel(foot26, pitch), restLengthM);
    expect(Math.round(1000 * (reading / height - 1)) / 10).toBe(percent);
  });

  test('in a clean set the greatest reading of each repetition is the height and its obliquity', () => {
    const { trace, truth, subject } = simulateSet({ placement: 'heel', level: 'clean', seed: 12 });
    const { timesS, channels } = trace.groups[0];
    const { foot } = truth.person;
    for (const { startS, endS, heelHeightM } of truth.repetitions) {
      const reading = channels[0].samples.filter((_, i) => timesS[i] > startS && timesS[i] < endS);
      const travel = heelTravel(foot, Math.asin(heelHeightM / foot.heelLeverM));
      const expected = stringReading(heelHeightM, travel, subject.stringRestLengthM ?? 1.6);
      expect(Math.abs(Math.max(...reading) - expected)).toBeLessThan(0.0007);
    }
  });
});
