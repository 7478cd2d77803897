import { acceptedSet, kindOf, type VisitSet } from '@surae/casebook';
import { CRITERION_IDS, HAND_CRITERIA, HAND_REASONS, HAND_REASONS_FOR, INCLINE_10 } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import {
  handReasons,
  handSentences,
  handWords,
  isSaid,
  judgedByHand,
  stripMarks,
} from '../../../apps/dashboard/src/result/hand-verdicts.ts';
import { judged } from '../../support/detected-set.ts';
import { madeSet } from '../../support/made-visit.ts';

const report = judged({ heightsM: [0.1, 0.1, 0.1, 0.05, 0.05, 0.1] }, { protocol: INCLINE_10 });

/** The set after a person gave these reasons, one after the other. */
function said(...given: readonly (readonly [number, ReturnType<typeof handReasons>[number]])[]): VisitSet {
  const byHand = given.map(([repetition, reason], at) => {
    const event = judgedByHand(madeSet('left', report), repetition, reason);
    const { kind, ...body } = event as Extract<typeof event, { kind: 'verdict-by-hand' }>;
    expect(kindOf(kind)!.versions[0].safeParse(body).success).toBe(true);
    return { id: `h${at}`, at: '2026-03-01T09:32:00Z', author: 'K', body };
  });
  return acceptedSet(madeSet('left', report, { byHand }));
}

const [seenWell] = handReasons('yes');
const knee = handReasons('no').find(({ criterion }) => criterion === 'knee')!;

describe('the marks of a set', () => {
  test('tell each verdict with its reasons, and where the test ended', () => {
    const marks = stripMarks(madeSet('left', report));
    expect(marks.map(({ valid }) => valid)).toEqual(['yes', 'yes', 'yes', 'no', 'no', 'yes']);
    expect(marks.map(({ isFirstAfterEnd }) => isFirstAfterEnd)).toEqual([false, false, false, false, false, true]);
    expect(marks[3]).toMatchObject({ automatic: null, byHand: null, ids: [], label: 'Repetition 4: not met' });
    expect(marks[3].measured).toMatch(/^Measured: not met.*not high enough/);
    expect(stripMarks(madeSet('left', null))).toEqual([]);
  });

  test('show both verdicts where a person judged, and the end moves with them', () => {
    const set = said([5, seenWell]);
    const marks = stripMarks(set);
    expect(marks[4]).toMatchObject({ valid: 'yes', automatic: 'no', ids: ['h0'] });
    expect(marks[4].label).toBe('Repetition 5: met by hand, not met before');
    expect(marks[4].byHand).toBe('By hand: counts, seen, and well done.');
    expect(marks[4].measured).toMatch(/not high enough/);
    expect(marks.some(({ isFirstAfterEnd }) => isFirstAfterEnd)).toBe(false);
    expect(handSentences(set)).toEqual(['By hand 5 count, measured 3.', 'Agreement: 5 of 6.']);
    expect(handSentences(madeSet('left', report))).toEqual([]);
  });

  test('a verdict goes by the top of its repetition: measured anew with other repetitions, it is left out and said', () => {
    const { id, at, author, body } = said([5, seenWell]).byHand![0];
    expect(body.topS).toBe(report.repetitions[4].topS);
    const anew = judged({ heightsM: [0.1, 0.1, 0.1, 0.05] }, { protocol: INCLINE_10 });
    const set = acceptedSet(madeSet('left', anew, { byHand: [{ id, at, author, body: { ...body, repetition: 4 } }] }));
    expect(handSentences(set)).toEqual([
      'A verdict by hand on repetition 4 is left out: measured anew, that number is another movement. Look at it again.',
    ]);
    expect(stripMarks(set)[3]).toMatchObject({ valid: 'no', automatic: null, byHand: null, ids: [] });
    const gone = acceptedSet(madeSet('left', anew, { byHand: [{ id, at, author, body }] }));
    expect(handSentences(gone)).toEqual([
      'A verdict by hand on repetition 5 is left out: measured anew, no repetition has that number.',
    ]);
  });

  test('name every document that an undo takes back, and say what was said last', () => {
    const set = said([2, seenWell], [2, knee]);
    const [, second] = stripMarks(set);
    expect(second).toMatchObject({ valid: 'no', ids: ['h0', 'h1'], byHand: 'By hand: does not count, knee helped.' });
    expect(isSaid(set, 2, knee)).toBe(true);
    expect(isSaid(set, 2, seenWell)).toBe(false);
    expect(isSaid(set, 1, knee)).toBe(false);
  });

  test('read a reason that this version does not know as it stands', () => {
    const body = { setId: 'set-left', repetition: 1, criterion: null, verdict: 'no', why: 'of tomorrow' } as const;
    const byHand = [{ id: 'h', at: '', author: 'K', body }];
    const [first] = stripMarks(acceptedSet(madeSet('left', report, { byHand })));
    expect(first.byHand).toBe('By hand: does not count, of tomorrow.');
    const untold = [{ ...byHand[0], body: { ...body, why: null } }];
    expect(stripMarks(acceptedSet(madeSet('left', report, { byHand: untold })))[0].byHand).toMatch(/no reason told/);
  });
});

test('each verdict has its reasons: the rules that a person can see only for what does not count', () => {
  expect(handWords.map((word) => handReasons(word).length)).toEqual([3, 10, 2]);
  expect([...HAND_CRITERIA].sort()).toEqual(CRITERION_IDS.filter((id) => id !== 'gap').sort());
  const offered = Object.values(HAND_REASONS_FOR).flat() as string[];
  expect(Object.keys(HAND_REASONS).filter((code) => code !== 'seen' && !offered.includes(code))).toEqual([]);
});
