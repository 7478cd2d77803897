import { defaultSettings } from '@surae/analysis';
import { kinds } from '@surae/casebook';
import { type Extent, type RecordDocument, recordStudy } from '@surae/exchange';
import { TRIAL_FRAME_COLUMNS } from '@surae/shared';
import { type Json, MemoryStore } from '@surae/storage';
import { beforeAll, expect, test } from 'vitest';
import { recordedStream } from '../../../apps/dashboard/src/demo/recorded-stream.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { madeReport, sureCount } from '../../support/made-visit.ts';
import { tellVisits } from '../../support/told-visit.ts';

const store = new MemoryStore();
const request = { extent: { of: 'clinic' }, settings: defaultSettings(), software: 'surae 0.1.0', read: null } as const;
const body = { name: 'Ottilie Marsh', birthYear: 1980, sex: 'women', bodyMassKg: 60, heelLeverM: 0.15 } as const;

let documents: RecordDocument[];
let visits: readonly string[];
let recordedVisit: string;

beforeAll(async () => {
  visits = await tellVisits(store, body, [
    { day: '2026-03-01', left: { count: 20 }, right: { count: 15, reason: 'pain', pain: 5 } },
    { day: '2026-03-15', left: { count: 21 }, right: { count: 18 }, pushes: { left: { netN: 900 } } },
  ]);
  // a second person, with the bytes of one set and those of another gone
  const book = new VisitBook(store, { isoNow: () => '2026-04-01T10:00:00+02:00' }, 'test');
  const { id: personId } = await book.addPerson({ name: 'Bram Vale', bodyMassKg: null, heelLeverM: null, demo: false });
  recordedVisit = await book.beginVisit(personId);
  const timesS = Float64Array.from({ length: 700 }, (_, i) => i / 100);
  const samples = timesS.map((timeS) => 0.05 * Math.sin(timeS));
  const bytesId = await recordedStream(await book.openBytes(recordedVisit, 'set'), {
    timesS,
    channels: [{ quantity: 'heel-height', axis: null, samples }],
  });
  const report = madeReport('left', sureCount(3));
  const choice = {
    side: 'left',
    protocolId: report.protocol.id,
    protocolFingerprint: 'as chosen',
    placement: 'heel',
    origin: 'replayed',
  } as const;
  const sensor = {
    route: 'serial',
    kindName: 'string',
    deviceName: 'unit 4',
    descriptionId: null,
    batteryPercent: null,
    names: {},
  } as const;
  const setId = await book.record(recordedVisit, {
    kind: 'set-begun',
    choice: { ...choice, sensor, stringRestLengthM: 0.123 },
    bytesId,
  });
  await book.record(recordedVisit, {
    kind: 'set-result',
    setId,
    report,
    settingsHash: 'h'.repeat(64),
    software: 'surae 0.0.9',
  });
  const lost = await book.record(recordedVisit, { kind: 'set-begun', choice, bytesId: 'gone' });
  await book.record(recordedVisit, { kind: 'set-aside', setId: lost, why: 'interrupted' });
  const all = await Promise.all(kinds.map(({ kind }) => store.documents({ kind })));
  documents = all.flat();
});

test('people, visits and trials of a whole clinic, as they stand in the record', async () => {
  const study = await recordStudy(documents, request);
  expect(study.people).toMatchObject([
    { name: 'Ottilie Marsh', birthYear: 1980, ageYears: 46, sex: 'women', bodyMassKg: 60, heelLeverM: 0.15 },
    { name: 'Bram Vale', birthYear: null, ageYears: null, bodyMassKg: null },
  ]);
  expect(study.visits.map(({ dayOffset }) => dayOffset)).toEqual([0, 14, 0]);
  expect(study.visits[0]).toMatchObject({
    legs: { left: { sore: 'no', injury: 'none' }, right: { sore: 'mid-portion' } },
  });
  expect(study.trials.map(({ test: kind, side }) => `${kind} ${side}`)).toEqual([
    'heel-raise left',
    'heel-raise right',
    'heel-raise left',
    'heel-raise right',
    'isometric left',
    'heel-raise left',
    'heel-raise left',
  ]);
  expect(study.trials[1]).toMatchObject({
    endReason: 'pain',
    painPeak: 5,
    exertion: 9,
    restS: 180,
    status: 'assessed',
  });
  expect(study.trials[0].restS).toBeNull();
});

test.each<[Extent['of'], () => Extent, number, number]>([
  ['person', () => ({ of: 'person', personId: documents.find(({ kind }) => kind === 'person')!.id }), 2, 5],
  ['visits', () => ({ of: 'visits', visitIds: [visits[1]] }), 1, 3],
])('of one %s nothing else leaves', async (_, extent, visitCount, trialCount) => {
  const study = await recordStudy(documents, { ...request, extent: extent() });
  expect(study.people.map(({ name }) => name)).toEqual(['Ottilie Marsh']);
  expect([study.visits.length, study.trials.length]).toEqual([visitCount, trialCount]);
});

test('what was recorded is read when it is asked for; bytes that are gone are told', async () => {
  const extent = { of: 'visits', visitIds: [recordedVisit] } as const;
  const study = await recordStudy(documents, { ...request, extent, read: (id) => store.bytes(id) });
  const [whole, lost] = study.trials;
  expect(whole).toMatchObject({
    device: 'string: unit 4',
    origin: 'replayed',
    settingsHash: 'h'.repeat(64),
    software: 'surae 0.0.9',
    stringRestLengthM: 0.123,
  });
  const trace = await whole.trace!();
  expect(trace.groups[0].timesS).toHaveLength(700);
  expect((await whole.raw!()).bytes.length).toBeGreaterThan(700 * 8);
  expect(whole.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect(lost).toMatchObject({
    sha256: null,
    trace: null,
    raw: null,
    status: 'no-result',
    stringRestLengthM: null,
    setAside: true,
    setAsideWhy: 'interrupted',
  });
});

test('a set that was counted again leaves with both results, the first as that of the trial', async () => {
  const own = documents.find(({ kind, about }) => kind === 'set-begun' && about === visits[0])!;
  const report = { ...madeReport('left', sureCount(17)), protocol: { id: 'other', version: '1', fingerprint: '{}' } };
  const body = { setId: own.id, report, settingsHash: 's', software: 'surae 0.2.0', why: 'asked' };
  const added = { ...own, id: 'again', kind: 'recount', sequence: 1e6, body: JSON.parse(JSON.stringify(body)) as Json };
  const study = await recordStudy([...documents, added], request);
  const [trial, ...others] = study.trials;
  expect(trial.result).toMatchObject({ report: { count: { scored: 20 } } });
  expect(trial.recounts).toMatchObject([
    { key: 'again', protocol: 'other', settingsHash: 's', why: 'asked', result: { report: { count: { scored: 17 } } } },
  ]);
  expect(others.every(({ recounts }) => recounts === undefined)).toBe(true);
});

test('a pop and a leg that was named otherwise leave with the set, and of every other it is told that there was none', async () => {
  const own = documents.find(({ kind, about }) => kind === 'set-begun' && about === visits[0])!;
  const end = { reason: 'safety', painPeak: 6, exertion: null, happened: 'pop' };
  const popped = { ...own, id: 'popped', kind: 'set-end', sequence: 1e6, body: { setId: own.id, end } as Json };
  const swapped = {
    ...own,
    id: 'swapped',
    kind: 'legs-swapped',
    sequence: 1e6 + 1,
    body: { test: 'heel-raise' } as Json,
  };
  const before = (await recordStudy(documents, request)).trials;
  expect(before.every(({ happened, renamed }) => happened === null && renamed === false)).toBe(true);
  const study = await recordStudy([...documents, popped, swapped], request);
  const trial = study.trials.find(({ key }) => key === own.id)!;
  const was = before.find(({ key }) => key === own.id)!;
  expect(trial).toMatchObject({ endReason: 'safety', happened: 'pop', renamed: true });
  expect(trial.side).not.toBe(was.side);
  expect(TRIAL_FRAME_COLUMNS.map(({ key }) => key)).toEqual(expect.arrayContaining(['happened', 'leg_renamed']));
});
