import { expect, test } from 'vitest';
import { LinkFollow } from '../../../apps/dashboard/src/live/link-follow.ts';
import { forceBlock } from '../../support/force-block.ts';

test('the last news that says something stays, and a hole is told once', () => {
  const follow = new LinkFollow();
  expect(follow.said).toBeNull();
  follow.hear({ state: 'lost', reason: 'away' });
  const { said } = follow;
  follow.hear({ state: 'trying', attempt: 1 });
  expect(follow.said).toBe(said);
  expect(follow.isAway).toBe(true);
  follow.hear({ state: 'back', afterS: 1, lostCount: 3 });
  expect(follow.said).toContain('Missing: 3');
  expect(follow.isAway).toBe(false);
  follow.add(forceBlock(0, 0, [1]));
  expect(follow.takeHole()).toBe(false);
  follow.add(forceBlock(4, 0.04, [1]));
  follow.add(forceBlock(5, 0.05, [1]));
  expect([follow.takeHole(), follow.takeHole()]).toEqual([true, false]);
});
