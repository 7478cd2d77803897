import type { StudyFile } from '@surae/study';

/** What is declared of the invented people: whether they raise the heel more often at the second visit. */
export function messyStudy(seed: number): StudyFile {
  return {
    kind: 'surae-study',
    version: 1,
    title: 'Invented people before and after eight weeks of heel raises',
    question: 'Do they raise the heel more often after eight weeks than before?',
    amends: null,
    test: 'heel-raise',
    protocol: { id: 'single-leg.floor', parameters: {} },
    settings: {},
    outcomes: { primary: 'count.scored', secondary: ['measures.peak_height_mm', 'measures.work_heel_j'] },
    trials: [{ manifest: 'visit', is: ['1', '2'] }],
    comparison: {
      of: 'visits',
      manifest: null,
      first: '2',
      second: '1',
      scale: 'difference',
      perPerson: 'only',
      level: 0.95,
      margin: 2,
    },
    exclusions: [
      { code: 'few', words: 'fewer than three attempts', rule: { column: 'count.attempted', below: 3 } },
      { code: 'late', words: 'the tester saw that the test was begun late', rule: null },
    ],
    blinding: { seed: `messy folder ${seed}`, raters: ['ada', 'ben'], repeatedShare: 0.4, leastBetween: 3 },
    choices: [
      { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'both are in use' },
      { parameter: 'exclusion.few', values: ['not-applied'], why: 'three attempts are a number of ours' },
    ],
  };
}
