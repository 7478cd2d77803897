import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import type { HeelHeight } from '../../../../packages/analysis/src/movement/heel-height.ts';
import { findBumps } from '../../../../packages/analysis/src/raises/heel/bumps.ts';
import { findSet } from '../../../../packages/analysis/src/raises/heel/find-set.ts';

/** Two seconds of rest, then a raised cosine every two seconds with the height given for each. */
function found(
  heightsM: readonly number[],
  change: (level: number, timeS: number) => number,
  height?: Partial<HeelHeight>,
) {
  const count = 200 * heightsM.length + 400;
  const levelM = Float64Array.from({ length: count }, (_, i) => {
    const k = Math.floor((i - 200) / 200);
    const hump = heightsM[k] ?? 0;
    return change((hump / 2) * (1 - Math.cos((Math.PI * i) / 100)), i / 100);
  });
  const signal = {
    startS: 0,
    sampleRateHz: 100,
    levelM,
    known: new Float64Array(count).fill(1),
    smoothM: levelM,
    turns: findBumps(levelM, 0.006),
    noise: { swaySdM: 0.001, swayTimeS: 0.3, whiteSdM: 0.001 },
  };
  const whole = { foot: undefined, longGaps: [], ...height } as unknown as HeelHeight;
  return findSet(signal, whole, 0, 0.17, heelDefaults).filter((one) => one.accepted);
}

test('raises are found, whatever their height', () => {
  expect(found([0.1, 0.11, 0.09, 0.05, 0.1], (level) => level).length).toBe(5);
});

test('a return that stops nearly half way up parts two raises a beat apart', () => {
  const high = found([0.1, 0.1, 0.1, 0.1, 0.1, 0.1], (level, timeS) =>
    timeS > 7 && timeS < 9 ? Math.max(level, 0.056) : level,
  );
  expect(high.length).toBe(6);
});

test('turning that does not explain the shaking of the sensor is no set', () => {
  const shaken = (size: number): Float64Array => Float64Array.from({ length: 1400 }, (_, i) => size * Math.sin(i / 7));
  const foot = { unexplained: shaken(0.6), excess: shaken(0.7), place: { behindM: 0, aboveM: 0.05 } };
  expect(found([0.1, 0.1, 0.1, 0.1, 0.1], (level) => level, { foot } as unknown as HeelHeight)).toEqual([]);
  const calm = { ...foot, unexplained: shaken(0.05) };
  expect(found([0.1, 0.1, 0.1, 0.1, 0.1], (level) => level, { foot: calm } as unknown as HeelHeight).length).toBe(5);
});
