import type { BlockDifference } from '@surae/analysis';
import { expect, test } from 'vitest';
import { liveDifference } from '../../../apps/dashboard/src/result/live-difference.ts';
import { madeReport, madeSet, sureCount } from '../../support/made-visit.ts';

const extra: BlockDifference = { kind: 'only-block', repetition: null, finalTopS: null, blockTopS: 33.48 };
const missing: BlockDifference = { kind: 'only-final', repetition: 3, finalTopS: 9.1, blockTopS: null };
const moved: BlockDifference = { kind: 'top-moved', repetition: 4, finalTopS: 11, blockTopS: 11.4 };

test('the same count, or a missing one, needs no words', () => {
  const report = madeReport('left', sureCount(22), 'fatigue', { blockDifferences: [moved] });
  expect(liveDifference(madeSet('left', report, { liveCount: 22 }))).toEqual([]);
  expect(liveDifference(madeSet('left', report, { liveCount: null }))).toEqual([]);
  expect(liveDifference(madeSet('left', null, { liveCount: 22 }))).toEqual([]);
});

test('another count is said with both numbers and where they part', () => {
  const report = madeReport('right', sureCount(22), 'fatigue', { blockDifferences: [extra, missing, moved, extra] });
  expect(liveDifference(madeSet('right', report, { liveCount: 23 }))).toEqual([
    'Right: 23 were counted while recording; the final pass over the whole recording finds 22. Both are kept.',
    'Counted only while recording: at 33.5, 33.5 s.',
    'Found only in the final pass: repetition 3.',
  ]);
});

test('it is the attempted count that is held against the screen, not the score', () => {
  const report = madeReport('left', { ...sureCount(22), scored: 18 });
  expect(liveDifference(madeSet('left', report, { liveCount: 22 }))).toEqual([]);
  expect(liveDifference(madeSet('left', report, { liveCount: 18 }))).toHaveLength(1);
});
