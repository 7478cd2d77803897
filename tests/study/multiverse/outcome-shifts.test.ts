import { expect, test } from 'vitest';
import { analysesOf, assessmentsOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { outcomeShifts, shiftsTable } from '../../../packages/study/src/multiverse/outcome-shifts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy({ choices: [{ parameter: 'protocol.heightFraction', values: [0.9], why: 'why' }] });
const assessments = assessmentsOf(analysesOf(study));
const trials = (...values: (number | null)[]) =>
  values.map((value, at) => studyTrial(`t${at}.csv`, { person: `p${at}` }, value));

const shifts = outcomeShifts(
  study,
  assessments,
  new Map([
    ['as declared', trials(10, 12, 14, 16, null, 20)],
    ['protocol.heightFraction=0.9', trials(8, 12, 15, 11, 9, null)],
  ]),
);

test('every trial with a value counts, and each that moved is told with its direction', () => {
  expect(
    shifts.map(({ trials: count, both, higher, lower, gained, lost }) => [count, both, higher, lower, gained, lost]),
  ).toEqual([
    [5, 5, 0, 0, 0, 0],
    // 10 to 8 and 16 to 11 down, 14 to 15 up, 12 stays; the fifth has a value, the sixth none any more
    [5, 4, 1, 2, 1, 1],
  ]);
});

test('by hand: the quartiles of 10, 12, 14, 16, 20 are 12, 14 and 16', () => {
  expect(shifts[0].spread).toEqual({ least: 10, lower: 12, median: 14, upper: 16, greatest: 20 });
});

test('where no trial has a value there is no spread, and the table leaves its cells empty', () => {
  const none = outcomeShifts(study, assessments, new Map([['as declared', trials(null)]]));
  expect(none[0].spread).toBeNull();
  expect(shiftsTable(study, none).rows[0]).toEqual([
    'as declared',
    true,
    0,
    null,
    null,
    null,
    null,
    null,
    0,
    0,
    0,
    0,
    0,
  ]);
});

test('the declared way comes first, whatever else is assessed', () => {
  expect(shifts.map(({ assessed, isDeclared }) => [assessed, isDeclared])).toEqual([
    ['as declared', true],
    ['protocol.heightFraction=0.9', false],
  ]);
});
