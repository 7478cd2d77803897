import { blockCounterDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { FootHeight } from '../../../packages/analysis/src/raises/block-foot.ts';
import '../../support/close.ts';

const { foot } = blockCounterDefaults;
const rateHz = 100;
const leverM = 0.2;
const gravity = 9.80665;

/** Pitch of a foot that stands, tilts by 30 degrees in the sagittal plane, and stands again. */
function pitchAt(timeS: number): number {
  if (timeS < 2 || timeS > 6) return 0;
  return (
    (Math.PI / 6) *
    (timeS < 3 ? (1 - Math.cos(Math.PI * (timeS - 2))) / 2 : timeS > 5 ? (1 + Math.cos(Math.PI * (timeS - 5))) / 2 : 1)
  );
}

/** A sensor over the pivot in any mounting: gravity and turning of the foot, turned by a rotation matrix. */
function readings(timeS: number, mounting: readonly (readonly number[])[], hand: 1 | -1): Float64Array {
  const pitch = pitchAt(timeS);
  const rate = (pitchAt(timeS + 1e-5) - pitchAt(timeS - 1e-5)) / 2e-5;
  // toes forward, y to the left, z up; the heel goes up: the foot turns about +y and z leans forward
  const force = [-gravity * Math.sin(pitch), 0, gravity * Math.cos(pitch)];
  const turn = [0, hand * rate, 0];
  const mount = (v: number[]): number[] => mounting.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]);
  return Float64Array.from([...mount(force), ...mount(turn)]);
}

const upright = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
/** turned by 120 degrees about the space diagonal, then by 40 degrees about x */
const askew = [
  [0, 0, 1],
  [Math.cos(0.7), -Math.sin(0.7), 0],
  [Math.sin(0.7), Math.cos(0.7), 0],
];

function heights(mounting: readonly (readonly number[])[], hasGyroscope: boolean, hand: 1 | -1 = 1): number[] {
  const height = new FootHeight(foot, leverM, rateHz, hasGyroscope);
  return Array.from(
    { length: 800 },
    (_, k) => height.step(readings((k + 0.5) / rateHz, mounting, hand), false) ?? Number.NaN,
  );
}

describe('height of the heel from a sensor on the foot', () => {
  test.each([
    ['upright', upright],
    ['askew', askew],
  ] as const)('30 degrees at a lever of 0.20 m are 100 mm, mounted %s, with a gyroscope', (_, mounting) => {
    const found = heights(mounting, true);
    expect([found[100], found[400], found[750]]).toBeCloseToEach([0, 0.1, 0], { rtol: 0, atol: 0.002 });
  });

  test('the same from the accelerometer alone, later by its smoothing', () => {
    const found = heights(askew, false);
    expect([found[100], found[450], found[780]]).toBeCloseToEach([0, 0.1, 0], { rtol: 0, atol: 0.001 });
  });

  test('a gyroscope with mirrored axes is noticed within two raises', () => {
    const height = new FootHeight(foot, leverM, rateHz, true);
    const found = Array.from({ length: 3200 }, (_, k) => {
      const timeS = (k + 0.5) / rateHz;
      return height.step(readings(timeS % 8, askew, -1), false) ?? Number.NaN;
    });
    // in the fourth raise, while it is held and after it
    expect([found[2400 + 450], found[2400 + 790]]).toBeCloseToEach([0.1, 0], { rtol: 0, atol: 0.003 });
  });

  test('there is no height until there is a level, and no level until the foot has stood still', () => {
    const height = new FootHeight(foot, leverM, rateHz, true);
    expect(height.step(readings(0, upright, 1), false)).toBeUndefined();
    expect(height.hasLevel).toBe(false);
    for (let k = 0; k < 150; k++) height.step(readings(0, upright, 1), false);
    expect(height.hasLevel).toBe(true);
  });

  test('a constant bias of the gyroscope is taken from the standing', () => {
    const height = new FootHeight(foot, leverM, rateHz, true);
    const found: number[] = [];
    for (let k = 0; k < 800; k++) {
      const means = readings((k + 0.5) / rateHz, askew, 1);
      means[3] += 0.03;
      means[4] -= 0.02;
      found.push(height.step(means, false) ?? Number.NaN);
    }
    expect([found[400]]).toBeCloseToEach([0.1], { rtol: 0, atol: 0.003 });
  });

  test.each([
    // tilt of a still sensor by definition, atan2 of the two parts: 30 degrees, and 5.711 for a push of 0.1 g
    [0.5, 0.866025, 30],
    [0.1, 1, 5.7106],
    [0.05, 1, 2.8624],
    [0.2, 1, 11.3099],
  ])('specific force (%d, 0, %d) g after standing upright is a pitch of %d degrees', (x, z, degrees) => {
    const height = new FootHeight(foot, leverM, rateHz, false);
    for (let k = 0; k < 200; k++) height.step(Float64Array.of(0, 0, gravity), false);
    for (let k = 0; k < 300; k++) height.step(Float64Array.of(x * gravity, 0, z * gravity), false);
    expect([(height.pitchRad * 180) / Math.PI]).toBeCloseToEach([degrees], { rtol: 1e-4, atol: 0 });
  });
});
