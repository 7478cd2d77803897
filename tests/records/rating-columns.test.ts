import { expect, test } from 'vitest';
import { ratingColumns } from '../../packages/records/src/rating-columns.ts';

const of = (...names: string[]) => ratingColumns(names, { file: 't.csv', row: 1 });

test('wide: a column a rater, names without their unit', () => {
  expect(of('Subject', 'A [mm]', 'left hand [mm]')).toEqual({
    subject: 0,
    rater: undefined,
    day: undefined,
    values: [
      { index: 1, rater: 'A' },
      { index: 2, rater: 'left hand' },
    ],
    unit: 'mm',
    factors: ['rater'],
  });
});

test('long: subject, rater or day or both, and value, in any order', () => {
  expect(of('value [N]', 'day', 'subject')).toMatchObject({ subject: 2, day: 1, unit: 'N', factors: ['day'] });
  expect(of('subject', 'rater', 'day', 'value [N]').factors).toEqual(['rater', 'day']);
});

test.each([
  ['no subject', ['A [mm]', 'B [mm]'], 'not-a-rating-table', 'a column "subject"'],
  ['one rater', ['subject', 'A [mm]'], 'not-a-rating-table', 'at least two raters'],
  ['neither rater nor day', ['subject', 'value [mm]'], 'not-a-rating-table', '"rater" or "day"'],
  ['a column too many', ['subject', 'rater', 'note', 'value [mm]'], 'not-a-rating-table', 'no other columns'],
  ['no unit', ['subject', 'A [mm]', 'B'], 'missing-unit', 'column "B"'],
  ['an empty unit', ['subject', 'rater', 'value []'], 'missing-unit', 'value [mm]'],
  ['two units', ['subject', 'A [mm]', 'B [cm]'], 'mixed-units', 'the unit [mm]'],
])('%s is refused with file, row and what was expected', (_, names, code, words) => {
  const refused = (): unknown => of(...names);
  expect(refused).toThrow(expect.objectContaining({ code, file: 't.csv', row: 1 }));
  expect(refused).toThrow(words);
});
