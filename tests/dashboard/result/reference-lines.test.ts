import type { Report, Side } from '@surae/analysis';
import { expect, test } from 'vitest';
import { referenceLines } from '../../../apps/dashboard/src/result/reference-lines.ts';
import { madeReport, madeSet, madeVisit } from '../../support/made-visit.ts';

type Reference = Partial<NonNullable<Report['reference']>>;

function set(side: Side, reference: Reference | null) {
  const whole = { rule: 'best-two-of-familiarisation', heightUM: 0.002, fromRepetitions: [], raised: false } as const;
  return madeSet(
    side,
    madeReport(side, {}, 'fatigue', { reference: reference && { ...whole, heightM: null, ...reference } }),
  );
}

test('each leg is told with its reference and the rule of it', () => {
  const visit = madeVisit(
    set('left', { heightM: 0.1 }),
    set('right', { heightM: 0.0951, rule: 'best-two-of-first-repetitions' }),
  );
  expect(referenceLines(visit).each).toEqual([
    'Left leg, reference 10.0 cm. Mean of the best two practice raises.',
    'Right leg, reference 9.5 cm. Mean of the best two of the first repetitions.',
  ]);
  expect(referenceLines(visit).lower).toEqual([]);
});

test('a lazy practice that a first repetition beat is told as such', () => {
  const visit = madeVisit(set('left', { heightM: 0.1, raised: true }));
  expect(referenceLines(visit).each[0]).toMatch(/took their place/);
});

test('a reference that is much lower on one leg is said with both heights; at the line it is not', () => {
  const lower = (left: number, right: number) =>
    referenceLines(madeVisit(set('left', { heightM: left }), set('right', { heightM: right }))).lower;
  expect(lower(0.0849, 0.1)).toEqual([
    'Target lower on the left: 8.5 cm against 10.0 cm. A count there is of lower raises.',
  ]);
  expect(lower(0.1, 0.07)[0]).toMatch(/^Target lower on the right: 7\.0 cm against 10\.0 cm/);
  expect(lower(0.085, 0.1)).toEqual([]);
});

test('what is not measured is not told', () => {
  expect(referenceLines(madeVisit(set('left', null), set('right', {})))).toEqual({ each: [], lower: [] });
  expect(referenceLines(madeVisit())).toEqual({ each: [], lower: [] });
});
