import type { RungAnswer, Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { ladderLines } from '../../../apps/dashboard/src/journey/ladder-lines.ts';
import { HIGH, visitAtChoice } from '../../support/choice-visit.ts';

const tried = (left: readonly RungAnswer[], right: readonly RungAnswer[], sudden: boolean | null = null): Visit => ({
  ...visitAtChoice({ left: 'no', right: 'mid-portion' }, HIGH),
  ladder: { left: { answers: left, sudden }, right: { answers: right, sudden: null } },
});

test('a leg that was not tried has no line', () => {
  expect(ladderLines(visitAtChoice({ left: 'no', right: 'no' }))).toEqual([]);
  expect(ladderLines(tried([], [0])).map(({ side }) => side)).toEqual(['right']);
});

test('each leg is told by its own limit: how far it came, and where it stopped', () => {
  expect(ladderLines(tried([0, 1, 2, 5], [0, 4])).map(({ text }) => text)).toEqual([
    'Left leg: up to ten raises on one leg within the limit for pain of 5.',
    'Right leg: up to walking within the limit for pain of 3. Stopped at one raise on both legs: pain 4.',
  ]);
});

test('a raise that was not attempted, and one that was tried in vain, are told apart', () => {
  const [left, right] = ladderLines(tried([0, 1, 'could-not'], [0, 1, 'not-done'], true)).map(({ text }) => text);
  expect(left).toMatch(/Tried one raise on one leg and could not\. Said to be new and sudden\.$/);
  expect(right).toMatch(/One raise on one leg: not attempted\.$/);
  expect(ladderLines(tried([9], []))[0].text).toMatch(/^Left leg: no rung within/);
});
