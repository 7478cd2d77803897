import { expect, test } from 'vitest';
import { type Profile, profileTemplate } from '../../../../packages/analysis/src/raises/body/profile.ts';
import { repetitionTemplate } from '../../../../packages/analysis/src/raises/body/template.ts';

/** Way of a repetition without hold: a cosine over phases 0 to 1, on the profile's 93 steps from -0.12 to 1.12. */
const cosine: Profile = {
  way: Float64Array.from({ length: 93 }, (_, i) => {
    const phase = -0.12 + (1.24 / 92) * i;
    return phase <= 0 || phase >= 1 ? 0 : (1 - Math.cos(2 * Math.PI * phase)) / 2;
  }),
  first: 0,
  last: 92,
};

test('a symmetrical way has its top in the middle and about the given duration', () => {
  const template = profileTemplate(cosine, 2, 20);
  expect(template.endS - template.startS).toBeGreaterThan(1.8);
  expect(template.endS - template.startS).toBeLessThan(2.2);
  expect(template.topS).toBeCloseTo((template.startS + template.endS) / 2, 2);
  expect(template.shared).toBe(true);
});

test('its accelerations resemble those of the smooth template without hold, whose arc a cosine lacks', () => {
  const own = profileTemplate(cosine, 2, 20);
  const smooth = repetitionTemplate({ durationS: 2, holdShare: 0, fallRatio: 1 }, 20);
  const offset = Math.round((own.topS - smooth.topS) * 20);
  let [product, first, second] = [0, 0, 0];
  for (let i = 0; i < smooth.cells; i++) {
    product += own.acceleration[i + offset] * smooth.acceleration[i];
    first += own.acceleration[i + offset] ** 2;
    second += smooth.acceleration[i] ** 2;
  }
  expect(product / Math.sqrt(first * second)).toBeGreaterThan(0.85);
});

test('a shape of which nothing is known beyond its ends leaves that time to its neighbours', () => {
  const whole = profileTemplate(cosine, 2, 20);
  // steps 9 and 83 are phases 0.001 and 0.999
  const own = profileTemplate({ ...cosine, first: 9, last: 83 }, 2, 20);
  expect([whole.cells, own.cells]).toEqual([50, 40]);
  expect(own.topS - own.startS).toBeCloseTo(whole.topS - whole.startS, 9);
  expect(whole.startS - own.startS).toBeCloseTo(0.25, 1);
  const sum = own.acceleration.reduce((total, value) => total + value, 0);
  expect(Math.abs(sum)).toBeLessThan(1e-9);
});
