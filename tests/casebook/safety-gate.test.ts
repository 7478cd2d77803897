import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { locksOf, mayTest, notesOf, safetyLines } from '../../packages/casebook/src/safety-gate.ts';
import type { SafetyAnswer } from '../../packages/casebook/src/visit.ts';

const clear: SafetyAnswer = {
  listVersion: SAFETY_LIST_VERSION,
  seenWhole: true,
  ticked: [],
  overridden: [],
  at: '2026-03-01T09:26:00.000+01:00',
};
/** Later on the same day. */
const now = '2026-03-01T17:40:00.000+01:00';
const ticked = (...ids: string[]): SafetyAnswer => ({ ...clear, ticked: ids });
const overruled = (id: string, reason = 'examined'): SafetyAnswer => ({
  ...ticked(id),
  overridden: [{ id, reason }],
});

const firm = [
  'safety.rupture',
  'safety.clot',
  'safety.infection',
  'safety.zero-raises',
  'safety.fluoroquinolone',
  'safety.steroid',
];
const withReason = ['safety.bone', 'safety.surgery-fracture', 'safety.nerve-vessel'];
const notes = ['safety.heart', 'safety.implant', 'safety.inflammatory', 'safety.other-caution'];

test('every line of the list stands in exactly one of the three groups', () => {
  expect(safetyLines.map(({ id }) => id).sort()).toEqual([...firm, ...withReason, ...notes].sort());
});

test('a list that was seen whole and is clear lets anybody be tested', () => {
  for (const origin of ['live', 'by-hand', 'simulated', 'replayed'] as const) {
    expect(mayTest(origin, clear, now)).toEqual({ allowed: true, why: [] });
  }
});

test.each([
  ['not asked', null, ['not-asked']],
  ['not seen whole', { ...clear, seenWhole: false }, ['not-seen-whole']],
  ['another version of the list', { ...clear, listVersion: '0' }, ['other-list']],
  ['an answer of the day before', { ...clear, at: '2026-02-28T23:50:00.000+01:00' }, ['another-day']],
  ['an answer of a day to come', { ...clear, at: '2026-03-02T00:10:00.000+01:00' }, ['another-day']],
  ['a locked line', ticked('safety.bone'), ['locked']],
  ['a line that is not on the list', ticked('safety.from-a-newer-list'), ['unknown-line']],
  [
    'several of these',
    { ...ticked('safety.clot', 'elsewhere'), seenWhole: false, listVersion: '0' },
    ['not-seen-whole', 'other-list', 'locked', 'unknown-line'],
  ],
] as const)('%s keeps from testing; what tests nobody may run, and is told the same', (_, answer, why) => {
  expect(mayTest('live', answer, now)).toEqual({ allowed: false, why });
  expect(mayTest('simulated', answer, now)).toEqual({ allowed: true, why });
  expect(mayTest('replayed', answer, now)).toEqual({ allowed: true, why });
});

test.each(firm)('%s has no override: neither its reason nor any other opens it', (id) => {
  expect(mayTest('live', ticked(id), now).allowed).toBe(false);
  expect(mayTest('live', overruled(id), now).allowed).toBe(false);
  expect(locksOf(overruled(id)).map((line) => line.id)).toEqual([id]);
});

test.each(withReason)('%s is opened by a reason for itself, and by no other or an empty one', (id) => {
  expect(mayTest('live', ticked(id), now).allowed).toBe(false);
  expect(mayTest('live', overruled(id), now).allowed).toBe(true);
  expect(mayTest('live', overruled(id, ' '), now).allowed).toBe(false);
  const forAnother = { ...ticked(id), overridden: [{ id: 'safety.rupture', reason: 'examined' }] };
  expect(mayTest('live', forAnother, now).allowed).toBe(false);
  expect(notesOf(overruled(id)).map((line) => line.id)).toEqual([id]);
});

test.each(notes)('%s goes on with a note', (id) => {
  expect(mayTest('live', ticked(id), now).allowed).toBe(true);
  expect(notesOf(ticked(id)).map((line) => line.id)).toEqual([id]);
});

test('one reason does not open a second lock', () => {
  const answer = { ...overruled('safety.bone'), ticked: ['safety.bone', 'safety.clot'] };
  expect(locksOf(answer).map(({ id }) => id)).toEqual(['safety.clot']);
  expect(mayTest('live', answer, now).why).toEqual(['locked']);
});

test('a reason for a line that is not ticked changes nothing', () => {
  const answer = { ...clear, overridden: [{ id: 'safety.bone', reason: 'examined' }] };
  expect([locksOf(answer), notesOf(answer)]).toEqual([[], []]);
});

test('somebody whose raises are counted by hand is tested as by a sensor', () => {
  const answers = [null, { ...clear, seenWhole: false }, ticked(firm[0]), ticked(withReason[0])];
  for (const answer of answers) {
    expect(mayTest('by-hand', answer, now)).toEqual(mayTest('live', answer, now));
    expect(mayTest('by-hand', answer, now).allowed).toBe(false);
  }
});
