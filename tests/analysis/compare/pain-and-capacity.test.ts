import { InputError, type PainLimits, painFinding, type SetPain } from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';

const limits: PainLimits = {
  painMost: COMPARISON_RULES.painMost.value,
  painMostIrritable: COMPARISON_RULES.painMostIrritable.value,
  painRiseMost: COMPARISON_RULES.painRiseMost.value,
};
const calm: SetPain = { endReason: 'fatigue', peak: 2, resting: 1, sharp: false, highIrritability: false };
const finding = (changes: Partial<SetPain>, repetitions = 20) =>
  painFinding(repetitions, { ...calm, ...changes }, limits);

test('a set that ended in fatigue within the limits shows what the calf could do', () => {
  expect(finding({})).toEqual({
    countShows: 'capacity',
    toleratedRepetitions: null,
    withinLimit: 'yes',
    riseWithin: 'yes',
    limit: 5,
    used: ['end-reason', 'peak-pain', 'resting-pain', 'sharp-pain', 'high-irritability'],
    missing: [],
  });
});

test('worked case: stopped for pain of 6 at 9 is nine tolerated before the limit, never a capacity', () => {
  expect(finding({ endReason: 'pain', peak: 6 }, 9)).toMatchObject({
    countShows: 'tolerated',
    toleratedRepetitions: 9,
    withinLimit: 'no',
    riseWithin: 'no',
  });
});

test.each([
  ['heel-cannot-leave', 'capacity'],
  ['two-prompted-faults', 'capacity'],
  ['cap', 'lower-bound'],
  ['fixed-count-done', 'neither'],
  ['technical', 'neither'],
  ['safety', 'neither'],
] as const)('an end by %s shows %s', (endReason, countShows) => {
  expect(finding({ endReason })).toMatchObject({ countShows, toleratedRepetitions: null });
});

test('pain of 5 is within the usual limit and above that of an irritable tendon; sharp pain never is within', () => {
  expect(finding({ peak: 5, resting: 3 }).withinLimit).toBe('yes');
  expect(finding({ peak: 5, highIrritability: true })).toMatchObject({ withinLimit: 'no', limit: 3 });
  expect(finding({ peak: 3, highIrritability: true }).withinLimit).toBe('yes');
  expect(finding({ peak: 1, sharp: true }).withinLimit).toBe('no');
});

describe('each input missing in turn', () => {
  test.each([
    ['end-reason', { endReason: null }, { countShows: 'not-known', withinLimit: 'yes', riseWithin: 'yes' }],
    ['peak-pain', { peak: null }, { countShows: 'capacity', withinLimit: 'cannot_tell', riseWithin: 'cannot_tell' }],
    ['resting-pain', { resting: null }, { countShows: 'capacity', withinLimit: 'yes', riseWithin: 'cannot_tell' }],
    ['sharp-pain', { sharp: null }, { countShows: 'capacity', withinLimit: 'cannot_tell', riseWithin: 'yes' }],
  ] as const)('%s', (missing, change, expected) => {
    expect(finding(change)).toMatchObject({ ...expected, missing: [missing] });
  });

  test('high-irritability: between both limits it cannot be told, outside them it can', () => {
    const within = (peak: number) => finding({ peak, highIrritability: null }).withinLimit;
    expect([3, 4, 5, 6].map(within)).toEqual(['yes', 'cannot_tell', 'cannot_tell', 'no']);
    expect(finding({ highIrritability: null })).toMatchObject({ limit: 3, missing: ['high-irritability'] });
  });
});

test('whatever is missing together, within the limit needs a peak and whether it was sharp, and a rise needs both pains', () => {
  const keys = ['endReason', 'peak', 'resting', 'sharp', 'highIrritability'] as const;
  const names = ['end-reason', 'peak-pain', 'resting-pain', 'sharp-pain', 'high-irritability'] as const;
  for (let missing = 0; missing < 32; missing++) {
    const lacks = (key: (typeof keys)[number]): boolean => (missing & (1 << keys.indexOf(key))) !== 0;
    const found = finding(Object.fromEntries(keys.filter(lacks).map((key) => [key, null])));
    expect(found.missing).toEqual(names.filter((_, i) => lacks(keys[i])));
    expect(found.used).toEqual(names.filter((_, i) => !lacks(keys[i])));
    // a peak of 2 is under both limits, whether the tendon is irritable or not
    expect(found.withinLimit).toBe(lacks('peak') || lacks('sharp') ? 'cannot_tell' : 'yes');
    expect(found.riseWithin).toBe(lacks('peak') || lacks('resting') ? 'cannot_tell' : 'yes');
    expect(found.countShows).toBe(lacks('endReason') ? 'not-known' : 'capacity');
    expect(found.toleratedRepetitions).toBeNull();
  }
});

test('counts and pains that make no sense are refused', () => {
  for (const change of [{ peak: 11 }, { peak: -1 }, { resting: Number.NaN }]) {
    expect(() => finding(change)).toThrow(InputError);
  }
  expect(() => finding({}, 2.5)).toThrow(InputError);
  expect(() => finding({}, -1)).toThrow(InputError);
});
