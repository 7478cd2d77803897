import { acceptedSet, type VerdictByHand, verdictPlace } from '@surae/casebook';
import { INCLINE_10 } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { judged } from '../support/detected-set.ts';
import { madeSet } from '../support/made-visit.ts';

/** Repetitions of two seconds whose tops lie at 3, 5, 7, 9 s. */
const report = judged({ heightsM: [0.1, 0.1, 0.1, 0.05] }, { protocol: INCLINE_10 });
/** The same samples measured so that the first movement is none: every number is one less. */
const anew = { ...report, repetitions: report.repetitions.slice(1).map((one, i) => ({ ...one, index: i + 1 })) };

function hand(repetition: number, topS?: number) {
  const top = topS === undefined ? {} : { topS };
  const body: VerdictByHand = { setId: 'set-left', repetition, ...top, criterion: null, verdict: 'no', why: 'seen' };
  return { id: `h${repetition}`, at: '2026-03-01T09:32:00Z', author: 'K', body };
}

describe('a verdict by hand', () => {
  test('is laid on where the top at its number lies within half a repetition, and nowhere else', () => {
    const placed = [5, 4.01, 5.99, 6.01, 3.9, 7].map((topS) =>
      verdictPlace({ repetition: 2, topS }, report.repetitions),
    );
    expect(placed).toEqual([null, null, null, 'another-movement', 'another-movement', 'another-movement']);
    expect(verdictPlace({ repetition: 5, topS: 11 }, report.repetitions)).toBe('no-repetition');
  });

  test('of an earlier version, which does not tell the top, goes by its number', () => {
    expect(verdictPlace({ repetition: 2 }, report.repetitions)).toBeNull();
    expect(verdictPlace({ repetition: 9 }, report.repetitions)).toBeNull();
  });

  test('goes by the time between tops where starts and ends are not known', () => {
    const bare = report.repetitions.map(({ topS }) => ({ topS, startS: null, endS: null }));
    expect(verdictPlace({ repetition: 2, topS: 5.9 }, bare)).toBeNull();
    expect(verdictPlace({ repetition: 2, topS: 6.1 }, bare)).toBe('another-movement');
    expect(verdictPlace({ repetition: 1, topS: 3.1 }, bare.slice(0, 1))).toBe('another-movement');
    expect(verdictPlace({ repetition: 1, topS: 3 }, bare.slice(0, 1))).toBeNull();
  });

  test('stays off the wrong repetition when a set is measured anew, and stands apart with its reason', () => {
    const verdicts = [hand(2, 5), hand(3)];
    const before = acceptedSet(madeSet('left', report, { byHand: verdicts }));
    expect(before.report!.repetitions.map(({ valid }) => valid)).toEqual(['yes', 'no', 'no', 'no']);
    expect(before.notLaidOn).toBeUndefined();
    const after = acceptedSet(madeSet('left', anew, { byHand: verdicts }));
    expect(after.report!.repetitions.map(({ valid }) => valid)).toEqual(['yes', 'yes', 'no']);
    expect(after.byHand).toEqual([verdicts[1]]);
    expect(after.notLaidOn).toEqual([{ verdict: verdicts[0], why: 'another-movement' }]);
    expect(acceptedSet(after)).toEqual(after);
  });

  test('that alone does not fit leaves the report as it was measured', () => {
    const set = acceptedSet(madeSet('left', anew, { byHand: [hand(2, 5)] }));
    expect(set.report).toBe(anew);
    expect(set).toMatchObject({ byHand: [], notLaidOn: [{ why: 'another-movement' }] });
    expect(set.automatic).toBeUndefined();
  });
});
