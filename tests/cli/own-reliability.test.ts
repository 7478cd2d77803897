import { chooseReliability } from '@surae/analysis';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { readOwnReliability } from '../../apps/cli/src/own-reliability.ts';
import '../support/close.ts';
import { assessRows, type Cells, WHOLE_ROW } from '../support/compared-manifest.ts';
import { MemoryIo } from '../support/memory-io.ts';

const ID = 'single-leg.incline10';
const read = (json: unknown, of?: string) =>
  readOwnReliability('own.json', new TextEncoder().encode(JSON.stringify(json)), of);
const small = { protocol: ID, pairs: 20, standard_error: 1.9, standard_error_upper_80: 2.3 };

/** Each ratio of the second visit 5 % above or below that of the first, in turn. */
const pairs = (count: number): number[][] =>
  Array.from({ length: count }, (_, i) => [0.9, 0.9 * Math.exp(i % 2 === 0 ? 0.05 : -0.05)]);

/** The error that a count of this protocol would be held against. */
function used({ own }: ReturnType<typeof read>) {
  return chooseReliability({ measure: 'repetitions', protocolId: ID, unit: '1', before: 20, own: own[ID] });
}

test('the small object: with 20 pairs the upper bound is used, with 30 the error itself', () => {
  expect(used(read(small))).toMatchObject({ standardError: 2.3, source: { kind: 'own-clinic', people: 20 } });
  expect(used(read({ ...small, pairs: 30 }))?.standardError).toBe(1.9);
  expect(read(small).note).toBe(`Own error of ${ID} from 20 pairs of tests: 1.9, used first.`);
});

test('under 15 pairs it is shown and not used: the published one stands', () => {
  const found = read({ ...small, pairs: 14 });
  expect(used(found)).toMatchObject({ standardError: 2.25, source: { kind: 'published' } });
  expect(found.note).toBe(
    `Own error of ${ID} from 14 pairs of tests: 1.9, shown and not used, for 15 pairs are needed.`,
  );
});

test('what the command agree writes is taken, with the protocol named beside it', async () => {
  // differences of 2 and -2 in turn: the residual variance of each pair is 2 about their mean difference of zero
  const rows = Array.from({ length: 16 }, (_, i) => `P${i},${20 + i},${20 + i + (i % 2 === 0 ? 2 : -2)}`);
  const memory = new MemoryIo();
  memory.files.set('t.csv', `subject,first [repetitions],second [repetitions]\n${rows.join('\n')}\n`);
  expect(await main(['agree', 't.csv', '--json'], memory.io)).toBe(0);
  const json = JSON.parse(memory.out) as unknown;
  const found = read(json, ID);
  const sem = Math.sqrt((16 * 2) / 15);
  // upper bound of the one-sided 80 % interval with 15 degrees of freedom: chi-square 0.2 quantile 10.30696 (SciPy 1.17.1, chi2.ppf(0.2, 15))
  expect([found.own[ID].standardError, found.own[ID].standardErrorUpper80]).toBeCloseToEach(
    [sem, sem * Math.sqrt(15 / 10.30696)],
    { rtol: 1e-6, atol: 0 },
  );
  expect(found.own[ID].pairs).toBe(16);
  expect(() => read(json)).toThrow('own.json: say with --reliability-of ID by which protocol it was measured');
});

test.each([
  ['no object', [], 'own.json: expected one object'],
  ['pairs in words', { ...small, pairs: 'many' }, 'own.json, pairs: expected a number above 0, got "many"'],
  [
    'no error',
    { ...small, standard_error: undefined },
    'own.json, standard_error: expected a number above 0, got nothing',
  ],
  ['an error of zero', { ...small, standard_error: 0 }, 'own.json, standard_error: expected a number above 0, got 0'],
  [
    'a bound under the error',
    { ...small, standard_error_upper_80: 1 },
    'own.json, standard_error_upper_80: expected no less',
  ],
  ['another measure', { ...small, measure: 'work' }, 'own.json, measure: expected one of repetitions, got "work"'],
  ['another unit', { ...small, unit: 'N' }, 'own.json, unit: expected one of'],
  ['a protocol that is none', { ...small, protocol: 'x' }, 'own.json, protocol: expected one of single-leg'],
  [
    'an agreement of another unit',
    { protocol: ID, groups: [], unit: 'mm', across: 'day' },
    'own.json, unit: expected one of',
  ],
  [
    'an agreement of two groups',
    { protocol: ID, groups: [{}, {}], unit: 'reps', across: 'day' },
    'own.json, groups: expected one group, got 2',
  ],
  [
    'an agreement without an error',
    { protocol: ID, groups: [{ standard_error: null }], unit: 'reps', across: 'day' },
    'own.json, groups[0].standard_error: expected a figure, got none',
  ],
])('%s is a fault of the command line, by its place', (_, json, sentence) => {
  expect(() => read(json)).toThrow(sentence);
});

test('of an isometric protocol it is an error of a force, which needs its unit; a share is an error of the logarithm', () => {
  const force = { ...small, protocol: 'isometric.seated', unit: 'N', standard_error: 40, standard_error_upper_80: 45 };
  expect(read(force).own['isometric.seated']).toMatchObject({ unit: 'N', standardError: 40, scale: 'natural' });
  expect(() => read({ ...force, unit: undefined })).toThrow('own.json, unit: expected one of N, N.m, got nothing');
  const share = { ...force, standard_error: 0.05, standard_error_upper_80: 0.06, scale: 'log' };
  expect(read(share).note).toBe('Own error of isometric.seated from 20 pairs of tests: 5 %, used first.');
});

test('bytes that are no JSON are refused', () => {
  expect(() => readOwnReliability('own.json', new TextEncoder().encode('{'), ID)).toThrow('own.json: not JSON');
});

test('the note says how large the error of ratios is and whether it is used; both notes stand together', () => {
  const ratios = pairs(16);
  expect(read({ protocol: ID, ratios }).note).toBe(
    `Own ratios of the legs by ${ID} from 16 pairs of visits: error 3.65 %, used first.`,
  );
  expect(read({ protocol: ID, ratios: pairs(14) }).note).toContain('shown and not used, for 15 pairs are needed.');
  const both = read({ ...small, ratios, source: 'ours' });
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
