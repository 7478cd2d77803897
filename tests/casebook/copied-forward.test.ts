import { historyBefore, noHistory, openEpisodes, sorenessBefore, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { dayAfter, episodeLine } from '../support/listed-person.ts';
import { ALL_TOLD, legTold, MODERATE } from '../support/told-visit.ts';

const sore = { left: 'no', right: 'insertion' } as const;
const open = { left: null, right: 'insertion' } as const;
const visit = (day: number, changes: Partial<Visit>): Pick<Visit, 'sore' | 'history' | 'begunAt'> => ({
  begunAt: dayAfter(day),
  sore: { left: null, right: null },
  ...changes,
});

test('where it was sore is that of the last visit that told of both legs', () => {
  const visits = [
    visit(1, { sore: { left: 'mid-portion', right: 'no' } }),
    visit(2, { sore }),
    visit(3, { sore: open }),
  ];
  expect(sorenessBefore(visits, [episodeLine])).toEqual({ sore, from: 'visit', at: dayAfter(2) });
});

test('without such a visit it is what the newest episode says, also where that tells of one leg', () => {
  const newest = { ...episodeLine, id: 'n', at: dayAfter(5), sore: open };
  expect(sorenessBefore([visit(1, { sore: open })], [episodeLine, newest])).toEqual({
    sore: open,
    from: 'episode',
    at: dayAfter(5),
  });
  expect(sorenessBefore([], [])).toBeNull();
});

test('what lasts is taken over, and nothing of pain, stiffness or how it was on the day', () => {
  const history = {
    legs: { left: legTold('over-a-year', MODERATE), right: legTold('none', MODERATE) },
    about: ['one-sided-sport' as const],
  };
  const copied = historyBefore([visit(1, { history: ALL_TOLD }), visit(2, { history }), visit(3, {})]);
  expect(copied).toEqual({
    history: { ...history, legs: { left: legTold('over-a-year'), right: legTold('none') } },
    begunAt: dayAfter(2),
  });
  for (const { irritability } of Object.values(copied!.history.legs)) {
    for (const [question, answer] of Object.entries(irritability)) expect(answer, question).toBeNull();
  }
});

test('a visit that told of the day alone has nothing to take over', () => {
  const today = { ...noHistory, legs: { ...noHistory.legs, left: legTold(null, MODERATE) } };
  expect(historyBefore([visit(1, { history: today })])).toBeNull();
  expect(historyBefore([visit(1, { history: ALL_TOLD }), visit(2, { history: today })])?.begunAt).toBe(dayAfter(1));
  expect(historyBefore([])).toBeNull();
});

test('episodes that are over say nothing of where it is sore', () => {
  const { id, at, onset, began } = episodeLine;
  const body = { sore: { left: 'no', right: 'mid-portion' }, onset, began };
  const kept = { schema: 1, about: 'p', author: 'tester', hash: '', kind: 'episode', at };
  const both = [
    { ...kept, id, sequence: 1, body: { ...body, over: null } },
    { ...kept, id: 'o', sequence: 2, body: { ...body, over: '2026-04' } },
  ];
  expect(openEpisodes(both)).toEqual([episodeLine]);
});
