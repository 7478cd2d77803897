import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { practiceFor } from '../../packages/casebook/src/practice.ts';
import { pullSetOf } from '../../packages/casebook/src/pull-events.ts';
import { foldVisit, setOf } from '../../packages/casebook/src/visit-events.ts';
import { madeReport } from '../support/made-visit.ts';

let sequence = 0;
function document(kind: string, body: object, id = `d${sequence + 1}`): StoredDocument {
  sequence += 1;
  const at = `2026-03-01T09:00:${String(sequence % 60).padStart(2, '0')}Z`;
  return { id, sequence, hash: '', kind, schema: 1, about: 'v', author: 'test', at, body: body as Json };
}
const begun = document('visit', { personId: 'p' }, 'v');
const choice = (side: string) => ({
  side,
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'f',
  placement: 'heel',
  origin: 'live',
});
const set = (side: 'left' | 'right', count: number, id: string = side): StoredDocument[] => [
  document('set-begun', { choice: choice(side), bytesId: `bytes-${id}` }, id),
  document('set-stopped', { setId: id, liveCount: count }),
  document('set-end', { setId: id, end: { reason: 'fatigue', painPeak: 0, exertion: 9 } }),
  document('set-result', { setId: id, report: madeReport(side, { scored: count }), settingsHash: 'h' }),
];
const rest = (): StoredDocument => document('rest-over', { restS: 130 });
const twice = (counts: 'first' | 'second' | null, setId = 'right', of = 'heel-raise') =>
  document('same-leg', { test: of, setId, counts });

test('one leg twice: the second has the name of that leg and is kept, the first counts, and the other leg stands open with its rest', () => {
  const told = twice('first');
  const visit = foldVisit(begun, [...set('left', 22), rest(), ...set('right', 15), document('result-seen', {}), told]);
  expect(setOf(visit, 'left')).toMatchObject({ id: 'left', report: { side: 'left', count: { scored: 22 } } });
  expect(setOf(visit, 'right')).toBeUndefined();
  expect(visit.sets.at(-1)).toMatchObject({
    id: 'right',
    bytesId: 'bytes-right',
    choice: { side: 'left' },
    report: { side: 'left' },
    setAside: true,
    setAsideWhy: 'same-leg',
    setAsideBy: told.id,
  });
  expect([visit.restS, visit.resultSeen]).toEqual([null, false]);
});

test('which of the two counts is said anew, and the one before counts again', () => {
  const all = [...set('left', 22), rest(), ...set('right', 15), twice('first'), twice('second')];
  const visit = foldVisit(begun, all);
  expect(setOf(visit, 'left')).toMatchObject({ id: 'right', setAside: false, setAsideWhy: null });
  expect(setOf(visit, 'left')).not.toHaveProperty('setAsideBy');
  expect(visit.sets[0]).toMatchObject({ id: 'left', setAside: true, choice: { side: 'left' } });
  expect(setOf(foldVisit(begun, [...all, twice('first')]), 'left')?.id).toBe('left');
  // without the answer everything is as it was recorded: nothing that is stored was changed
  const undone = foldVisit(
    begun,
    all.filter(({ kind }) => kind !== 'same-leg'),
  );
  expect([setOf(undone, 'left')?.id, setOf(undone, 'right')?.id, undone.restS]).toEqual(['left', 'right', 130]);
});

test('that it was the other leg is kept, and changes no name; what was answered is taken back and not answered away', () => {
  const all = [...set('left', 22), rest(), ...set('right', 15)];
  const no = foldVisit(begun, [...all, twice(null)]);
  expect(setOf(no, 'right')).toMatchObject({ id: 'right', sameLeg: 'no', setAside: false });
  expect([setOf(no, 'left')?.id, no.restS]).toEqual(['left', 130]);
  expect(foldVisit(begun, [...all, twice('first'), twice(null)]).sets[1]).toMatchObject({
    sameLeg: 'yes',
    setAside: true,
  });
});

test('the leg that was left out is tested afterwards under its own name, and a report that comes late has the name that counts', () => {
  const second = set('right', 15);
  const visit = foldVisit(begun, [
    ...set('left', 22),
    rest(),
    ...second.slice(0, 3),
    twice('first'),
    second[3],
    rest(),
    ...set('right', 9, 'third'),
  ]);
  expect(visit.sets.map(({ id, choice: { side }, report }) => [id, side, report?.side])).toEqual([
    ['left', 'left', 'left'],
    ['right', 'left', 'left'],
    ['third', 'right', 'right'],
  ]);
  expect([setOf(visit, 'left')?.id, setOf(visit, 'right')?.id, visit.restS]).toEqual(['left', 'third', 130]);
});

test('practice before the second set was of that leg too; a set done again for another reason stays as it was', () => {
  const raises = [
    { heightM: 0.1, heightUM: 0 },
    { heightM: 0.1, heightUM: 0 },
  ];
  const practice = [
    document('practice-begun', { choice: choice('right'), bytesId: 'b' }, 'practice'),
    document('practice-stopped', { practiceId: 'practice', raises }),
  ];
  const earlier = [...set('left', 4, 'spoiled'), document('set-aside', { setId: 'spoiled', why: 'set-up' })];
  const all = [...earlier, ...set('left', 22), rest(), ...practice, ...set('right', 15), twice('second')];
  const visit = foldVisit(begun, all);
  expect(practiceFor(visit, { side: 'right', placement: 'heel', origin: 'live' })).toBeUndefined();
  expect(practiceFor(visit, { side: 'left', placement: 'heel', origin: 'live' })?.id).toBe('practice');
  expect(visit.sets.map(({ id, setAsideWhy }) => [id, setAsideWhy])).toEqual([
    ['spoiled', 'set-up'],
    ['left', 'same-leg'],
    ['right', null],
  ]);
});

test('pushes are told of by themselves, and an answer about a set that is not there, or is the first, changes nothing', () => {
  const plate = (side: string) => ({ ...choice(side), placement: 'platform' });
  const pulls = [
    document('pull-begun', { choice: plate('left') }, 'pull-1'),
    document('pull-begun', { choice: plate('right') }, 'pull-2'),
    document('pull-rest-over', { restS: 90 }),
  ];
  const all = [...set('left', 22), rest(), ...set('right', 15), ...pulls];
  const visit = foldVisit(begun, [...all, twice('first', 'pull-2', 'isometric')]);
  expect([pullSetOf(visit, 'left')?.id, pullSetOf(visit, 'right')?.id, visit.pullRestS]).toEqual([
    'pull-1',
    undefined,
    undefined,
  ]);
  expect([setOf(visit, 'right')?.id, visit.restS]).toEqual(['right', 130]);
  const before = foldVisit(begun, all);
  expect(foldVisit(begun, [...all, twice('first', 'nowhere'), twice('second', 'left')])).toEqual(before);
});
