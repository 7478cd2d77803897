import { InputError, type IrritabilityAnswers, type IrritabilityInput, irritabilityOf } from '@surae/analysis';
import { IRRITABILITY_INPUTS } from '@surae/shared';
import { describe, expect, test } from 'vitest';

const low: IrritabilityAnswers = {
  provokedBy: 'fast-or-heavy-load',
  peakPain: 2,
  settlesAfter: 1,
  morningStiffness: 5,
  restPain: 'none',
  trend: 'steady-or-better',
};
const high: IrritabilityAnswers = {
  provokedBy: 'walking-or-standing',
  peakPain: 6,
  settlesAfter: 25,
  morningStiffness: 31,
  restPain: 'present',
  trend: 'worsening',
};
const inputs = Object.keys(IRRITABILITY_INPUTS) as IrritabilityInput[];

test('with every input low the grade is low, and every input decides it', () => {
  expect(irritabilityOf(low)).toMatchObject({
    grade: 'low',
    treatAs: 'low',
    decidedBy: inputs,
    used: inputs,
    missing: [],
  });
});

test.each(inputs)('%s alone raises the grade to high', (input) => {
  expect(irritabilityOf({ ...low, [input]: high[input] })).toMatchObject({
    grade: 'high',
    treatAs: 'high',
    decidedBy: [input],
  });
});

describe('each input missing in turn', () => {
  test.each(inputs)('without %s it is not graded, and treated as moderate', (input) => {
    expect(irritabilityOf({ ...low, [input]: null })).toMatchObject({
      grade: null,
      treatAs: 'moderate',
      missing: [input],
      used: inputs.filter((one) => one !== input),
    });
  });

  test.each(inputs)('without %s a known high stays high: nothing missing could lower it', (input) => {
    expect(irritabilityOf({ ...high, [input]: null })).toMatchObject({
      grade: 'high',
      treatAs: 'high',
      missing: [input],
    });
  });
});

test('whatever is missing together, low needs every input, and high one that is known', () => {
  for (let missing = 1; missing < 2 ** inputs.length; missing++) {
    const left = inputs.filter((_, bit) => (missing & (1 << bit)) === 0);
    const without = (answers: IrritabilityAnswers): IrritabilityAnswers => ({
      ...answers,
      ...Object.fromEntries(inputs.filter((input) => !left.includes(input)).map((input) => [input, null])),
    });
    expect(irritabilityOf(without(low))).toMatchObject({ grade: null, treatAs: 'moderate', used: left });
    const known = left.length > 0;
    expect(irritabilityOf(without(high))).toMatchObject({
      grade: known ? 'high' : null,
      treatAs: known ? 'high' : 'moderate',
      decidedBy: left,
    });
  }
});

test('with nothing told it is not graded, and nothing decided it', () => {
  const nothing = Object.fromEntries(inputs.map((input) => [input, null])) as unknown as IrritabilityAnswers;
  expect(irritabilityOf(nothing)).toEqual({
    grade: null,
    treatAs: 'moderate',
    byInput: {},
    decidedBy: [],
    used: [],
    missing: inputs,
  });
});

test('worked case: pain of 6, stiff for 25 minutes, worse after shifts, settles overnight: high by peak pain alone', () => {
  const found = irritabilityOf({
    provokedBy: 'single-raises-or-long-walk',
    peakPain: 6,
    settlesAfter: 14,
    morningStiffness: 25,
    restPain: null,
    trend: 'fluctuating',
  });
  expect(found).toMatchObject({ grade: 'high', decidedBy: ['peakPain'], missing: ['restPain'] });
  expect(found.byInput).toEqual({
    provokedBy: 'moderate',
    peakPain: 'high',
    settlesAfter: 'moderate',
    morningStiffness: 'moderate',
    trend: 'moderate',
  });
});

test.each([
  ['peakPain', [3, 'low'], [3.5, 'moderate'], [4, 'moderate'], [5, 'moderate'], [5.5, 'high']],
  ['settlesAfter', [0, 'low'], [11.9, 'low'], [12, 'moderate'], [24, 'moderate'], [24.1, 'high']],
  ['morningStiffness', [0, 'low'], [9, 'low'], [10, 'moderate'], [30, 'moderate'], [31, 'high']],
] as const)('limits of %s', (input, ...cases) => {
  for (const [value, grade] of cases)
    expect(irritabilityOf({ ...low, [input]: value }).grade, String(value)).toBe(grade);
});

test('a choice between the ends is moderate', () => {
  expect(irritabilityOf({ ...low, restPain: 'occasional' }).grade).toBe('moderate');
  expect(irritabilityOf({ ...low, trend: 'fluctuating' }).grade).toBe('moderate');
});

test('numbers that make no sense are refused', () => {
  for (const change of [{ peakPain: 11 }, { peakPain: -1 }, { settlesAfter: -1 }, { morningStiffness: Number.NaN }]) {
    expect(() => irritabilityOf({ ...low, ...change })).toThrow(InputError);
  }
});
