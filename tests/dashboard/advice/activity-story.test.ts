import type { Episode } from '@surae/casebook';
import { expect, test } from 'vitest';
import { storyWords } from '../../../apps/dashboard/src/advice/activity-story.ts';
import { advisedPerson, inMarch, madeRun, type Past } from '../../support/advised-person.ts';

const complaint = (began: string | null, changes: Partial<Episode> = {}): Episode => ({
  sore: { left: 'no', right: 'mid-portion' },
  began,
  onset: null,
  loads: null,
  goal: null,
  over: null,
  story: '',
  ...changes,
});
const told = (began: string | null, past: Past = {}, changes: Partial<Episode> = {}) =>
  storyWords(advisedPerson({ episodes: [complaint(began, changes)], ...past }), inMarch(31)).join(' ');
const runs = [madeRun(2), madeRun(8, { distanceM: 8000 }), madeRun(12, { distanceM: 5200 })];

test('the run that went furthest over the longest one before it is named, with what is not known beside it and no cause', () => {
  const text = told(inMarch(14), { runs });
  expect(text).toContain('The run of 8 Mar 2026, 8 km, was 60 % over the longest of the 30 days before it, 5 km.');
  // the day of a run may have had another one
  expect(text).toContain('Of 30 of these days it is not known whether there was a run.');
  // Frandsen 2025 Br J Sports Med 59:1203, abstract
  expect(text).toContain(
    '1.52 times as many overuse injuries (95 %: 1.16 to 2.00) followed such a step as followed none: Frandsen 2025',
  );
  expect(text).toContain('That is no cause of this complaint.');
  expect(text).not.toContain('The study went by way');
  expect(text).toContain('since none of the 30 days before is written down: 1.');
});

test('runs after it began are no part of it, and a month is looked at to its end', () => {
  expect(told(inMarch(7), { runs })).not.toContain('8 Mar 2026,');
  expect(told('2026-03', { runs })).toContain('It began: March 2026, as it was noted.');
  expect(told('2026-03', { runs })).toContain('The run of 8 Mar 2026');
  // no later than today, whatever is dated later
  const past = advisedPerson({ episodes: [complaint('2026-03')], runs });
  expect(storyWords(past, inMarch(7)).join(' ')).not.toContain('8 Mar 2026');
  expect(told('2026-02', { runs })).toContain('No run of the 84 days before is written down.');
});

test('ways are held against ways, and times where there are no ways', () => {
  const timed = runs.map((one, at) => ({ ...one, distanceM: null, durationS: [1800, 1800, 2700][at] }));
  const text = told(inMarch(14), { runs: timed });
  expect(text).toContain('The run of 12 Mar 2026, 45 min, was 50 % over');
  expect(text).toContain('The study went by way; here it is read by time');
});

test('a run within a tenth is no step', () => {
  expect(told(inMarch(14), { runs: [madeRun(2), madeRun(8, { distanceM: 5500 })] })).toContain(
    'No run that is written down was more than a tenth over the longest',
  );
});

test('without a month, or once it is over, nothing is told', () => {
  expect([told(null, { runs }), told('2025', { runs }), told(inMarch(14), { runs }, { over: inMarch(20) })]).toEqual([
    '',
    '',
    '',
  ]);
});
