import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tQuantile } from '../../../packages/analysis/src/agreement/distributions.ts';
import { type Limits, limitsOfAgreement } from '../../../packages/analysis/src/agreement/limits-of-agreement.ts';
import { mean, standardDeviation } from '../../../packages/analysis/src/signal/moments.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { arbitraryRatings, ratingRows } from '../../support/rating-fixture.ts';
import { runs } from '../../support/runs.ts';

const usual = { level: 0.95, reach: 1.96, scale: 'difference' } as const;

function limitsOf(
  table: readonly (readonly number[])[],
  options: Partial<Parameters<typeof limitsOfAgreement>[2]> = {},
) {
  const column = (at: number): number[] => table.map((row) => row[at]);
  return limitsOfAgreement(column(0), column(1), { ...usual, ...options })!;
}

const numbers = ({ bias, lower, upper }: Limits): number[] =>
  [bias, lower, upper].flatMap(({ value, low, high }) => [value, low, high]);

test('Bland & Altman (1986): bias -2.1, limits -79.7 and 75.5 at 2 SD, with their intervals', () => {
  const limits = limitsOf(ratingRows('bland-altman-1986-meters'), { reach: 2 });
  expect([limits.bias.value, limits.sd]).toBeCloseToEach([-2.1176, 38.7651], { rtol: 0, atol: 5e-5 });
  // the paper rounds bias and SD before it goes on: -79.7, 75.5; -22.0 to 17.8; -114.3 to -45.1; 40.9 to 110.1
  const printed = [-2.1, -22, 17.8, -79.7, -114.3, -45.1, 75.5, 40.9, 110.1];
  expect(numbers(limits)).toBeCloseToEach(printed, { rtol: 0, atol: 0.2 });
  const unrounded = [-2.1176, -22.049, 17.814, -79.648, -114.17, -45.13, 75.413, 40.89, 109.93];
  expect(numbers(limits)).toBeCloseToEach(unrounded, { rtol: 0, atol: 0.006 });
});

test('the same with 1.96 SD', () => {
  const { lower, upper } = limitsOf(ratingRows('bland-altman-1986-meters'));
  expect([lower.value, upper.value]).toBeCloseToEach([-78.097, 73.862], { rtol: 0, atol: 5e-4 });
});

test('Bland & Altman (1986): each meter read twice', () => {
  // coefficient of repeatability 2 sqrt(sum d2 / n): mean square instead of variance
  const repeatability = (name: string): number => {
    const { sd, bias, pairCount: n } = limitsOf(ratingRows(name));
    return 2 * Math.sqrt((sd ** 2 * (n - 1)) / n + bias.value ** 2);
  };
  expect(['bland-altman-1986-large-twice', 'bland-altman-1986-mini-twice'].map(repeatability)).toBeCloseToEach(
    [43.294, 56.316],
    { rtol: 0, atol: 5e-4 },
  );
});

test('Bland & Altman (1986): error of the bias 9.4 with t of 2.12, and a correlation of .94 beside limits of 150 l/min', () => {
  const table = ratingRows('bland-altman-1986-meters');
  const { bias, lower, upper, sd } = limitsOf(table, { reach: 2 });
  expect([tQuantile(0.975, 16), sd / Math.sqrt(17), (bias.high - bias.low) / 2 / tQuantile(0.975, 16)]).toBeCloseToEach(
    [2.1199, 9.4019, 9.4019],
    { rtol: 0, atol: 5e-5 },
  );
  const [x, y] = [0, 1].map((at) => table.map((row) => row[at]));
  const [mx, my] = [mean(x), mean(y)];
  const shared = x.reduce((sum, one, i) => sum + (one - mx) * (y[i] - my), 0) / 16;
  expect([shared / (standardDeviation(x) * standardDeviation(y))]).toBeCloseToEach([0.94328], { rtol: 0, atol: 5e-6 });
  expect(upper.value - lower.value).toBeGreaterThan(150);
});

test('Bland & Altman (1986): means of two readings, with what averaging hides put back: -6.0, 37.7, -81.3 to 69.3', () => {
  const [large, mini] = ['large', 'mini'].map((name) => ratingRows(`bland-altman-1986-${name}-twice`));
  const means = large.map((row, i) => [mean(row), mean(mini[i])]);
  const { bias, sd } = limitsOf(means);
  const [within, other] = [large, mini].map((rows) => {
    const twice = limitsOf(rows);
    // the paper takes the mean difference of a meter with itself as zero
    return Math.sqrt((twice.sd ** 2 * (rows.length - 1)) / rows.length + twice.bias.value ** 2);
  });
  const corrected = Math.sqrt(sd ** 2 + within ** 2 / 4 + other ** 2 / 4);
  expect([bias.value, corrected, bias.value - 2 * corrected, bias.value + 2 * corrected]).toBeCloseToEach(
    [-6.029, 37.655, -81.34, 69.28],
    { rtol: 0, atol: 0.02 },
  );
});

test('Hopkins (2000): half width of the limits 8.01, and 11.35 with t for five people', () => {
  const { bias, upper, sd } = limitsOf(ratingRows('hopkins-2000'));
  expect(upper.value - bias.value).toBeCloseTo(8.01, 2);
  expect(sd).toBeCloseTo(4.0866, 4);
  expect(tQuantile(0.975, 4) * sd).toBeCloseTo(11.35, 2);
});

test('agrees with t.test and lm of R: bias, its trend, and the trend of the scatter', () => {
  interface Expected {
    readonly bias: number[];
    readonly sd: number;
    readonly slope: number[];
    readonly p: number;
    readonly scatter: number[];
    readonly scatterP: number;
  }
  const { input, expected, ...tolerance } = readReference<{ tables: number[][][] }, Expected[]>('agreement.limits');
  const of = ({ value, low, high }: Limits['bias']): number[] => [value, low, high];
  expect(input.tables).toHaveLength(3);
  input.tables.forEach((table, i) => {
    const { bias, sd, biasTrend, scatterTrend } = limitsOf(table);
    const want = expected[i];
    expect([...of(bias), sd]).toBeCloseToEach([...want.bias, want.sd], tolerance);
    expect([...of(biasTrend!.slope), biasTrend!.p]).toBeCloseToEach([...want.slope, want.p], tolerance);
    expect([...of(scatterTrend!.slope), scatterTrend!.p]).toBeCloseToEach([...want.scatter, want.scatterP], tolerance);
  });
});

test('laws: raters changed over turn the signs, any order and zero change nothing, a unit scales', () => {
  fc.assert(
    fc.property(arbitraryRatings, (table) => {
      const differences = table.map(([a, b]) => a - b);
      fc.pre(differences.some((d) => Math.abs(d - differences[0]) > 0.01));
      const tolerance = { rtol: 1e-9, atol: 1e-9 };
      const limits = limitsOf(table);
      const [value, low, high, ...rest] = numbers(limits);
      const over = limitsOf(table.map(([a, b]) => [b, a]));
      expect(numbers(over)).toBeCloseToEach(
        [-value, -high, -low, -rest[3], -rest[5], -rest[4], -rest[0], -rest[2], -rest[1]],
        tolerance,
      );
      expect(numbers(limitsOf(table.toReversed()))).toBeCloseToEach(numbers(limits), tolerance);
      expect(numbers(limitsOf(table.map((row) => row.map((one) => 10 * (one + 3)))))).toBeCloseToEach(
        numbers(limits).map((one) => 10 * one),
        tolerance,
      );
    }),
    runs(100, 1000),
  );
});

test('ratios: the limits of the logarithms, turned back, whatever the unit', () => {
  const table = ratingRows('bland-altman-1986-meters');
  const logs = limitsOf(table.map((row) => row.map(Math.log)));
  for (const unit of [1, 1000]) {
    const ratios = limitsOf(
      table.map((row) => row.map((one) => unit * one)),
      { scale: 'ratio' },
    );
    expect(numbers(ratios)).toBeCloseToEach(numbers(logs).map(Math.exp), { rtol: 1e-9, atol: 0 });
    expect(ratios.points[0].difference).toBeCloseTo(494 / 512, 12);
    expect(ratios.points[0].mean).toBeCloseTo(unit * Math.sqrt(494 * 512), 6);
  }
});

test('agrees with R on the scale of ratios: t.test of the logarithms, and their limits turned back', () => {
  interface Expected {
    readonly bias: number[];
    readonly lower: number[];
    readonly upper: number[];
    readonly sd: number;
  }
  const { input, expected, ...tolerance } = readReference<{ tables: number[][][] }, Expected[]>('agreement.log-limits');
  expect(input.tables).toHaveLength(3);
  input.tables.forEach((table, i) => {
    const limits = limitsOf(table, { scale: 'ratio' });
    const { bias, lower, upper, sd } = expected[i];
    expect([...numbers(limits), limits.sd]).toBeCloseToEach([...bias, ...lower, ...upper, sd], tolerance);
  });
});

test('a bias that grows with the value is found, and scatter that grows with it', () => {
  const at = Array.from({ length: 30 }, (_, i) => 100 + 10 * i);
  const wobble = (i: number): number => [1, -1, 0.5, -0.5, 0][i % 5];
  const growing = limitsOf(at.map((value, i) => [value * 1.1 + wobble(i), value]));
  expect(growing.biasTrend!.slope.low).toBeGreaterThan(0.05);
  const fanning = limitsOf(at.map((value, i) => [value + 0.2 * value * wobble(i), value]));
  expect(fanning.scatterTrend!.slope.low).toBeGreaterThan(0);
  expect(fanning.biasTrend!.slope.low * fanning.biasTrend!.slope.high).toBeLessThan(0);
});

test('equal differences have no spread to speak of; bad arguments are refused', () => {
  expect(limitsOfAgreement([1, 2, 3], [0.7, 1.7, 2.7], usual)).toBeUndefined();
  const two = limitsOf([
    [1, 2],
    [2, 5],
  ]);
  expect([two.biasTrend, two.scatterTrend]).toEqual([undefined, undefined]);
  expect(() => limitsOfAgreement([1], [2], usual)).toThrow('first');
  expect(() => limitsOfAgreement([1, 2], [2], usual)).toThrow('second');
  expect(() => limitsOfAgreement([1, Number.NaN], [2, 3], usual)).toThrow();
  expect(() =>
    limitsOf(
      [
        [1, 0],
        [2, 3],
      ],
      { scale: 'ratio' },
    ),
  ).toThrow('second: expected values above 0, for a ratio');
  expect(() =>
    limitsOf(
      [
        [1, 1],
        [2, 3],
      ],
      { reach: 0 },
    ),
  ).toThrow('reach');
  expect(() =>
    limitsOf(
      [
        [1, 1],
        [2, 3],
      ],
      { level: 1 },
    ),
  ).toThrow('level');
});
