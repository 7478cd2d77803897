import { describe, expect, test } from 'vitest';
import { drawEffort, type Effort, effortForce, releaseTime } from '../../../packages/simulation/src/pulls/effort.ts';
import { Random } from '../../../packages/simulation/src/random.ts';

describe('one effort', () => {
  const exponential: Effort = {
    kind: 'fast',
    onsetS: 1,
    plateauN: 1000,
    rise: { family: 'exponential', riseS: 0.1, power: 1, takeUpS: 0, takeUpShare: 0, takeUpPower: 1, move: 'cosine' },
    holdS: 1,
    releaseS: 0.3,
  };

  // F = 1000 (1 - exp(-t / 0.1))
  test.each([
    [0.05, 393.469],
    [0.1, 632.121],
    [0.15, 776.87],
    [0.2, 864.665],
  ])('a fast effort with an exponential rise, %d s after its onset: %d N', (afterS, force) => {
    expect(Math.round(1000 * effortForce(exponential, 0, 1 + afterS)) / 1000).toBe(force);
  });

  test('is nothing before its onset and after its release', () => {
    for (const kind of ['ramp', 'fast'] as const) {
      const effort = drawEffort(kind, 2, 900, { course: new Random(1, 0), rise: new Random(1, 1) }, 'power');
      const endS = releaseTime(effort) + effort.releaseS;
      expect([effortForce(effort, 0.1, 1.99), effortForce(effort, 0.1, endS + 0.01)]).toEqual([0, 0]);
      expect(Math.abs(effortForce(effort, 0, releaseTime(effort)) / 900 - 1)).toBeLessThan(0.02);
      expect(Math.abs(effortForce(effort, 0.1, releaseTime(effort)) / 900 - 0.9)).toBeLessThan(0.02);
    }
  });
});
