import { noHistory, type PlanItem } from '@surae/casebook';
import { handoutCode, handoutOfCode } from '@surae/exchange';
import { expect, test } from 'vitest';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';
import { madePlanItem } from '../../support/plan-items.ts';

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
  const plan: readonly PlanItem[] = [madePlanItem({ what: 'Holds', side: 'right' })];
  const handout = handoutOf(visit, { name: 'Mill', telephone: '000 11' }, plan);
  expect(handout).toEqual({
    day: '2026-03-01',
    asked: 'right',
    usual: { left: null, right: 3, stiffness: '10-to-30' },
    contact: { name: 'Mill', telephone: '000 11' },
    lines: ['hold-same'],
    legs: {
      left: { told: 'did', value: 27, low: 25, high: 27 },
      right: { told: 'pain', value: 9, low: 9, high: 9 },
    },
    plan: [{ what: 'Holds', side: 'right' }],
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
