import { createHash } from 'node:crypto';
import { assess, defaultSettings } from '@surae/analysis';
import type { Person } from '@surae/casebook';
import { END_REASON_SENTENCES, SAFETY_LIST, SAFETY_LIST_VERSION, SAFETY_REASONS, SORENESS_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { assessFile } from '../../../apps/cli/src/assess-file.ts';
import { usualSettings } from '../../../apps/cli/src/settings-file.ts';
import { assessmentRequest, recordingOf } from '../../../apps/dashboard/src/result/assessment.ts';
import { bytesFile, repetitionFile, reportFile, sampleFiles } from '../../../apps/dashboard/src/result/set-files.ts';
import { settingsHash } from '../../../apps/dashboard/src/result/settings-hash.ts';
import type { GivenAbout } from '../../../packages/study/src/listed/work-list.ts';
import { csvRows } from '../../support/csv-rows.ts';
import { handMadeRefusal } from '../../support/hand-made-outcome.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';
import { MemoryIo } from '../../support/memory-io.ts';
import { simulatedStream } from '../../support/simulated-stream.ts';
import { toldHistory } from '../../support/told-history.ts';
import { writtenTables } from '../../support/written-tables.ts';

const person: Person = { id: 'p', name: 'Ines Okafor-Lind', bodyMassKg: 70, heelLeverM: 0.18, demo: true };

/** A set on the foot as the screen assesses it, and its files. */
function onScreen() {
  const bytes = simulatedStream('foot', 3, 6);
  const bare = madeSet('left', null);
  const set = madeSet('left', null, { choice: { ...bare.choice, placement: 'foot' } });
  const recording = recordingOf(set, bytes);
  const report = assess({ groups: recording.groups }, assessmentRequest(set, person), defaultSettings());
  return { visit: madeVisit(set), set, recording, report, bytes };
}

test('the samples that were saved give the command line the same counts, verdicts, heights and hashes', async () => {
  const { set, recording, report } = onScreen();
  const [file, ...more] = sampleFiles(set, recording);
  expect(more).toEqual([]);
  const memory = new MemoryIo();
  memory.files.set('saved.csv', String(file.content));
  const about: GivenAbout = {
    ...handMadeRefusal().item.about,
    side: 'left',
    placement: 'foot',
    protocol: set.choice.protocolId,
    heelLeverMm: 180,
    bodyMassKg: 70,
  };
  const item = { file: 'saved.csv', path: 'saved.csv', about, carried: { end_reason: 'fatigue' }, refusal: undefined };
  const outcome = await assessFile(item, usualSettings(), memory.io);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  if (outcome.test !== 'heel-raise') throw new Error('heel raises were asked for');
  expect(report.count.attempted).toBe(6);
  expect(outcome.report.count).toEqual(report.count);
  expect(outcome.report.repetitions).toEqual(report.repetitions);
  expect(outcome.settingsHash).toBe(settingsHash(defaultSettings(), report));
  expect(outcome.sha256).toBe(createHash('sha256').update(String(file.content)).digest('hex'));

  // and its table of repetitions holds the same figures under the same names
  const { table } = writtenTables([{ ...outcome, item: { ...item, carried: {} } }]);
  const ours = csvRows(String(repetitionFile(set, report).content));
  const theirs = table('repetitions.csv');
  expect(ours).toHaveLength(6);
  ours.forEach((row, i) => expect(theirs[i]).toMatchObject(row));
});

test('the report says from what bytes, by which settings and by which software it was made', () => {
  const { visit, set, recording, report, bytes } = onScreen();
  const whole = Buffer.concat(bytes.pieces);
  const { sha256 } = recording.source;
  expect(sha256).toBe(createHash('sha256').update(whole).digest('hex'));
  const provenance = { sha256, settingsHash: settingsHash(defaultSettings(), report), software: 'surae 0.9.9' };
  const written = { ...provenance, writtenBy: 'surae 9.9.9' };
  const content = JSON.parse(String(reportFile(visit, set, report, written).content)) as Record<
    string,
    Record<string, unknown>
  >;
  expect(content['provenance']).toEqual({
    sha256,
    settings_hash: provenance.settingsHash,
    protocol_hash: createHash('sha256').update(report.protocol.fingerprint).digest('hex'),
    software: 'surae 0.9.9',
    written_by: 'surae 9.9.9',
  });
  expect(content['report']).toMatchObject({ count: report.count, protocol: report.protocol });
  expect(content['set']).toMatchObject({ choice: set.choice, liveCount: 0, end: set.end });
});

test('the report holds what was noted, how the set ended, and what was answered before it, in codes', () => {
  const { set, report } = onScreen();
  const told = {
    ...set,
    marks: [{ atS: 4.2, criterion: 'knee' as const }],
    notes: [
      { atS: 3.1, what: 'pain' as const, value: 4 },
      { atS: 5, what: 'prompts' as const, value: 1 },
    ],
    end: { reason: 'pain' as const, painPeak: 6, exertion: 8 },
  };
  const safety = {
    listVersion: SAFETY_LIST_VERSION,
    seenWhole: true,
    ticked: ['safety.bone'],
    overridden: [{ id: 'safety.bone', reason: 'examined' }],
    at: '2026-03-01T09:26:00.000+01:00',
  };
  const sore = { left: 'insertion', right: 'no' } as const;
  const visit = { ...madeVisit(told), sore, history: toldHistory, safety, restS: 120 };
  const provenance = { sha256: 'a', settingsHash: null, software: null, writtenBy: 'surae 9.9.9' };
  const content = JSON.parse(String(reportFile(visit, told, report, provenance).content)) as Record<string, unknown>;
  const { marks, notes, end } = told;
  expect(content['set']).toMatchObject({ marks, notes, end });
  expect(content['visit']).toEqual({
    begunAt: visit.begunAt,
    sore,
    history: toldHistory,
    safety,
    earlierSafety: [],
    restS: 120,
  });
  expect(content['version']).toBe(4);
  // what was not kept is said to be unknown, and is not the version that writes
  expect(content['provenance']).toMatchObject({ settings_hash: null, software: null, written_by: 'surae 9.9.9' });
  // the codes are those of the catalogue
  expect(Object.keys(END_REASON_SENTENCES)).toContain(end.reason);
  expect(Object.keys(SORENESS_WORDS)).toEqual(expect.arrayContaining(Object.values(sore)));
  expect(SAFETY_LIST.map(({ id }) => id)).toContain('safety.bone');
  expect(Object.keys(SAFETY_REASONS)).toContain('examined');
});

test('what was never asked or noted stays open in the report', () => {
  const { visit, set, report } = onScreen();
  const provenance = { sha256: 'a', settingsHash: null, software: null, writtenBy: 'w' };
  const content = JSON.parse(String(reportFile(visit, set, report, provenance).content)) as Record<string, unknown>;
  expect(content['visit']).toMatchObject({
    sore: { left: null, right: null },
    history: null,
    safety: null,
    restS: null,
  });
  expect(content['set']).toMatchObject({ notes: [] });
});

test('no file and no name of a file holds the name of the person', () => {
  const { visit, set, recording, report } = onScreen();
  const provenance = { sha256: 'a', settingsHash: 'b', software: 'c', writtenBy: 'd' };
  const files = [
    ...sampleFiles(set, recording),
    repetitionFile(set, report),
    reportFile(visit, set, report, provenance),
  ];
  expect(files.map(({ name }) => name)).toEqual([
    'surae-20260301-0930-left-samples.csv',
    'surae-20260301-0930-left-repetitions.csv',
    'surae-20260301-0930-left-report.json',
  ]);
  for (const { name, content } of files) expect(`${name} ${String(content)}`).not.toMatch(/ines|okafor|lind/i);
});

test('bytes that cannot be read are saved as they are kept', () => {
  const { set, bytes } = onScreen();
  const { name, content } = bytesFile(set, bytes);
  expect(name).toBe('surae-20260301-0930-left-bytes.bin');
  expect(Buffer.concat(bytes.pieces).equals(content as Uint8Array)).toBe(true);
});

test('a recording with two clocks makes two files', () => {
  const { set, recording } = onScreen();
  const twice = { ...recording, groups: [...recording.groups, ...recording.groups] };
  expect(sampleFiles(set, twice).map(({ name }) => name)).toEqual([
    'surae-20260301-0930-left-samples-1.csv',
    'surae-20260301-0930-left-samples-2.csv',
  ]);
});

test('the report holds the raises for practice of its leg before it, and whether its reference is theirs', () => {
  const { set, report } = onScreen();
  const raises = [
    { heightM: 0.1, heightUM: 0.002 },
    { heightM: 0.11, heightUM: 0.002 },
  ];
  const at = (time: string): string => `2026-03-01T${time}.000+01:00`;
  const done = {
    id: 'p',
    choice: set.choice,
    bytesId: 'b',
    begunAt: at('09:20:00'),
    stoppedAt: at('09:21:00'),
    raises,
  };
  const practice = [
    { ...done, id: 'cut', begunAt: at('09:19:00'), stoppedAt: null, raises: [] },
    done,
    { ...done, id: 'other', choice: { ...set.choice, side: 'right' as const } },
    { ...done, id: 'later', begunAt: at('09:40:00'), stoppedAt: at('09:41:00') },
  ];
  const reference = { ...report.reference!, fromRepetitions: [], raised: false };
  const held = { ...set, report: { ...report, reference } };
  const provenance = { sha256: 'a', settingsHash: null, software: null, writtenBy: 'surae 9.9.9' };
  const read = (visit: Parameters<typeof reportFile>[0]): unknown => {
    const { content } = reportFile(visit, held, report, provenance);
    return (JSON.parse(String(content)) as { readonly practice: unknown }).practice;
  };
  expect(read({ ...madeVisit(held), practice })).toMatchObject([
    { begunAt: at('09:19:00'), stoppedAt: null, raises: [], isReference: false },
    { begunAt: at('09:20:00'), raises, isReference: true },
  ]);
  expect(read({ ...madeVisit(held) })).toEqual([]);
});
