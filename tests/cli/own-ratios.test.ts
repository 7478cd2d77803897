import { expect, test } from 'vitest';
import { ratioNote, readOwnRatios } from '../../apps/cli/src/own-ratios.ts';
import { readOwnReliability } from '../../apps/cli/src/own-reliability.ts';
import { assessRows, type Cells, WHOLE_ROW } from '../support/compared-manifest.ts';
import '../support/close.ts';

const ID = 'single-leg.incline10';
const source = { id: 'own:own.json', citation: 'ours', group: 'own people' };
/** Each ratio of the second visit 5 % above or below that of the first, in turn. */
const pairs = (count: number): number[][] =>
  Array.from({ length: count }, (_, i) => [0.9, 0.9 * Math.exp(i % 2 === 0 ? 0.05 : -0.05)]);

test('rows of repeated ratios become the error of one ratio and its bound', () => {
  const { logError, logErrorUpper, pairs: found } = readOwnRatios('own.json', pairs(16), source);
  // by hand: differences of +-0.05 about their mean of 0, variance 16 x 0.05^2 / 15, of which each visit has half
  const error = Math.sqrt((16 * 0.05 ** 2) / 15 / 2);
  // upper bound with 15 degrees of freedom: chi-square 0.2 quantile 10.30696 (SciPy 1.17.1, chi2.ppf(0.2, 15))
  expect([logError, logErrorUpper]).toBeCloseToEach([error, error * Math.sqrt(15 / 10.30696)], { rtol: 1e-6, atol: 0 });
  expect(found).toBe(16);
});

test.each([
  ['no table', 0.9],
  ['words', [['high', 'low']]],
  ['one person', [[0.9, 1]]],
  ['one visit', [[0.9], [1]]],
  ['rows of unlike length', [[0.9, 1], [1]]],
  [
    'a ratio of zero',
    [
      [0.9, 0],
      [1, 1],
    ],
  ],
])('%s is a fault of the command line, by its place', (_, value) => {
  expect(() => readOwnRatios('own.json', value, source)).toThrow(/^own\.json, ratios: expected two or more rows/);
});

test('ratios that never differ are no proof that there is no error', () => {
  const same = [
    [1, 1],
    [0.9, 0.9],
  ];
  expect(() => readOwnRatios('own.json', same, source)).toThrow('own.json, ratios: expected ratios that differ');
});

test('the note says how large the error is and whether it is used', () => {
  const known = { logError: 0.036, logErrorUpper: 0.05, pairs: 16, source };
  expect(ratioNote(known, ID)).toBe(
    `Own ratios of the legs by ${ID} from 16 pairs of visits: error 3.6 %, used first.`,
  );
  expect(ratioNote({ ...known, pairs: 14 }, ID)).toContain('shown and not used, for 15 pairs are needed.');
});

test('ratios come alone or with the error of a test, and the notes stand together', () => {
  const read = (json: object) => readOwnReliability('own.json', new TextEncoder().encode(JSON.stringify(json)), ID);
  expect(read({ ratios: pairs(16) })).toMatchObject({ own: {}, ratios: { [ID]: { pairs: 16 } } });
  const both = read({
    ratios: pairs(16),
    pairs: 20,
    standard_error: 1.9,
    standard_error_upper_80: 2.3,
    source: 'ours',
  });
  expect(both).toMatchObject({ own: { [ID]: { pairs: 20 } }, ratios: { [ID]: { source: { citation: 'ours' } } } });
  expect(both.note).toMatch(/^Own error of .* Own ratios of the legs by /);
});

const left: Cells = { ...WHOLE_ROW, person: 'P1', visit: '1', side: 'left', order: 'first', file: 'l-12.csv' };
const right: Cells = { ...left, side: 'right', order: 'second', rest_s: 150, symptomatic: 'mild', file: 'r-8.csv' };

async function given(count: number, options: readonly string[]) {
  const files = { 'own.json': JSON.stringify({ protocol: ID, ratios: pairs(count) }) };
  const { memory } = await assessRows([left, right], ['--reliability', 'own.json', ...options], files);
  return memory;
}

test('the ratio of the legs rests on them from 15 pairs on, and says so', async () => {
  const line = async (count: number) =>
    JSON.parse((await given(count, ['--json'])).out.trimEnd().split('\n')[2]) as {
      ratio: { value: number; low: number; high: number };
      ratio_error: object;
      remarks: { about: string; code: string }[];
    };
  const [used, few] = [await line(30), await line(14)];
  const error = Math.sqrt((30 * 0.05 ** 2) / 29 / 2);
  expect(used.ratio_error).toMatchObject({ from: 'own-ratios', own: 'used', pairs: 30 });
  // Bland & Altman (1986): the interval of a ratio is that of its logarithm
  expect(Math.abs(Math.log(used.ratio.high / used.ratio.value) - 1.96 * error)).toBeLessThan(1e-4);
  expect(few.ratio_error).toMatchObject({ from: 'sides-independent', own: 'too-few-pairs', pairs: 14 });
  expect(few.ratio.high).toBeGreaterThan(used.ratio.high);
  const codes = ({ remarks }: typeof used) =>
    remarks.filter(({ about }) => about === 'ratio-error').map(({ code }) => code);
  expect([codes(used), codes(few)]).toEqual([
    ['own-ratios', 'used'],
    ['sides-independent', 'too-few-pairs'],
  ]);
});

test('the text says which error was used', async () => {
  const text = (await given(16, [])).out.replace(/\s+/g, ' ');
  expect(text).toContain('interval The interval rests on ratios that this clinic repeated');
  expect(text).toContain('From fifteen to twenty-nine pairs the upper bound of their error is used.');
  expect(text).toContain('from 16 pairs of visits: error 3.65 %, used first.');
});
