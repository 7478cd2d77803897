import type { QuestionnaireTotal } from '@surae/casebook';
import { expect, test } from 'vitest';
import { totalSeries } from '../../../apps/dashboard/src/course/total-change.ts';
import { totalPicture } from '../../../apps/dashboard/src/course/total-picture.ts';

const first: QuestionnaireTotal = {
  questionnaire: 'visa-a',
  languageVersion: 'de',
  total: 0,
  on: '2026-01-05',
  side: null,
};
const drawn = (...changes: readonly Partial<QuestionnaireTotal>[]) =>
  totalPicture(
    totalSeries(changes.map((change, at) => ({ id: `${at}`, at: '', author: '', body: { ...first, ...change } })))[0],
  )!;
const of = (picture: ReturnType<typeof drawn>, name: string) =>
  picture.marks.filter(({ attributes }) => attributes['class'] === name);

test('the axis is the whole range whatever the totals are, and a total lies on it in proportion', () => {
  const picture = drawn({}, { on: '2026-03-30', total: 100 }, { on: '2026-02-15', total: 50 });
  const lines = of(picture, 'hair').map(({ attributes }) => Number(attributes['y1']));
  const middles = of(picture, 'mark person').map(({ attributes }) => Number(attributes['y']) + 6);
  expect([...middles].sort((a, b) => b - a)).toEqual(lines);
  expect(of(picture, 'join person')).toHaveLength(2);
  expect(picture.label).toBe(
    'Picture. VISA-A, from 0 to 100, and 100 is best: 0 on 5 Jan 2026, 50 on 15 Feb 2026, 100 on 30 Mar 2026.',
  );
});

test('a total about a leg has the mark of that leg', () => {
  expect(of(drawn({ side: 'left' }), 'mark left')).toHaveLength(1);
  expect(of(drawn({ side: 'right' }), 'mark right')).toHaveLength(1);
});

test('what is of another version is a small mark that nothing joins', () => {
  const picture = drawn({ languageVersion: 'fr' }, { on: '2026-02-15', total: 40 }, { on: '2026-03-30', total: 60 });
  expect(of(picture, 'mark person').map(({ attributes }) => attributes['width'])).toEqual([7, 12, 12]);
  expect(of(picture, 'join person')).toHaveLength(1);
});

test('every mark and word lies within the picture', () => {
  const { marks, width, height } = drawn({ total: 100 }, { on: '2026-03-30', total: 0 });
  for (const { attributes } of marks) {
    for (const name of ['x', 'x1', 'x2']) if (name in attributes) expect(Number(attributes[name])).toBeLessThan(width);
    for (const name of ['y', 'y1', 'y2']) {
      if (!(name in attributes)) continue;
      expect(Number(attributes[name])).toBeGreaterThan(12);
      expect(Number(attributes[name])).toBeLessThan(height);
    }
  }
});

test('nothing is drawn of nothing', () => {
  const [series] = totalSeries([{ id: '', at: '', author: '', body: first }]);
  expect(totalPicture({ ...series, points: [] })).toBeNull();
});
