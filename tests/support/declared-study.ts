import type { StudyFile } from '../../packages/study/src/declared/study-document.ts';

/** A study of two groups by their scored heel raises, with one of everything that may be declared. */
export function declaredStudy(differing: Partial<StudyFile> = {}): StudyFile {
  return {
    kind: 'surae-study',
    version: 1,
    title: 'Heel raises after a winter of cycling and of walking',
    question: 'Do those who cycled raise their heel more often than those who walked?',
    amends: null,
    test: 'heel-raise',
    protocol: { id: 'single-leg.floor', parameters: {} },
    settings: {},
    outcomes: { primary: 'count.scored', secondary: ['measures.peak_height_mm'] },
    trials: [],
    comparison: {
      of: 'groups',
      manifest: 'arm',
      first: 'cycling',
      second: 'walking',
      scale: 'difference',
      perPerson: 'mean',
      level: 0.95,
      margin: 3,
    },
    exclusions: [
      { code: 'few', words: 'fewer than three attempts', rule: { column: 'count.attempted', below: 3 } },
      { code: 'shod', words: 'tested in shoes', rule: { manifest: 'footwear', is: ['shoe'] } },
      { code: 'unusable', words: 'not to be interpreted', rule: { column: 'gate.usable', is: ['no'] } },
      { code: 'late', words: 'the tester saw that the test was begun late', rule: null },
    ],
    blinding: { seed: 'drawn from a hat', raters: ['ada', 'ben'], repeatedShare: 0.25, leastBetween: 2 },
    choices: [
      { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'both are in use' },
      { parameter: 'perPerson', values: ['greatest'], why: 'the best of two is common' },
    ],
    ...differing,
  };
}
