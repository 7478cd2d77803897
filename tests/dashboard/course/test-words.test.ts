import type { VisitSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { testWords } from '../../../apps/dashboard/src/course/test-words.ts';
import { coursePerson } from '../../support/course-person.ts';

async function sets(): Promise<readonly VisitSet[]> {
  const { read } = await coursePerson({
    day: '2026-03-02',
    left: { count: 22 },
    right: { count: 9, reason: 'pain', pain: 6 },
  });
  return (await read()).visits[0].visit.sets;
}

test('a test tells its count, the way it was done and how it ended; pain makes it what was tolerated', async () => {
  const [left, right] = await sets();
  expect(testWords(left)[0]).toBe('Heel raises: left did 22.');
  expect(testWords(left).join(' ')).toMatch(/10 degree board\. Ended by: tired out\.$/);
  expect(testWords(right)[0]).toBe('Heel raises: right stopped for pain with 9 that count.');
  expect(testWords(right).at(-1)).toBe('Ended by: pain.');
});

test('a test that was taken back, and one whose end was not told, say so', async () => {
  const [left] = await sets();
  expect(testWords({ ...left, setAside: true, setAsideWhy: 'other' }).at(-1)).toBe(
    'Taken back, and not counted: other.',
  );
  expect(testWords({ ...left, end: null, report: null })).toContain('How it ended was not told.');
});

test('pushes tell a force', async () => {
  const { read } = await coursePerson({ day: '2026-03-02', pushes: { left: { netN: 900 } } });
  const [set] = (await read()).visits[0].visit.pulls!;
  expect(testWords(set)[0]).toMatch(/^Pushes: left .*900 N/);
});
