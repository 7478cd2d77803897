import type { Visit } from '@surae/casebook';
import { ACTIVITY_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { pointLists } from '../../../apps/dashboard/src/advice/activity-lists.ts';
import { factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch, madeRun, type Past } from '../../support/advised-person.ts';

const lists = (past: Past = {}, changes: Partial<Visit> = {}) => {
  const visit = advisedVisit(changes);
  return pointLists(factsGiven(advisedPerson(past), visit, inMarch(31)), ['left', 'right'], visit);
};

test('of the sore leg alone, each point is met, not met or cannot be told, and what cannot be told says what would settle it', () => {
  const [list, ...others] = lists();
  expect(others).toEqual([]);
  expect(list).toMatchObject({ code: 'start', leg: 'right' });
  expect(list?.title).toMatch(/^Right leg, asked for before running: 0 of 7 met, 4 cannot be told$/);
  const raises = list?.points.find(({ what }) => what.startsWith('At least 20 single-leg raises'));
  expect(raises).toMatchObject({ held: 'no', verdict: ACTIVITY_WORDS.no.text, open: [] });
  expect(raises?.told).toEqual(['14 (the heel raise test, in this visit)', 'Common practice, no source.']);
  const walk = list?.points.find(({ what }) => what.startsWith('A brisk walk'));
  expect(walk?.held).toBe('cannot-tell');
  expect(walk?.open).toEqual([
    'Worst pain in a brisk walk of 30 minutes, of 10: not known (not asked in this visit). Walk briskly for 30 minutes and note the worst pain.',
  ]);
  for (const { held, open } of list?.points ?? []) expect(open.length > 0).toBe(held === 'cannot-tell');
});

test('both legs have lists of their own where both are sore, without a ratio that cannot be asked for', () => {
  const both = lists({}, { sore: { left: 'mid-portion', right: 'mid-portion' } });
  expect(both.map(({ leg }) => leg)).toEqual(['left', 'right']);
  for (const { points } of both) expect(points.some(({ what }) => what.includes('other one'))).toBe(false);
});

test('a target for pushes is asked for only where one was set', () => {
  const asks = (past: Past) => lists(past)[0].points.some(({ what }) => what.startsWith('The target for pushes'));
  const target = { on: inMarch(2), test: 'isometric', side: 'right', value: 1.5, unit: 'times-body-weight' } as const;
  expect([asks({}), asks({ targets: [target] })]).toEqual([false, true]);
});

test('who runs has the points of going on alone too', () => {
  expect(lists({ runs: [madeRun(30)] }).map(({ code }) => code)).toEqual(['start', 'full']);
});

test('what nobody told of a point is asked beside the list, and an answer settles it and can be taken back', () => {
  const asks = (changes: Partial<Visit> = {}) => lists({}, changes)[0].asks.map(({ fact, answer }) => [fact, answer]);
  expect(asks()).toEqual([
    ['pain-brisk-walk', null],
    ['pain-twenty-hops', null],
    ['rise-after-hops', null],
  ]);
  const told = { fact: 'pain-brisk-walk', leg: 'right', answer: 'up-to-2', at: inMarch(31) } as const;
  expect(asks({ factsTold: [told] })[0]).toEqual(['pain-brisk-walk', 'up-to-2']);
  const walk = lists({}, { factsTold: [told] })[0]?.points.find(({ what }) => what.startsWith('A brisk walk'));
  expect(walk).toMatchObject({ held: 'yes', open: [] });
  const more = { ...told, answer: '3-to-5' };
  expect(lists({}, { factsTold: [more] })[0]?.points.find(({ what }) => what.startsWith('A brisk walk'))?.held).toBe(
    'no',
  );
});
