import {
  type CasebookVisit,
  type Entry,
  heldBack,
  type PlanItem,
  planAfter,
  planOf,
  type Visit,
} from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeVisit } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

const entry = (id: string, body: PlanItem): Entry<PlanItem> => ({
  id,
  at: '2026-03-01T10:00:00+01:00',
  author: 'RN',
  body,
});
const items = [
  entry('raise', madeExercise('one-leg-raise')),
  entry('step', madeExercise('step-raise', { lowestFootDeg: -10 })),
  entry('run', madeRunLimit()),
  entry('words', madePlanItem()),
];
const clear = {
  listVersion: SAFETY_LIST_VERSION,
  seenWhole: true,
  ticked: [],
  overridden: [],
  at: '2026-04-01T09:00:00Z',
};
const found = (more: Partial<Visit>): Visit => ({ ...madeVisit(), safety: clear, ...more });
const ids = ({ items: kept }: { readonly items: readonly Entry<PlanItem>[] }): readonly string[] =>
  kept.map(({ id }) => id);

test('a line that was ticked since holds everything back that loads, and nothing else', () => {
  const { held, ...rest } = heldBack(items, found({ safety: { ...clear, ticked: ['safety.fluoroquinolone'] } }));
  expect(ids(rest)).toEqual(['words']);
  expect(held.map(({ item, rules }) => [item.id, rules])).toEqual([
    ['raise', ['safety-lock']],
    ['step', ['safety-lock']],
    ['run', ['safety-lock']],
  ]);
});

test('a list that has new lines since holds nothing back, and what was ticked on it does', () => {
  const older = { ...clear, listVersion: '2' };
  expect(ids(heldBack(items, found({ safety: older })))).toEqual(ids({ items }));
  const ticked = { ...older, ticked: ['safety.rupture'] };
  expect(ids(heldBack(items, found({ safety: ticked })))).toEqual(['words']);
  expect(ids(heldBack(items, found({ safety: { ...older, ticked: ['safety.of-tomorrow'] } })))).toEqual(['words']);
});

test('a heel bone that has become sore holds back what lets the heel go below the toes', () => {
  const sore = { left: 'no', right: 'insertion' } as const;
  expect(ids(heldBack(items, found({ sore })))).toEqual(['raise', 'run', 'words']);
});

test('a list that was not gone through takes nothing back, and one that is clear lets all go on', () => {
  expect(ids(heldBack(items, found({ safety: null })))).toEqual(['raise', 'step', 'run', 'words']);
  expect(ids(heldBack(items, found({})))).toEqual(['raise', 'step', 'run', 'words']);
});

test('the plan of a day follows the newest list: held back after a tick, and going on after a clear one', () => {
  const visitOf = (id: string, day: string, more: Partial<Visit>): CasebookVisit =>
    ({ visit: { ...found(more), id, begunAt: `${day}T09:00:00+01:00` } }) as CasebookVisit;
  const plan = items.map(({ id }) => id);
  const ticked = { ...clear, ticked: ['safety.fluoroquinolone'] };
  const visits = [
    visitOf('v1', '2026-03-01', { plan }),
    visitOf('v2', '2026-04-01', { safety: ticked, plan: [] }),
    visitOf('v3', '2026-04-20', {}),
  ];
  const of = (day: string): readonly (readonly string[])[] => {
    const one = planOf({ visits, planItems: items }, day)!;
    return [ids(one), one.held.map(({ item }) => item.id)];
  };
  expect(of('2026-03-31')).toEqual([plan, []]);
  expect(of('2026-04-01')).toEqual([['words'], ['raise', 'step', 'run']]);
  expect(of('2026-04-20')).toEqual([plan, []]);
  // and nobody takes home what is held back
  const home = (at: number): readonly string[] =>
    planAfter({ visits, planItems: items }, visits[at].visit).map(({ id }) => id);
  expect(home(0)).toEqual(plan);
  expect(home(1)).toEqual(['words']);
});
