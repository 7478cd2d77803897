import { SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { nextTrial } from '../../../apps/dashboard/src/result/next-trial.ts';
import { donePullSet } from '../../support/made-pull-visit.ts';

const { parameters } = SEATED_PULL;
const { trials } = donePullSet('left').report!;

test('without a trial that counts another one is asked for', () => {
  expect(nextTrial(null, parameters)).toEqual({ kind: 'another', why: 'too-few' });
  expect(nextTrial({ trials: null }, parameters)).toEqual({ kind: 'another', why: 'too-few' });
});

test('the first reason is told; none means enough; at the greatest number no further one is asked for', () => {
  const given = (another: readonly ('too-few' | 'still-improving' | 'inconsistent')[], mayRepeat = true) =>
    nextTrial({ trials: { ...trials!, another, mayRepeat } }, parameters);
  expect(given([])).toEqual({ kind: 'enough' });
  expect(given(['still-improving', 'inconsistent'])).toEqual({ kind: 'another', why: 'still-improving' });
  expect(given(['inconsistent'])).toEqual({ kind: 'another', why: 'inconsistent' });
  expect(given(['still-improving'], false)).toEqual({ kind: 'most-reached', why: 'still-improving' });
});
