import type { Visit } from '@surae/casebook';
import { DOUBLE_LEG, FLOOR, INCLINE_10 } from '@surae/shared';
import { expect, test } from 'vitest';
import { choiceFacts, gradeOf } from '../../../packages/casebook/src/choice/choice-facts.ts';
import { HIGH, LOW, visitAtChoice, visitDone } from '../../support/choice-visit.ts';
import { madePullSet } from '../../support/made-pull-visit.ts';
import { madeSet } from '../../support/made-visit.ts';
import { toldReport } from '../../support/told-visit.ts';

const now = visitAtChoice({ left: 'no', right: 'mid-portion' });

test('the test of the last visit is the one in which something was begun, with what was counted', () => {
  const older = visitDone(INCLINE_10, 20, 21);
  const last = visitDone(FLOOR, 24, 19);
  const empty: Visit = { ...visitAtChoice(now.sore), id: 'nothing was begun' };
  expect(choiceFacts(now, []).last).toEqual([]);
  expect(choiceFacts(now, [older, last, empty]).last).toEqual([
    { test: 'heel-raise', protocolId: FLOOR.id, placement: 'foot', at: last.begunAt, counts: { left: 24, right: 19 } },
  ]);
});

test('a visit of two tests gives both in their order; a leg without a result has no count', () => {
  const done = visitDone(FLOOR, 24, 19);
  const both: Visit = { ...done, tests: ['heel-raise', 'isometric'], pulls: [madePullSet('left', [])] };
  const open = { ...both, sets: [done.sets[0], { ...done.sets[1], report: null }] };
  const [raises, pushes] = choiceFacts(now, [open]).last;
  expect(raises.counts).toEqual({ left: 24, right: null });
  expect(pushes).toMatchObject({ test: 'isometric', counts: { left: null, right: null } });
});

test('a count of one leg is taken from the last set that tells it', () => {
  const told = visitDone(FLOOR, 24, 19);
  const technical = { ...told, sets: [madeSet('left', toldReport('left', { count: 2, reason: 'technical' }))] };
  const onTwoLegs = { ...told, sets: [madeSet('left', toldReport('left', { count: 2, protocol: DOUBLE_LEG }))] };
  expect(choiceFacts(now, [told, technical, onTwoLegs]).legs.left.lastRaises).toEqual({ count: 24, low: 24, high: 24 });
  const pain = { ...told, sets: [madeSet('left', toldReport('left', { count: 2, reason: 'pain' }))] };
  expect(choiceFacts(now, [told, pain]).legs.left.lastRaises!.count).toBe(2);
  expect(choiceFacts(now, []).legs.left.lastRaises).toBeNull();
});

test('the higher grade of the sore legs counts; none is sore, none counts', () => {
  const grade = (visit: Visit): string | null => gradeOf(choiceFacts(visit, []));
  expect(grade(visitAtChoice({ left: 'no', right: 'mid-portion' }, LOW))).toBe('low');
  // the left leg is sore too, and nothing was told of it
  expect(grade(visitAtChoice({ left: 'insertion', right: 'mid-portion' }, LOW))).toBe('moderate');
  expect(grade(visitAtChoice({ left: 'insertion', right: 'mid-portion' }, HIGH))).toBe('high');
  expect(grade(visitAtChoice({ left: 'no', right: 'no' }, HIGH))).toBeNull();
});

test('the safety list is clear, is not, or was not asked', () => {
  const safety = { listVersion: '2', seenWhole: true, ticked: ['safety.heart'], overridden: [], at: '2026-03-01' };
  expect(choiceFacts(now, [])).toMatchObject({ safetyClear: null, isometricLocked: false });
  expect(choiceFacts({ ...now, safety }, [])).toMatchObject({ safetyClear: true, isometricLocked: true });
  const locked = { ...safety, ticked: ['safety.fluoroquinolone'] };
  expect(choiceFacts({ ...now, safety: locked }, [])).toMatchObject({ safetyClear: false, isometricLocked: false });
});
