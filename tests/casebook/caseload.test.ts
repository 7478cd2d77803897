import { answerKinds, caseloadKinds, caseloadOf, caseloadVersion, visitEventKinds } from '@surae/casebook';
import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { bodyVersion } from '../../packages/casebook/src/kinds/body-kind.ts';
import { kindOf } from '../../packages/casebook/src/kinds/kinds.ts';

let sequence = 0;

function document(kind: string, id: string, about: string | null, body: Json = {}): StoredDocument {
  sequence += 1;
  const at = `2026-03-${String(sequence).padStart(2, '0')}T09:30:00.000+01:00`;
  return { id, kind, schema: 1, about, author: 'tester', at, body, hash: '', sequence };
}

const person = (id: string): StoredDocument =>
  document('person', id, null, { name: id, bodyMassKg: 70, heelLeverM: null, demo: false });

test('people stand in the order in which they were added, with their visits, the newest first', () => {
  const all = [
    person('a'),
    person('b'),
    document('visit', 'v1', 'a', { personId: 'a' }),
    document('visit', 'v2', 'b', { personId: 'b' }),
    document('visit', 'v3', 'a', { personId: 'a' }),
    document('visit', 'v4', 'a', { personId: 'a' }),
    document('visit-closed', 'e1', 'v1'),
    document('set-begun', 's3', 'v3'),
    document('person-amended', 'm1', 'a', { change: { bodyMassKg: 72 }, by: 'R. N.' }),
  ];
  const list = caseloadOf([...all].reverse());
  expect(list.map((one) => [one.person.id, one.person.bodyMassKg, one.visits.map(({ id }) => id)])).toEqual([
    ['a', 72, ['v4', 'v3', 'v1']],
    ['b', 70, ['v2']],
  ]);
  const lines = list[0].visits.map(({ closed, answered }) => [closed, answered]);
  expect(lines).toEqual([
    [false, false],
    [false, true],
    [true, true],
  ]);
  expect(list[0].visits[2].begunAt).toBe(all[2].at);
  expect(list[0].amended).toMatchObject([{ field: 'bodyMassKg', before: 70, after: 72, by: 'R. N.' }]);
});

test('a visit is one with a test once a set or pushes were begun in it that were not taken back', () => {
  const tested = (...inside: readonly StoredDocument[]): boolean =>
    caseloadOf([person('a'), document('visit', 'v', 'a', { personId: 'a' }), ...inside])[0].visits[0].tested;
  const back = (kind: string): StoredDocument => document(kind, 'x', 'v', { setId: 's', why: 'wrong' });
  expect(tested()).toBe(false);
  expect(tested(document('visit-closed', 'c', 'v'))).toBe(false);
  expect(tested(document('set-begun', 's', 'v'))).toBe(true);
  expect(tested(document('pull-begun', 's', 'v'))).toBe(true);
  expect(tested(document('set-begun', 's', 'v'), back('set-aside'))).toBe(false);
  expect(tested(document('pull-begun', 's', 'v'), back('pull-aside'))).toBe(false);
  expect(tested(document('set-begun', 's', 'v'), back('set-aside'), document('set-begun', 't', 'v'))).toBe(true);
});

test('it needs no document that grows with a recording', () => {
  expect([...caseloadKinds, ...answerKinds]).not.toContain('set-result');
  expect([...caseloadKinds, ...answerKinds]).not.toContain('pull-report');
  for (const kind of [...answerKinds, 'visit-closed'] as const) expect(visitEventKinds).toContain(kind);
});

test('its version tells of the bodies that can be read for it: a newer one that was passed over is read after that', () => {
  const readable = (kind: string): number => bodyVersion(kindOf(kind)!);
  const [, people, visits] = caseloadVersion.split('.').map(Number);
  for (const kind of ['person', 'person-amended']) expect(readable(kind)).toBe(people);
  for (const kind of ['visit', 'visit-closed', 'visit-history', 'set-aside', 'pull-aside', ...answerKinds])
    expect(readable(kind)).toBe(visits);
  // where one of these gets a second version, it has to stand in the version of the list
  for (const kind of ['amendment', 'removal', 'episode', 'morning-check']) expect(readable(kind)).toBe(1);
});
