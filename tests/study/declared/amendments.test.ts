import { expect, test } from 'vitest';
import { madeWhen, studyLine } from '../../../packages/study/src/declared/amendments.ts';
import { parseStudy } from '../../../packages/study/src/declared/parse-study.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const read = (study: ReturnType<typeof declaredStudy>): ReturnType<typeof parseStudy> =>
  parseStudy(JSON.stringify(study));

const first = read(declaredStudy());
const second = read(
  declaredStudy({
    amends: { study: first.hash, why: 'a sensor was lost' },
    outcomes: { primary: 'count.valid', secondary: [] },
  }),
);
const third = read({ ...second.study, amends: { study: second.hash, why: 'a word was wrong' }, title: 'Heel raises' });

test('the versions of a study stand in their order, each with why it was amended and what differs', () => {
  const line = studyLine(third, [second, first]);
  expect(line.versions.map(({ hash }) => hash)).toEqual([first.hash, second.hash, third.hash]);
  expect(line.amendments).toEqual([
    { from: first.hash, to: second.hash, why: 'a sensor was lost', changed: ['outcomes'] },
    { from: second.hash, to: third.hash, why: 'a word was wrong', changed: ['title'] },
  ]);
  expect(studyLine(third, [first, second])).toEqual(line);
});

test('a result made before an amendment is told apart from one made after, and from one of another study', () => {
  const line = studyLine(third, [first, second]);
  expect(madeWhen(third.hash, line)).toBe('as-declared-now');
  expect(madeWhen(second.hash, line)).toBe('before-an-amendment');
  expect(madeWhen(first.hash, line)).toBe('before-an-amendment');
  expect(madeWhen('0'.repeat(64), line)).toBe('of-another-study');
  expect(madeWhen(third.hash, studyLine(first, []))).toBe('of-another-study');
});

test('a version that is named and not at hand, or that was changed since, is missed', () => {
  expect(() => studyLine(third, [second])).toThrow(`the study file with the hash ${first.hash}`);
  const changed = read({ ...first.study, question: 'Is it so?' });
  expect(() => studyLine(second, [changed])).toThrow(`got ${changed.hash}`);
});
