import { assessPulls, defaultSettings } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import { readRecording } from '@surae/records';
import { expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import { pullRecording, pullRequest } from '../../../apps/dashboard/src/result/pull-assessment.ts';
import {
  effortFile,
  pullBytesFiles,
  pullReportFile,
  pullSampleFiles,
} from '../../../apps/dashboard/src/result/pull-files.ts';
import { pullSettingsHash } from '../../../apps/dashboard/src/result/pull-kept.ts';
import { csvRows } from '../../support/csv-rows.ts';
import { bytesOf, donePullSet, madePullVisit } from '../../support/made-pull-visit.ts';
import { MemoryIo } from '../../support/memory-io.ts';
import { toldHistory } from '../../support/told-history.ts';

const set = donePullSet('left');
const report = set.report!;
const recording = pullRecording(set, bytesOf(set));

test('the saved samples give the same report again', () => {
  const [{ name, content }] = pullSampleFiles(set, recording);
  expect(name).toBe('surae-20260301-0930-left-pushes-samples.csv');
  const { groups } = readRecording(new TextEncoder().encode(content as string));
  expect(assessPulls({ groups }, pullRequest(set, { bodyMassKg: 70 }), defaultSettings())).toEqual(report);
});

test('a leg that cannot be read gives the bytes of each trial as they are kept, and no file for a trial without any', () => {
  const kept = bytesOf(set);
  const lost = set.trials[1].bytesId;
  const files = pullBytesFiles(set, (id) => (id === lost ? undefined : kept(id)));
  const start = 'surae-20260301-0930-left-pushes-trial';
  expect(files.map(({ name }) => name)).toEqual([`${start}-1-bytes.bin`, `${start}-3-bytes.bin`]);
  const pieces = kept(set.trials[2].bytesId)!.pieces;
  expect(Buffer.compare(files[1].content as Uint8Array, Buffer.concat(pieces))).toBe(0);
});

test('the report holds trials with their rests, the end, the answers and where it comes from, and no name', () => {
  const provenance = { sha256: recording.source.sha256, trials: [null, null, null], software: 'surae 1' };
  const { content } = pullReportFile(madePullVisit(set), set, report, provenance);
  const document = JSON.parse(content as string) as { report: { score: { net: { value: number } } } };
  expect(document).toMatchObject({
    kind: 'surae-isometric-report',
    provenance: { sha256: recording.source.sha256, settings_hash: pullSettingsHash(report), written_by: 'surae 1' },
    visit: { restS: null },
    set: { warmUp: 'done', end: { reason: 'trials-done', painPeak: 0 }, trials: [{ restS: null }, { restS: 60 }, {}] },
  });
  expect(document.report.score.net.value).toBeCloseTo(report.score.net!.value, 5);
  expect(content).not.toContain('personId');
});

test('the report holds what was told before the test; null where that step was not asked', () => {
  const provenance = { sha256: 'a', trials: [], software: 'surae 1' };
  const written = (visit: Visit): unknown => JSON.parse(String(pullReportFile(visit, set, report, provenance).content));
  const visit = madePullVisit(set);
  expect(written({ ...visit, history: toldHistory })).toMatchObject({ version: 2, visit: { history: toldHistory } });
  expect(written(visit)).toMatchObject({ version: 2, visit: { history: null } });
});

test('the command line gives the same forces and efforts from the saved samples', async () => {
  const memory = new MemoryIo();
  memory.files.set('saved.csv', String(pullSampleFiles(set, recording)[0].content));
  const about = ['--test', 'isometric', '--placement', 'platform', '--side', 'left', '--body-mass-kg', '70'];
  expect(await main(['assess', 'saved.csv', ...about, '--json'], memory.io)).toBe(0);
  const line = JSON.parse(memory.out) as { score: { net_n: number }; count: object };
  expect(line.score.net_n).toBeCloseTo(report.score.net!.value, 5);
  expect(line.count).toMatchObject({ found: 3, accepted: report.trials!.accepted.length });
  expect(await main(['assess', 'saved.csv', ...about, '--csv', 'out'], memory.io)).toBe(0);
  const ours = csvRows(String(effortFile(set, report).content));
  const theirs = csvRows(memory.text('out/efforts.csv'));
  expect(ours).toHaveLength(3);
  ours.forEach((row, i) => expect(theirs[i]).toMatchObject(row));
});
