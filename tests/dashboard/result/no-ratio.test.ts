import { expect, test } from 'vitest';
import { noRatio } from '../../../apps/dashboard/src/result/no-ratio.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

const left = madeSet('left', madeReport('left', sureCount(22)));
const right = madeSet('right', madeReport('right', sureCount(25)));

test('what was not asked stands against a ratio, and the last line is that the other leg may be low too', () => {
  const reasons = noRatio(madeVisit(left, right));
  expect(reasons).toContain(
    'Earlier surgery, rupture, fracture or tear of the leg to compare with was not asked about.',
  );
  expect(reasons).toContain('It was not recorded for both legs whether they are sore.');
  expect(reasons.at(-1)).toBe('The other leg may be low too.');
});

test('a leg that stopped for pain, and two sore legs, are reasons in words', () => {
  const sore = madeSet('left', madeReport('left', sureCount(12), 'pain'));
  const reasons = noRatio({ ...madeVisit(sore, right), sore: { left: 'mid-portion', right: 'insertion' } });
  expect(reasons[0]).toBe('Both tendons are sore: neither leg shows what the other one could do.');
  expect(reasons).toContain('A leg stopped for pain: its count is what was tolerated.');
});

test('where a leg has no result there is nothing to compare, and no reason is needed', () => {
  expect(noRatio(madeVisit(left))).toEqual([]);
  expect(noRatio(madeVisit(left, madeSet('right', null)))).toEqual([]);
});
