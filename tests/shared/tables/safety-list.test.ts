import { SAFETY_LIST, SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';

const before = SAFETY_LIST.filter((entry) => entry.when === 'before');
const during = SAFETY_LIST.filter((entry) => entry.when === 'during');

test('what is asked before comes before what is watched during', () => {
  expect(SAFETY_LIST).toEqual([...before, ...during]);
});

test('before a test the gravest comes first: no test, no maximal effort, caution', () => {
  const weight = { 'do-not-test': 0, 'no-maximal-isometric': 1, caution: 2, stop: 3 };
  const weights = before.map((entry) => weight[entry.effect]);
  expect(weights).toEqual([...weights].sort());
  expect(new Set(weights)).toEqual(new Set([0, 1, 2]));
});

test('before a test each line is a question, during it a statement that is seen or heard', () => {
  for (const { ask, id } of before) expect(ask.endsWith('?'), id).toBe(true);
  for (const { ask, id } of during) expect(ask.endsWith('.'), id).toBe(true);
});

test('what is watched during has ids of its own and one next step', () => {
  for (const { id, next } of during) expect([id.startsWith('safety.during.'), next]).toEqual([true, 'Stop at once.']);
  expect(before.filter(({ id }) => id.startsWith('safety.during.'))).toEqual([]);
  expect(during.map(({ id }) => id)).toEqual(expect.arrayContaining(['safety.during.pain', 'safety.during.patient']));
});

test('what no reason opens: rupture, clot, infection, zero raises, fluoroquinolone, steroid', () => {
  const never = SAFETY_LIST.filter(({ override }) => override === 'never').map(({ id }) => id);
  expect(never).toEqual([
    'safety.rupture',
    'safety.clot',
    'safety.infection',
    'safety.zero-raises',
    'safety.fluoroquinolone',
    'safety.steroid',
  ]);
});

test('an override is a matter of locks alone', () => {
  for (const { id, effect, override } of SAFETY_LIST) {
    expect(override === 'not-needed', id).toBe(effect !== 'do-not-test');
  }
});

test('an implant keeps from a maximal isometric effort, and says whom to ask and how far a sensor stays away', () => {
  const line = SAFETY_LIST.find(({ id }) => id === 'safety.implant')!;
  expect(line).toMatchObject({ when: 'before', effect: 'no-maximal-isometric', mark: 'from-memory' });
  expect(line.ask).toMatch(/pacemaker/);
  expect(line.next).toMatch(/until whoever looks after it was asked.*15 cm/);
});

test('the version is that of these lines: whoever changes a line gives it another number', () => {
  const lines = before.map(({ id, ask }) => `${id} ${ask.length}`);
  expect([SAFETY_LIST_VERSION, lines.length]).toEqual(['4', 13]);
});
