import { acceptedSet, type VerdictByHand } from '@surae/casebook';
import { deidentified, letterOf, repetitionRows, studyByHand, studyTables } from '@surae/exchange';
import { INCLINE_10 } from '@surae/shared';
import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';
import { madeStudy, raiseTrial, studyPerson, studyVisit } from '../../support/made-study.ts';
import { madeSet } from '../../support/made-visit.ts';

const report = judged({ heightsM: [0.1, 0.1, 0.1, 0.05, 0.05, 0.1] }, { protocol: INCLINE_10 });

function said(repetition: number, verdict: VerdictByHand['verdict'], why: string) {
  const body: VerdictByHand = { setId: 'set-left', repetition, criterion: null, verdict, why };
  return { id: `h${repetition}${why}`, at: '2026-03-01T09:32:00Z', author: 'K', body };
}

const set = acceptedSet(
  madeSet('left', report, {
    byHand: [said(5, 'no', 'seen'), said(5, 'yes', 'seen-well'), said(2, 'cannot-tell', 'Mia')],
  }),
);
const study = madeStudy({
  trials: [raiseTrial({ result: { test: 'heel-raise', report: set.report!, ...studyByHand(set) } })],
});

test('a set that nobody judged leaves without a word of it', () => {
  expect(studyByHand(madeSet('left', report))).toEqual({});
  expect(repetitionRows(report.repetitions, undefined)[0]).toMatchObject({ index: 1, byHand: null });
});

test('both verdicts leave, the last of each repetition, with what was measured alone', () => {
  expect(studyByHand(set).byHand).toMatchObject({
    count: { attempted: 6, scored: 3 },
    endAt: 5,
    agreed: 4,
    of: 6,
    verdicts: [
      { repetition: 2, automatic: 'yes', verdict: 'cannot-tell', why: 'Mia' },
      { repetition: 5, automatic: 'no', verdict: 'yes', why: 'seen-well' },
    ],
  });
});

test('the tables hold what counts and, beside it, what was measured', () => {
  const tables = new Map(studyTables(study).map((table) => [table.name, table]));
  const rowsOf = (name: string): Record<string, unknown>[] => {
    const { columns, rows } = tables.get(name)!;
    return rows.map((row) => Object.fromEntries(row.map((cell, at) => [columns[at].key, cell])));
  };
  expect(rowsOf('trials')[0]).toMatchObject({
    'raises.count.scored': 4,
    'raises.automatic.scored': 3,
    'raises.by_hand.agreed': 4,
    'raises.by_hand.of': 6,
    'raises.automatic.end_at': 5,
  });
  const rows = rowsOf('repetitions');
  expect(rows[4]).toMatchObject({ valid: 'yes', 'by_hand.automatic': 'no', 'by_hand.verdict': 'yes' });
  expect(rows[0]).toMatchObject({ valid: 'yes', 'by_hand.automatic': null, 'by_hand.verdict': null });
});

test('the letter says on how many both agree', () => {
  const { text } = letterOf(studyPerson(), studyVisit(), study.trials);
  expect(text).toContain('on 4 of 6 repetitions they agree with what was measured');
  expect(letterOf(studyPerson(), studyVisit(), [raiseTrial()]).text).not.toContain('judged by a person');
});

test('a reason that is no code of a list does not leave with a study in which nobody can be named', () => {
  const out = deidentified(study, { secret: 's', keepDevices: false });
  const result = out.study.trials[0].result as Extract<(typeof study.trials)[0]['result'], { test: 'heel-raise' }>;
  expect(result.byHand!.verdicts.map(({ why }) => why)).toEqual([null, 'seen-well']);
  expect(out.out.strangeCodes).toBe(1);
});
