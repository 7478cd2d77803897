import { kindOf, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { planItems, planSide, typedLines } from '../../../apps/dashboard/src/journey/plan-lines.ts';
import { madeVisit } from '../../support/made-visit.ts';

test('a plan is for the sore leg, and for both where both or none is sore', () => {
  const sideOf = (left: Visit['sore']['left'], right: Visit['sore']['right']): string =>
    planSide({ ...madeVisit(), sore: { left, right } });
  expect([sideOf('insertion', 'no'), sideOf('no', 'mid-portion')]).toEqual(['left', 'right']);
  expect([sideOf('insertion', 'mid-portion'), sideOf('no', 'no'), sideOf(null, null)]).toEqual([
    'both',
    'both',
    'both',
  ]);
});

test('a typed line is one that holds anything', () => {
  expect(typedLines(' ten slow ones \n\n  \nrest on Sunday')).toEqual(['ten slow ones', 'rest on Sunday']);
  expect(typedLines('')).toEqual([]);
  expect(typedLines('x'.repeat(500))[0]).toHaveLength(200);
});

test('lines are kept as plan items that nobody proposed, each once', () => {
  const items = planItems(['holds', 'walk', 'holds'], 'left', '2026-03-01');
  expect(items.map(({ what }) => what)).toEqual(['holds', 'walk']);
  for (const item of items) {
    expect(item).toMatchObject({ side: 'left', from: '2026-03-01', proposedBy: null, decision: 'accepted' });
    expect(kindOf('plan-item')!.versions.at(-1)!.safeParse(item).success).toBe(true);
  }
});
