import { expect, test } from 'vitest';
import { platformStance } from '../../../packages/analysis/src/movement/stance.ts';

const options = { standingShare: 0.85, trimShare: 0.97, settleS: 0.2 };

/** 100 Hz: 2 s empty, 0.5 s of stepping on, standing with 700 N, 0.5 s of stepping off, 2 s empty. */
function visit(standingS: number): Float64Array {
  const lengthS = 5 + standingS;
  return Float64Array.from({ length: lengthS * 100 }, (_, i) => {
    const on = Math.min(1, Math.max(0, (i / 100 - 2) / 0.5));
    const off = Math.min(1, Math.max(0, (lengthS - 2 - i / 100) / 0.5));
    return 700 * Math.min(on, off);
  });
}

test('a visit of 20 s begins 0.97 of the way up the step and 0.2 s later, and ends likewise', () => {
  const stance = platformStance(visit(20), 100, 10, undefined, options)!;
  expect(stance.fromS).toBeGreaterThanOrEqual(10 + 2 + 0.97 * 0.5 + 0.19);
  expect(stance.fromS).toBeLessThan(10 + 2.5 + 0.22);
  expect(stance.toS).toBeLessThanOrEqual(10 + 23 - 0.97 * 0.5 - 0.19);
  expect(stance.toS).toBeGreaterThan(10 + 22.5 - 0.22);
});

test('an empty platform, or one stepped on for less than a second, holds no stance', () => {
  expect(platformStance(new Float64Array(1000), 100, 0, undefined, options)).toBeUndefined();
  expect(platformStance(visit(0.3), 100, 0, 70, options)).toBeUndefined();
});

test('standing throughout is one stance, whole', () => {
  const stance = platformStance(new Float64Array(1000).fill(650), 100, 0, undefined, options);
  expect(stance).toEqual({ fromS: 0, toS: 10 });
});

test('unloading to half the weight three times a second does not end the stance', () => {
  const force = Float64Array.from({ length: 2000 }, (_, i) => 700 * (1 + 0.5 * Math.sin(2 * Math.PI * 3 * (i / 100))));
  const stance = platformStance(force, 100, 0, undefined, options)!;
  expect(stance.toS - stance.fromS).toBeGreaterThan(19);
});
