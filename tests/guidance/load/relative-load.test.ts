import { relativeOf, relativeTo } from '@surae/guidance';
import { EXERCISES, RELATIVE_LOADS, TENDON_LOADS } from '@surae/shared';
import { describe, expect, test } from 'vitest';

describe('load on the tendon beside a raise on the same leg', () => {
  test('is one for the raise itself, and a range for everything else', () => {
    expect(relativeTo('single-raise').range).toEqual([1, 1]);
    // 0.5 times body weight: Baxter 2021 Med Sci Sports Exerc 53:124; over 3 from memory, and over 13 cm / 5 cm = 2.6
    const [low, high] = relativeTo('seated-raise').range;
    expect([low, high]).toEqual([0.5 / 3, 0.5 / 2.6]);
    const hop = relativeTo('forward-hop').range;
    expect([hop[0], hop[1]]).toEqual([7.3 / 3, 7.3 / 2.6]);
  });

  test('of walking and running spans every comparable figure, and leaves out the waves, which read about twice as much', () => {
    // 2 to 3 and 4 to 7 times body weight by a review, 4.49 and 8.2 to 10.1 by tensiometry
    expect(relativeTo('walking').range).toEqual([2 / 3, 3.3 / 2.6]);
    expect(relativeTo('running').range).toEqual([4 / 3, 7 / 2.6]);
    expect(relativeTo('running').from.map(({ method }) => method)).not.toContain('tensiometry');
  });

  test('is no better supported than its least supported figure', () => {
    expect(relativeTo('running').mark).toBe('from-memory');
    expect(
      relativeTo('running')
        .from.map(({ source }) => source)
        .join(),
    ).toMatch(/8 people.*5 cm/);
  });

  test.each([
    ['one-leg-raise', 0, 1],
    ['one-leg-raise', 0.25, 1.25],
    ['loaded-one-leg-raise', 0.5, 1.5],
    ['two-leg-raise', 0, 0.5],
    ['two-leg-raise', 0.25, 0.625],
  ])('%s with %f of body weight added is %f', (exercise, extra, share) => {
    expect(relativeOf(exercise, extra)?.range).toEqual([share, share]);
  });

  test.each(['step-raise', 'one-leg-hops', 'quick-rebounds', 'calf-stretch', 'something-new'])(
    'is not known for %s',
    (exercise) => {
      expect(relativeOf(exercise, 0)).toBeNull();
    },
  );

  test('is not known where a load is not, nor for one on the seat', () => {
    expect(relativeOf('one-leg-raise', null)).toBeNull();
    expect(relativeOf('seated-raise', 0.2)).toBeNull();
    expect(relativeOf('seated-raise', 0)).not.toBeNull();
  });

  test.each([-0.1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a load of %f', (extra) => {
    expect(() => relativeOf('one-leg-raise', extra)).toThrow('not-an-answer');
  });
});

describe('published peaks', () => {
  test('98.7 N/kg are 10.06 times body weight, and 44.0 are 4.49', () => {
    // PMC11096059, g = 9.80665
    expect(98.7 / 9.80665).toBeCloseTo(10.06, 2);
    const walking = TENDON_LOADS.find(({ id }) => id === 'tendon.walking-waves');
    expect(walking?.range[0]).toBeCloseTo(44 / 9.80665, 2);
    const running = TENDON_LOADS.find(({ id }) => id === 'tendon.running-waves');
    expect(Math.abs((running?.range[1] ?? 0) - 98.7 / 9.80665)).toBeLessThan(0.05);
    // the torque of the same runs over an arm of 5 cm: 7.51
    expect(3.68 / 0.05 / 9.80665).toBeCloseTo(7.51, 2);
  });

  test('reach from 0.5 in a seated raise to 7.3 in forward hops, more than twelvefold', () => {
    const of = (activity: string) => TENDON_LOADS.find((one) => one.activity === activity)?.range[0] ?? Number.NaN;
    expect([of('seated-raise'), of('forward-hop')]).toEqual([0.5, 7.3]);
    expect(of('forward-hop') / of('seated-raise')).toBeGreaterThan(12);
  });

  test('every exercise of the list says how it loads, or that it is not known', () => {
    expect(RELATIVE_LOADS.map(({ exercise }) => exercise).sort()).toEqual(EXERCISES.map(({ code }) => code).sort());
  });
});
