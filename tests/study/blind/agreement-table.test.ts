import { expect, test } from 'vitest';
import { agreementTable } from '../../../packages/study/src/blind/agreement-table.ts';
import type { PairOfCounts } from '../../../packages/study/src/blind/blind-agreement.ts';

const PAIR: PairOfCounts = {
  kind: 'between-raters',
  first: 'ada',
  second: 'ben',
  sets: 9,
  same: 5,
  withinOne: 8,
  bias: 0.25,
  icc: { kind: 'given', value: 0.9, interval: { low: 0.6, high: 0.97 } },
  sem: { kind: 'not-given', reason: 'all-alike' },
  limits: null,
  repetitions: 80,
  firstAlone: 2,
  secondAlone: 0,
  kappa: { kind: 'given', value: 1, interval: null },
  observed: 1,
};

test('figures stand under their columns; what is not given is empty, with the reason beside it', () => {
  const { columns, rows } = agreementTable([PAIR]);
  const row = Object.fromEntries(columns.map(({ key }, at) => [key, rows[0][at]]));
  expect(rows[0]).toHaveLength(columns.length);
  expect(row).toMatchObject({ icc: 0.9, icc_low: 0.6, icc_high: 0.97, icc_not_given: null });
  expect(row).toMatchObject({ sem: null, sem_low: null, sem_not_given: 'all-alike' });
  expect(row).toMatchObject({
    kappa: 1,
    kappa_low: null,
    kappa_not_given: null,
    bias: 0.25,
    within_one: 8,
    first_alone: 2,
  });
});
