import { effortRow, type PullReport } from '@surae/analysis';
import type { PullSet, Visit } from '@surae/casebook';
import { columnCells, csvText } from '@surae/exchange';
import { joinPieces, type Recording, sha256Hex, writeRecordingCsv } from '@surae/records';
import { CALIBRATION_COLUMNS, EFFORT_COLUMNS } from '@surae/shared';
import type { StoredBytes } from '@surae/storage';
import { pullProtocolOf } from '../live/pull-choices.ts';
import { calibrationNotes } from './counted-forces.ts';
import { pullSettingsHash } from './pull-kept.ts';
import { rounded } from './rounded.ts';
import type { SavedFile } from './set-files.ts';

/** When and which leg; who it was is not in the name of a file. */
function fileName({ begunAt, choice }: PullSet, what: string): string {
  const minute = begunAt.slice(0, 16).replace(/[-:]/g, '').replace('T', '-');
  return `surae-${minute}-${choice.side}-pushes-${what}`;
}

/** The raw samples of all trials of a leg in one table: nothing was recorded in the rests between them. */
export function pullSampleFiles(set: PullSet, recording: Recording): SavedFile[] {
  const deviceNotes = [...recording.deviceNotes, ...calibrationNotes(set.choice)];
  return writeRecordingCsv({ ...recording, deviceNotes }).map((content) => ({
    name: fileName(set, 'samples.csv'),
    type: 'text/csv',
    content,
  }));
}

/** The bytes of each trial as they are kept, for a leg that cannot be read; a trial without any has no file. */
export function pullBytesFiles(set: PullSet, bytesOf: (bytesId: string) => StoredBytes | undefined): SavedFile[] {
  return set.trials.flatMap(({ bytesId }, at) => {
    const bytes = bytesOf(bytesId);
    if (bytes === undefined) return [];
    const name = fileName(set, `trial-${at + 1}-bytes.bin`);
    return [{ name, type: 'application/octet-stream', content: joinPieces(bytes.pieces) }];
  });
}

/** The efforts under the columns that the command line writes; empty means not measured. */
export function effortFile(set: PullSet, report: PullReport): SavedFile {
  const windowS = pullProtocolOf(report.protocol.id)?.parameters.scoreWindow.value ?? 0;
  const columns = [...EFFORT_COLUMNS, ...CALIBRATION_COLUMNS];
  const calibration = columnCells(CALIBRATION_COLUMNS, report);
  const rows = report.efforts.map((effort) => [
    report.side,
    report.placement,
    report.protocol.id,
    ...columnCells(EFFORT_COLUMNS, effortRow(effort, windowS)),
    ...calibration,
  ]);
  const content = csvText(['side', 'placement', 'protocol', ...columns.map(({ key }) => key)], rows);
  return { name: fileName(set, 'efforts.csv'), type: 'text/csv', content };
}

/** Where a report comes from, so that it can be made again. */
export interface PullProvenance {
  /** of the recording of the leg, all trials; null where it cannot be read */
  readonly sha256: string | null;
  /** of the stream of each trial as it was stored; null where it was not closed */
  readonly trials: readonly StoredBytes['sha256'][];
  readonly software: string;
}

/**
 * The whole report with what it takes to make it again, the trials with their rests, what was noted and how it ended, and what
 * was answered before, as JSON. Answers stand in it as the codes and ids of the catalogue; null is not asked.
 * Version 2 holds `visit.history`, what was told of earlier injuries, irritability and the person; files before it lack that.
 */
export function pullReportFile(visit: Visit, set: PullSet, report: PullReport, provenance: PullProvenance): SavedFile {
  const { choice, begunAt, warmUp, trials, stoppedAt, end } = set;
  const { sore, history = null, safety, earlierSafety = [], pullRestS = null } = visit;
  const document = {
    kind: 'surae-isometric-report',
    version: 2,
    provenance: {
      sha256: provenance.sha256,
      trial_sha256: provenance.trials,
      settings_hash: pullSettingsHash(report),
      protocol_hash: sha256Hex(new TextEncoder().encode(report.protocol.fingerprint)),
      written_by: provenance.software,
    },
    visit: { begunAt: visit.begunAt, sore, history, safety, earlierSafety, restS: pullRestS },
    set: {
      choice,
      begunAt,
      warmUp,
      trials: trials.map(({ begunAt: at, restS, fromS, toS, cutOff, suddenDrop, liftedAtS }) => ({
        begunAt: at,
        restS,
        fromS,
        toS,
        cutOff,
        suddenDrop,
        liftedAtS,
      })),
      stoppedAt,
      end,
    },
    report: rounded(report),
  };
  return {
    name: fileName(set, 'report.json'),
    type: 'application/json',
    content: `${JSON.stringify(document, null, 1)}\n`,
  };
}
