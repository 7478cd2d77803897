import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { criteriaDifferences, recountRows, recountSentence } from '../../../apps/dashboard/src/result/recount-view.ts';
import { toldReport } from '../../support/told-visit.ts';

const first = toldReport('left', { count: 22 });
const again = toldReport('left', { count: 17, protocol: FLOOR });
const made = { settingsHash: 'a', software: 'surae 1' };
const kept = (body: Partial<typeof made> & { why?: string | null } = {}, report = again) => ({
  id: 'r1',
  at: '2026-03-05T09:00:00+01:00',
  author: 'RN',
  body: { setId: 's', report, settingsHash: 'b', software: 'surae 1', why: null, ...body },
});

test('both results stand beside each other, the first one first, and every difference is named', () => {
  const [one, other] = recountRows(first, made, [kept({ why: 'floor after all' })]);
  expect([one.id, one.count, one.differs]).toEqual([null, '22', []]);
  expect([other.id, other.what, other.count]).toEqual(['r1', 'counted again on 5 Mar 2026', '17']);
  expect(other.differs.join('; ')).toMatch(/surface: 10 degree board then, level floor now/);
  expect(other.differs.at(-1)).toBe('why: floor after all');
});

test('other software, and another method under the same criteria, are differences', () => {
  const differs = (one: ReturnType<typeof kept>) => recountRows(first, made, [one])[1].differs;
  expect(differs(kept({ software: 'surae 2' }))).toContain('made by surae 2');
  expect(differs(kept({}, first))).toContain('other settings of the method');
  expect(differs(kept({ settingsHash: 'a' }, first))).toEqual(['nothing in the criteria', 'why was not told']);
  expect(differs(kept())).not.toContain('other settings of the method');
});

test('what is not kept yet stands last and has no document', () => {
  const rows = recountRows(first, made, [kept()], again);
  expect(rows.map(({ id }) => id)).toEqual([null, 'r1', null]);
  expect(criteriaDifferences(first, first)).toEqual([]);
});

test('on the line of time it is one sentence with its interval', () => {
  const wide = { ...again, count: { ...again.count, scoredLow: 15, scoredHigh: 19 } };
  expect(recountSentence(first, kept({}, wide))).toMatch(/^Counted again on 5 Mar 2026: 17 \(15 to 19\); .*surface: /);
});
