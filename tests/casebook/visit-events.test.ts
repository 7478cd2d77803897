import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { foldVisit, setOf, visitEventKinds } from '../../packages/casebook/src/visit-events.ts';
import { madeReport } from '../support/made-visit.ts';

let sequence = 0;

function document(kind: string, body: unknown, id = `d${sequence + 1}`): StoredDocument {
  sequence += 1;
  const at = `2026-03-01T09:00:${String(sequence % 60).padStart(2, '0')}Z`;
  return { id, sequence, hash: '', kind, schema: 1, about: 'v', author: 'test', at, body: body as Json };
}

const begun = document('visit', { personId: 'p' }, 'v');
const choice = {
  side: 'left',
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'f',
  placement: 'foot',
  origin: 'simulated',
};

test('a visit without events knows nothing but whose it is', () => {
  expect(foldVisit(begun, [])).toEqual({
    id: 'v',
    personId: 'p',
    begunAt: begun.at,
    sore: { left: null, right: null },
    safety: null,
    first: null,
    sets: [],
    restS: null,
    closed: false,
  });
});

test('each event tells its part of a set, from its begin to its result', () => {
  const report = madeReport('left', { attempted: 3 });
  const first = document('set-begun', { choice, bytesId: 'b' }, 's');
  const stopped = document('set-stopped', { setId: 's', liveCount: 3 });
  const end = { reason: 'pain', painPeak: 6, exertion: null };
  const visit = foldVisit(begun, [
    document('visit-sore', { sore: { left: 'insertion', right: 'no' } }),
    document('visit-first', { first: 'left' }),
    first,
    document('set-mark', { setId: 's', mark: { atS: 2, criterion: 'knee' } }),
    document('set-mark', { setId: 's', mark: { atS: 4, criterion: 'hands' } }),
    stopped,
    document('set-end', { setId: 's', end }),
    document('set-result', { setId: 's', report, settingsHash: 'h' }),
    document('rest-over', { restS: 130.5 }),
    document('visit-closed', {}),
  ]);
  expect(visit).toMatchObject({ sore: { left: 'insertion', right: 'no' }, first: 'left', restS: 130.5, closed: true });
  expect(visit.sets).toEqual([
    {
      id: 's',
      choice,
      bytesId: 'b',
      begunAt: first.at,
      stoppedAt: stopped.at,
      liveCount: 3,
      marks: [
        { atS: 2, criterion: 'knee' },
        { atS: 4, criterion: 'hands' },
      ],
      end,
      report,
      setAside: false,
      setAsideWhy: null,
    },
  ]);
});

test('a set that was set aside stays with its reason, and the next one of the side counts', () => {
  const visit = foldVisit(begun, [
    document('set-begun', { choice, bytesId: 'b1' }, 's1'),
    document('set-aside', { setId: 's1', why: 'set-up' }),
    document('set-begun', { choice, bytesId: 'b2' }, 's2'),
  ]);
  expect(visit.sets.map(({ id, setAside, setAsideWhy }) => [id, setAside, setAsideWhy])).toEqual([
    ['s1', true, 'set-up'],
    ['s2', false, null],
  ]);
  expect(setOf(visit, 'left')?.id).toBe('s2');
  expect(setOf(visit, 'right')).toBeUndefined();
});

test('of two sets of a side the later one counts', () => {
  const visit = foldVisit(begun, [
    document('set-begun', { choice, bytesId: 'b1' }, 's1'),
    document('set-begun', { choice, bytesId: 'b2' }, 's2'),
  ]);
  expect(setOf(visit, 'left')?.id).toBe('s2');
});

test('an answer is replaced by a later one, with its own time', () => {
  const answer = { listVersion: '2', seenWhole: true, ticked: ['safety.clot'], overridden: [] };
  const later = document('visit-safety', { safety: { ...answer, ticked: [] } });
  const visit = foldVisit(begun, [document('visit-safety', { safety: answer }), later]);
  expect(visit.safety).toEqual({ ...answer, ticked: [], at: later.at });
});

test('an answer that says less than this version asks is read cautiously: not seen whole', () => {
  const old = document('visit-safety', { safety: { listVersion: '1', ticked: ['safety.clot'] } });
  expect(foldVisit(begun, [old]).safety).toEqual({
    listVersion: '1',
    seenWhole: false,
    ticked: ['safety.clot'],
    overridden: [],
    at: old.at,
  });
});

test('events about a set that is not there, and kinds that are not known, change nothing', () => {
  const known = [document('set-begun', { choice, bytesId: 'b' }, 's')];
  const before = foldVisit(begun, known);
  const end = { reason: 'pain', painPeak: null, exertion: null };
  const strays = [
    document('set-stopped', { setId: 'elsewhere', liveCount: 9 }),
    document('set-mark', { setId: 'elsewhere', mark: { atS: 1, criterion: 'knee' } }),
    document('set-end', { setId: 'elsewhere', end }),
    document('set-result', { setId: 'elsewhere', report: null, settingsHash: '' }),
    document('set-aside', { setId: 'elsewhere', why: 'set-up' }),
    document('set-weather', { setId: 's', clouds: 3 }),
    document('person', { name: 'A 17' }),
  ];
  expect(foldVisit(begun, [...known, ...strays])).toEqual(before);
});

test('what was noted while a set ran is kept in order', () => {
  const notes = [
    { atS: 3, what: 'pain', value: 2 },
    { atS: 9, what: 'hidden', value: 1.5 },
  ];
  const visit = foldVisit(begun, [
    document('set-begun', { choice, bytesId: 'b' }, 's'),
    ...notes.map((note) => document('set-note', { setId: 's', note })),
    document('set-note', { setId: 'elsewhere', note: notes[0] }),
  ]);
  expect(visit.sets.map((set) => set.notes)).toEqual([notes]);
});

test('an answer to the safety list that a set stands on is kept beside a newer one; without a set the newer one replaces it', () => {
  const answer = (ticked: string[]) =>
    document('visit-safety', { safety: { listVersion: '2', seenWhole: true, ticked, overridden: [] } });
  const set = document('set-begun', { choice, bytesId: 'b' }, 's');
  const stoodOn = foldVisit(begun, [answer(['safety.heart']), set, answer([])]);
  expect(stoodOn.safety?.ticked).toEqual([]);
  expect(stoodOn.earlierSafety?.map(({ ticked }) => ticked)).toEqual([['safety.heart']]);
  expect(foldVisit(begun, [answer(['safety.heart']), answer([])]).earlierSafety).toBeUndefined();
});

test('every kind of event is listed once', () => {
  expect(new Set(visitEventKinds).size).toBe(visitEventKinds.length);
  expect(visitEventKinds).toHaveLength(37);
});

test('a set whose sensor was lost keeps why; one that was stopped holds nothing of it', () => {
  const open = document('set-begun', { choice, bytesId: 'b' });
  const stopped = (more: object) =>
    foldVisit(begun, [open, document('set-stopped', { setId: open.id, liveCount: 3, ...more })]).sets[0];
  expect(stopped({ sourceLost: 'gone' }).sourceLost).toBe('gone');
  expect(stopped({})).not.toHaveProperty('sourceLost');
});

test('a visit that went on without a test is asked again once the list or the choice is answered anew', () => {
  const seen = document('result-seen', {});
  const list = document('visit-safety', { safety: { listVersion: '2', seenWhole: true, ticked: [], overridden: [] } });
  const chose = document('visit-choice', { choice: { test: 'isometric', protocolId: 'p', from: 'other' } });
  expect(foldVisit(begun, [seen]).resultSeen).toBe(true);
  expect(foldVisit(begun, [seen, list]).resultSeen).toBe(false);
  expect(foldVisit(begun, [seen, chose]).resultSeen).toBe(false);
  const set = document('set-begun', { choice, bytesId: 'b' }, 's');
  expect(foldVisit(begun, [set, seen, list]).resultSeen).toBe(true);
});
