import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { choiceFacts } from '../../../packages/casebook/src/choice/choice-facts.ts';
import { hopsOpen } from '../../../packages/casebook/src/choice/hops-open.ts';
import type { RungAnswer } from '../../../packages/casebook/src/choice/ladder.ts';
import { LOW, visitAtChoice, visitDone } from '../../support/choice-visit.ts';

const safety = { listVersion: '2', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:00:00.000+01:00' };
const visit = { ...visitAtChoice({ left: 'no', right: 'mid-portion' }, LOW), safety };

test('what was never asked is open', () => {
  const unasked = choiceFacts({ ...visit, safety: null }, []);
  expect(hopsOpen(unasked)).toEqual([
    'safety-clear',
    'valid-raises',
    'pain-on-raise',
    'pain-on-trial-hops',
    'no-recent-flare',
  ]);
});

test('twenty raises of each leg last time are enough, nineteen of one are not', () => {
  expect(hopsOpen(choiceFacts(visit, [visitDone(FLOOR, 25, 20)]))).not.toContain('valid-raises');
  expect(hopsOpen(choiceFacts(visit, [visitDone(FLOOR, 25, 19)]))).toContain('valid-raises');
});

test('the safety list is met when it is clear', () => {
  expect(hopsOpen(choiceFacts(visit, []))).not.toContain('safety-clear');
  const locked = { ...safety, ticked: ['safety.rupture'] };
  expect(hopsOpen(choiceFacts({ ...visit, safety: locked }, []))).toContain('safety-clear');
});

test('pain on one raise and on three hops is taken from what each leg bore today', () => {
  const tried = (left: readonly RungAnswer[]) => ({
    left: { answers: left, sudden: null },
    right: { answers: [0, 0, 2, 0, 2], sudden: null },
  });
  const open = (left: readonly RungAnswer[]) => hopsOpen(choiceFacts({ ...visit, ladder: tried(left) }, []));
  expect(open([0, 0, 2, 0, 2])).toEqual(['valid-raises', 'no-recent-flare']);
  expect(open([0, 0, 3, 0, 2])).toContain('pain-on-raise');
  expect(open([0, 0, 2, 0, 3])).toContain('pain-on-trial-hops');
  expect(open([0, 0, 'not-done', 0, 2])).toContain('pain-on-raise');
});
