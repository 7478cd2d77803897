import { changeZone } from '@surae/analysis';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { detectableChange } from '../../../packages/analysis/src/agreement/detectable-change.ts';
import '../../support/close.ts';
import { runs } from '../../support/runs.ts';

const exact = (value: number) => ({ value, low: value, high: value });

test('Weir (2005): 7.5569 makes 20.95 at 95 %, which the paper takes with 1.96', () => {
  expect(detectableChange(exact(7.5569), 0.95).value).toBeCloseTo(1.96 * Math.SQRT2 * 7.5569, 2);
});

test('Ross & Fontenot (2000): 2.07 repetitions make 5.74 at 95 % and 4.82 at 90 %', () => {
  const change = (level: number): string => detectableChange(exact(2.07), level).value.toFixed(2);
  expect([change(0.95), change(0.9)]).toEqual(['5.74', '4.82']);
});

test('Byrne et al. (2017): 6.7 repetitions, 419 J and 0.8 cm make 18.6, 1161 and 2.22', () => {
  expect([6.7, 419, 0.8].map((sem) => detectableChange(exact(sem), 0.95).value)).toBeCloseToEach([18.6, 1161, 2.22], {
    rtol: 0.003,
    atol: 0,
  });
});

test('Rhodes et al. (2022): 9.09 to 12.47 % make the 25.19 to 34.56 that are printed as newtons', () => {
  expect([9.09, 12.47].map((sem) => detectableChange(exact(sem), 0.95).value)).toBeCloseToEach([25.196, 34.565], {
    rtol: 1e-4,
    atol: 0,
  });
});

test('law: a change is likely real exactly when it exceeds the detectable change, possible from that at 80 % on', () => {
  // whole numbers: doubles at random are nearly all next to zero, and none falls into the zone between
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 200 }), fc.integer({ min: 1, max: 60 }), (change, sem) => {
      const at = (level: number): number => detectableChange(exact(sem), level).value;
      // the zones round the deviates to 1.96 and 1.28, as their sources do
      fc.pre([0.95, 0.8].every((level) => Math.abs(Math.abs(change) - at(level)) > 0.004 * sem));
      const expected =
        Math.abs(change) > at(0.95) ? 'likely-real' : Math.abs(change) > at(0.8) ? 'possible' : 'cannot-tell';
      expect(changeZone(change, sem).zone).toBe(expected);
    }),
    runs(300, 5000),
  );
});

test('the interval of the error is handed on, and impossible arguments are refused', () => {
  const { low, high } = detectableChange({ value: 2, low: 1, high: 4 }, 0.9);
  expect(high / low).toBeCloseTo(4, 12);
  expect(() => detectableChange(exact(1), 1)).toThrow('level');
});
