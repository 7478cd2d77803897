import { type Entry, noHistory, type PlanItem } from '@surae/casebook';
import { handoutCode, handoutOfCode, planKey, seriesKey, wordsHome } from '@surae/exchange';
import { expect, test } from 'vitest';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

test('what is taken home tells the day, the legs, the plan and what was confirmed, and no name', () => {
  const { left } = noHistory.legs;
  const visit = {
    ...madeVisit(
      madeSet('left', madeReport('left', { ...sureCount(27), scoredLow: 25 })),
      madeSet('right', madeReport('right', sureCount(9), 'pain')),
    ),
    sore: { left: 'no', right: 'insertion' } as const,
    history: {
      legs: {
        left,
        right: { ...left, irritability: { ...left.irritability, painNow: 3, stiffness: '10-to-30-minutes' as const } },
      },
      about: null,
    },
    handOver: { how: 'code' as const, lines: ['hold-same'] },
    closed: true,
  };
  const planned = (id: string, body: PlanItem): Entry<PlanItem> => ({ id, at: '', author: 'RN', body });
  const plan = [
    planned('a', madePlanItem({ what: 'Holds', side: 'right' })),
    planned('b', madeExercise('one-leg-raise', { side: 'right', restS: 60.4 })),
    planned('c', madeExercise('of-tomorrow', { what: 'Something new' })),
    planned('d', madeRunLimit({}, { why: 'first-runs' })),
    planned('e', madeRunLimit({}, { why: 'because he asked' })),
  ];
  const handout = handoutOf(visit, { name: 'Mill', telephone: '000 11' }, plan);
  expect(handout).toMatchObject({
    day: '2026-03-01',
    asked: 'right',
    usual: { left: null, right: 3, stiffness: '10-to-30' },
    contact: { name: 'Mill', telephone: '000 11' },
    lines: ['hold-same'],
    legs: {
      left: { told: 'did', value: 27, low: 25, high: 27 },
      right: { told: 'pain', value: 9, low: 9, high: 9 },
    },
    planKey: planKey(['a', 'b', 'c', 'd', 'e']),
    series: seriesKey(visit.personId),
    plan: [
      wordsHome('Holds', 'right', '2026-03-01'),
      { of: 'exercise', code: 'one-leg-raise', what: '', sets: 3, restS: 60, lowestFootDeg: 0 },
      // what this version knows by no list is told by its words
      { of: 'words', code: null, what: 'Something new' },
      // what somebody wrote as a reason stays in the clinic
      { of: 'running', why: 'first-runs', run: { mostS: 300 } },
      { of: 'running', why: null },
    ],
  });
  expect(handoutOfCode(handoutCode(handout))).toEqual(handout);
});

test('a visit that tells nothing of it leaves it open', () => {
  const handout = handoutOf(madeVisit(madeSet('left', null)), null, []);
  expect(handout).toMatchObject({
    asked: 'both',
    contact: null,
    lines: [],
    legs: { left: null, right: null },
    plan: [],
  });
});
