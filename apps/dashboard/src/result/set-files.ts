import type { Report } from '@surae/analysis';
import { heldAgainst, type Visit, type VisitSet } from '@surae/casebook';
import { columnCells, csvText, repetitionRows, studyByHand } from '@surae/exchange';
import { joinPieces, type Recording, writeRecordingCsv } from '@surae/records';
import { REPETITION_COLUMNS, REPETITION_HAND_COLUMNS } from '@surae/shared';
import type { StoredBytes } from '@surae/storage';
import { calibrationNotes } from './counted-forces.ts';
import { rounded } from './rounded.ts';
import { protocolHash } from './settings-hash.ts';

/** A file for the person at the screen to keep. */
export interface SavedFile {
  readonly name: string;
  readonly type:
    | 'text/calendar'
    | 'text/csv'
    | 'text/html'
    | 'text/plain'
    | 'application/json'
    | 'application/octet-stream'
    | 'application/zip';
  readonly content: string | Uint8Array<ArrayBuffer>;
}

/** Where a result comes from, so that it can be made again. */
export interface Provenance {
  /** of the bytes as they were recorded */
  readonly sha256: string;
  /** null where it was not kept with the report */
  readonly settingsHash: string | null;
  /** name and version of what made the report; null where it was not kept */
  readonly software: string | null;
  /** name and version of what writes the file */
  readonly writtenBy: string;
}

/** When and which leg; who it was is not in the name of a file. */
function fileName({ begunAt, choice }: VisitSet, what: string): string {
  const minute = begunAt.slice(0, 16).replace(/[-:]/g, '').replace('T', '-');
  return `surae-${minute}-${choice.side}-${what}`;
}

/** The recording with what its table says of the calibration that it was taken with. */
function noted(recording: Recording, { choice }: VisitSet): Recording {
  return { ...recording, deviceNotes: [...recording.deviceNotes, ...calibrationNotes(choice)] };
}

/** The raw samples under our documented header; one file for each clock of the recording. */
export function sampleFiles(set: VisitSet, recording: Recording): SavedFile[] {
  const tables = writeRecordingCsv(noted(recording, set));
  return tables.map((text, i) => ({
    name: fileName(set, tables.length === 1 ? 'samples.csv' : `samples-${i + 1}.csv`),
    type: 'text/csv',
    content: text,
  }));
}

/** The bytes as they are kept, for a recording that cannot be read. */
export function bytesFile(set: VisitSet, bytes: StoredBytes): SavedFile {
  return { name: fileName(set, 'bytes.bin'), type: 'application/octet-stream', content: joinPieces(bytes.pieces) };
}

/** The repetitions under the columns that the command line writes, with what a person saw where anybody judged; empty means not measured. */
export function repetitionFile(set: VisitSet, report: Report): SavedFile {
  const { byHand } = studyByHand(set);
  const columns = byHand === undefined ? REPETITION_COLUMNS : [...REPETITION_COLUMNS, ...REPETITION_HAND_COLUMNS];
  const header = ['side', 'placement', 'protocol', ...columns.map(({ key }) => key)];
  const rows = repetitionRows(report.repetitions, byHand).map((repetition) => [
    report.side,
    report.placement,
    report.protocol.id,
    ...columnCells(columns, repetition),
  ]);
  return { name: fileName(set, 'repetitions.csv'), type: 'text/csv', content: csvText(header, rows) };
}

/** The raises for practice of the same leg that were begun before a set, and whether its reference height is theirs. */
function practiceBefore(visit: Visit, set: VisitSet): object[] {
  return (visit.practice ?? [])
    .filter(({ choice, begunAt }) => choice.side === set.choice.side && Date.parse(begunAt) <= Date.parse(set.begunAt))
    .map((practice) => {
      const { choice, begunAt, stoppedAt, raises } = practice;
      return {
        choice,
        begunAt,
        stoppedAt,
        raises,
        isReference: heldAgainst(visit, practice).some(({ id }) => id === set.id),
      };
    });
}

/**
 * The whole report with what it takes to make it again, what was noted while the set ran and how it ended, and what was
 * answered before it, as JSON. Answers stand in it as the codes and ids of the catalogue; null is not asked.
 * Version 3 holds `visit.history`, what was told of earlier injuries, irritability and the person; version 4 the verdicts that a
 * person gave by hand and, where there are any, the report as it was measured; `report` is what counts. Files before lack that.
 * `verdictsNotLaidOn` was added later: those that are about a movement which the report does not have at their number; so was
 * `practice`, the raises for practice of this leg before the set, as their heights were found when they stopped.
 */
export function reportFile(visit: Visit, set: VisitSet, report: Report, provenance: Provenance): SavedFile {
  const { choice, begunAt, stoppedAt, liveCount, marks, notes = [], end, byHand = [], notLaidOn = [], automatic } = set;
  const { sore, history = null, safety, earlierSafety = [], restS } = visit;
  const document = {
    kind: 'surae-set-report',
    version: 4,
    provenance: {
      sha256: provenance.sha256,
      settings_hash: provenance.settingsHash,
      protocol_hash: protocolHash(report),
      software: provenance.software,
      written_by: provenance.writtenBy,
    },
    visit: { begunAt: visit.begunAt, sore, history, safety, earlierSafety, restS },
    practice: practiceBefore(visit, set),
    set: { choice, begunAt, stoppedAt, liveCount, marks, notes, end },
    verdictsByHand: byHand,
    verdictsNotLaidOn: notLaidOn,
    report: rounded(report),
    automaticReport: automatic === undefined ? null : rounded(automatic),
  };
  return {
    name: fileName(set, 'report.json'),
    type: 'application/json',
    content: `${JSON.stringify(document, null, 1)}\n`,
  };
}
