import { describe, expect, test } from 'vitest';
import {
  ankleMomentArm,
  bodyRise,
  type FootLever,
  heelHeight,
  heelTravel,
} from '../../packages/simulation/src/foot-lever.ts';

const degree = Math.PI / 180;
// a foot of 26 cm: heel 18.6 cm from the metatarsal heads, ankle 13 cm behind and 7 cm above them
const foot: FootLever = {
  heelLeverM: 0.186,
  ankleLeverM: Math.hypot(0.13, 0.07),
  ankleAngleRad: Math.atan2(0.07, 0.13),
  restPitchRad: 0,
  pivotMigration: 0,
};

const centimetres = (value: number): number => Math.round(value * 1000) / 10;

describe('a foot of 26 cm', () => {
  test.each([
    [15, 4.8, 3.1, 10.7, 0.6],
    [25, 7.9, 4.8, 8.8, 1.7],
    [35, 10.7, 6.2, 6.6, 3.4],
    [45, 13.2, 7.1, 4.2, 5.4],
  ])('at %i degrees', (pitchDeg, heel, ankle, lever, travel) => {
    const pitch = pitchDeg * degree;
    expect(centimetres(heelHeight(foot, pitch))).toBe(heel);
    expect(centimetres(bodyRise(foot, pitch))).toBe(ankle);
    expect(centimetres(ankleMomentArm(foot, pitch))).toBe(lever);
    expect(centimetres(heelTravel(foot, pitch))).toBe(travel);
  });

  test.each([
    [15, 0.65],
    [25, 0.62],
    [35, 0.58],
    [45, 0.54],
  ])('the body rises less than the heel: ratio at %i degrees', (pitchDeg, ratio) => {
    const pitch = pitchDeg * degree;
    expect(Math.round((100 * bodyRise(foot, pitch)) / heelHeight(foot, pitch)) / 100).toBe(ratio);
  });

  test('an 18 cm lever at 30 degrees lifts the heel by 90 mm', () => {
    expect(Math.abs(heelHeight({ ...foot, heelLeverM: 0.18 }, 30 * degree) - 0.09)).toBeLessThan(1e-15);
  });

  test('on a board with the toes up by 10 degrees the height counts from there', () => {
    const onBoard = { ...foot, restPitchRad: -10 * degree };
    expect(heelHeight(onBoard, -10 * degree)).toBe(0);
    expect(Math.abs(heelHeight(onBoard, 0) - 0.186 * Math.sin(10 * degree))).toBeLessThan(1e-15);
  });

  test('a pivot that moves to the toes adds its share at 35 degrees, half of it at 17.5', () => {
    const moving = { ...foot, pivotMigration: 0.02 };
    expect(Math.abs(heelHeight(moving, 35 * degree) / heelHeight(foot, 35 * degree) - 1.02)).toBeLessThan(1e-12);
    expect(Math.abs(heelHeight(moving, 17.5 * degree) / heelHeight(foot, 17.5 * degree) - 1.01)).toBeLessThan(1e-12);
  });
});
