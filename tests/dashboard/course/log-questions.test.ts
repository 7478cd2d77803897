import { expect, test } from 'vitest';
import type { LogEntry, LoggedEntry } from '../../../apps/dashboard/src/course/log-entry.ts';
import { logQuestions } from '../../../apps/dashboard/src/course/log-questions.ts';

const pain = { left: 1, right: 2 };
const morning = (on: string, left = 1): LogEntry => ({
  kind: 'morning-check',
  body: { on, pain: { left, right: 2 }, stiffnessMin: null },
});
const run = (on: string, durationS: number): LogEntry => ({
  kind: 'run',
  body: { on, durationS, distanceM: null, pain },
});
const done = (what: string, side: 'left' | 'both'): LogEntry => ({
  kind: 'done-item',
  body: {
    planItemId: null,
    on: '2026-03-04',
    what,
    side,
    load: null,
    sets: null,
    repetitions: null,
    painDuring: null,
    exertion: null,
  },
});
const known = (...logged: readonly LogEntry[]) => ({
  today: '2026-03-05',
  firstDay: '2026-03-02',
  logged: logged.map((one, at): LoggedEntry => ({ ...one, id: `e${at}` })),
});
const codes = (...of: Parameters<typeof logQuestions>) => logQuestions(...of).map(({ code }) => code);

test('a day between the first visit and today that holds none yet is not asked about', () => {
  expect(codes(morning('2026-03-04'), known(morning('2026-03-03'), run('2026-03-04', 60)))).toEqual([]);
  expect(codes(morning('2026-03-02'), known())).toEqual([]);
  expect(codes(morning('2026-03-05'), known())).toEqual([]);
});

test('a day to come, one before the first visit, and a second morning of a day are asked about', () => {
  expect(codes(morning('2026-03-06'), known())).toEqual(['future']);
  expect(codes(morning('2026-03-01'), known())).toEqual(['before-first']);
  expect(codes(morning('2026-03-01'), { ...known(), firstDay: null })).toEqual([]);
  const [twice] = logQuestions(morning('2026-03-04', 7), known(morning('2026-03-04')));
  expect(twice).toMatchObject({ code: 'twice', other: { id: 'e0' } });
  const hours = (of: number): LogEntry => ({ kind: 'on-feet', body: { on: '2026-03-04', hours: of } });
  expect(codes(hours(6), known(hours(8)))).toEqual(['twice']);
  expect(codes(morning('2026-03-06', 7), known(morning('2026-03-06')))).toEqual(['future', 'twice']);
});

test('an entry that stands is not held against itself', () => {
  expect(codes(morning('2026-03-04'), known(morning('2026-03-04')), 'e0')).toEqual([]);
  expect(codes(morning('2026-03-04'), known(morning('2026-03-04'), morning('2026-03-04', 3)), 'e0')).toEqual(['twice']);
});

test('two runs of a day are two runs, unless they are the same one; so with what was done', () => {
  expect(codes(run('2026-03-04', 60), known(run('2026-03-04', 90)))).toEqual([]);
  expect(codes(run('2026-03-04', 60), known(run('2026-03-04', 60)))).toEqual(['twice']);
  expect(codes(done('raises', 'left'), known(done('raises', 'both'), done('squats', 'left')))).toEqual([]);
  expect(codes(done('raises', 'left'), known(done('raises', 'left')))).toEqual(['twice']);
});

test('a questionnaire has one total of a day and leg; two questionnaires are two', () => {
  const total = (questionnaire: string, side: 'left' | null, points: number): LogEntry => ({
    kind: 'questionnaire-total',
    body: { questionnaire, languageVersion: 'de', total: points, on: '2026-03-04', side },
  });
  expect(codes(total('visa-a', null, 40), known(total('visa-a', null, 50)))).toEqual(['twice']);
  expect(codes(total('visa-a', null, 40), known(total('visa-a', 'left', 40), total('lefs', null, 40)))).toEqual([]);
});

test('a leg has one knee-to-wall test of a day, and the other leg has its own', () => {
  const reach = (side: 'left' | 'right', trial: number): LogEntry => ({
    kind: 'knee-to-wall',
    body: { on: '2026-03-04', side, unit: 'cm', trials: [trial], pain: null, skipped: null },
  });
  expect(codes(reach('left', 9), known(reach('left', 11)))).toEqual(['twice']);
  expect(codes(reach('right', 9), known(reach('left', 9)))).toEqual([]);
});

test('a run of a file that was taken in before is asked about, on whatever day it is written', () => {
  const of = (on: string, fileSha256: string): LogEntry => ({
    kind: 'run',
    body: { on, durationS: 300, distanceM: null, pain, fileSha256 },
  });
  const [one, other] = ['ab'.repeat(32), 'cd'.repeat(32)];
  expect(codes(of('2026-03-04', one), known(of('2026-03-03', one)))).toEqual(['twice']);
  expect(codes(of('2026-03-04', other), known(of('2026-03-03', one)))).toEqual([]);
  expect(codes(run('2026-03-04', 60), known(run('2026-03-03', 60)))).toEqual([]);
});
