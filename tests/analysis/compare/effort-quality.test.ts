import {
  defaultSettings,
  enduranceEffort,
  InputError,
  type IsometricLimits,
  isometricEffort,
  type Report,
} from '@surae/analysis';
import { PULL_PROTOCOLS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

const { judging } = defaultSettings();
const flat = Array<number>(12).fill(0.1);
const fading = flat.map((height, i) => height - 0.0015 * i);

function effort(report: Report, exertion: number | null) {
  return enduranceEffort(report.measures, report.end, exertion, judging);
}

describe('a set to fatigue', () => {
  const whole = judged({ heightsM: fading }, { context: { endReason: 'fatigue' } });

  test('with everything known and full exertion the effort was full', () => {
    expect(effort(whole, 9)).toEqual({
      good: 'yes',
      signs: ['height-drop'],
      reason: 'signs-of-fatigue',
      used: ['end-reason', 'exertion', 'height-drop', 'tempo-drift'],
      missing: [],
    });
  });

  test('without the exertion it cannot be told', () => {
    expect(effort(whole, null)).toMatchObject({ good: 'cannot_tell', missing: ['exertion'] });
  });

  test('without the reason for the end it cannot be told', () => {
    expect(effort(judged({ heightsM: fading }), 9)).toMatchObject({ good: 'cannot_tell', missing: ['end-reason'] });
  });

  const known = judged({ heightsM: flat }, { context: { endReason: 'fatigue' } });

  test('low exertion with both signs looked for and neither seen: stopped before signs of fatigue', () => {
    expect(effort(known, 5)).toMatchObject({ good: 'no', reason: 'stopped-before-signs-of-fatigue', missing: [] });
  });

  test('a sign that could not be measured is not a sign that was absent', () => {
    const { measures, end } = known;
    const noHeight = { ...measures, fatigue: { ...measures.fatigue, dropFraction: null } };
    expect(enduranceEffort(noHeight, end, 5, judging)).toMatchObject({ good: 'cannot_tell', missing: ['height-drop'] });
    const noTempo = { ...measures, tempo: { ...measures.tempo, driftS: null } };
    expect(enduranceEffort(noTempo, end, 5, judging)).toMatchObject({ good: 'cannot_tell', missing: ['tempo-drift'] });
  });

  test('whatever is missing together, full effort needs an end, an exertion and a sign that were seen', () => {
    const { measures, end } = whole;
    for (let missing = 0; missing < 16; missing++) {
      const lacks = (bit: number): boolean => (missing & (1 << bit)) !== 0;
      const found = enduranceEffort(
        {
          ...measures,
          fatigue: { ...measures.fatigue, dropFraction: lacks(2) ? null : measures.fatigue.dropFraction },
          tempo: { ...measures.tempo, driftS: lacks(3) ? null : measures.tempo.driftS },
        },
        lacks(0) ? { ...end, reasonGiven: null, class: 'unknown' } : end,
        lacks(1) ? null : 9,
        judging,
      );
      const names = ['end-reason', 'exertion', 'height-drop', 'tempo-drift'] as const;
      expect(found.missing).toEqual(names.filter((_, bit) => lacks(bit)));
      expect(found.used).toEqual(names.filter((_, bit) => !lacks(bit)));
      // of this set the drop of height is the one sign; the tempo did not drift
      expect(found.good).toBe(lacks(0) || lacks(1) || lacks(2) ? 'cannot_tell' : 'yes');
    }
  });

  test('an exertion outside 0 to 10 is refused', () => {
    for (const exertion of [-1, 11, Number.NaN]) expect(() => effort(whole, exertion)).toThrow(InputError);
  });
});

describe('a maximal hold', () => {
  const { alikeGood, plateauLeast } = PULL_PROTOCOLS[0].parameters;
  const limits: IsometricLimits = { trialsAlike: alikeGood.value!, plateauLeast: plateauLeast.value! };
  const hold = (peaksN: readonly (number | null)[], plateauS: number | null = 1.5) =>
    isometricEffort({ peaksN, plateauS }, limits);

  test('the best two of three within 5 % and a plateau of a second show a maximum', () => {
    expect(hold([900, 1000, 960])).toEqual({ good: 'yes', reasons: [], used: ['trials', 'plateau'], missing: [] });
    expect(hold([1000, 950], 1)).toMatchObject({ good: 'yes' });
  });

  test('trials that differ by more, the last still rising, a short plateau', () => {
    expect(hold([1000, 949, 900])).toMatchObject({ good: 'no', reasons: ['trials-differ'] });
    expect(hold([900, 940, 1000])).toMatchObject({ good: 'no', reasons: ['last-trial-still-rising'] });
    expect(hold([1000, 990], 0.9)).toMatchObject({ good: 'no', reasons: ['plateau-short'] });
  });

  test.each([
    ['plateau', [1000, 990], null, ['plateau-not-known'], ['trials']],
    ['trials', [1000], 1.5, ['too-few-trials'], ['trials', 'plateau']],
    ['trials', [], 1.5, ['too-few-trials'], ['plateau']],
    ['trials', [1000, 990, null], 1.5, ['trial-not-measured'], ['trials', 'plateau']],
    // the one that is missing may have been as high as the best
    ['trials', [1000, 900, null], 1.5, ['trial-not-measured'], ['trials', 'plateau']],
  ] as const)('without %s it cannot be told: %j', (missing, peaksN, plateauS, reasons, used) => {
    expect(hold(peaksN, plateauS)).toEqual({ good: 'cannot_tell', reasons, used, missing: [missing] });
  });

  test('what is known to be short stays so, whatever is missing', () => {
    expect(hold([1000], 0.5)).toMatchObject({ good: 'no', reasons: ['plateau-short', 'too-few-trials'] });
  });

  test('a peak of zero is no missing one: it is refused', () => {
    expect(() => hold([1000, 0])).toThrow(InputError);
    expect(() => hold([1000, Number.NaN])).toThrow(InputError);
    expect(() => hold([1000, 990], -1)).toThrow(InputError);
  });
});
