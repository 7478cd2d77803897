export { writeRecordingCsv } from './csv-codec.ts';
export { RecordError, type RecordErrorCode, type RecordErrorDetails } from './errors.ts';
export type { Gap } from './gaps.ts';
export { sha256Hex } from './hash.ts';
export { readRecordingJson, recordingToDocument, writeRecordingJson } from './json-codec.ts';
export { type ManifestOptions, readManifest } from './manifest.ts';
export type {
  ManifestEntry,
  ManifestPlacement,
  ManifestRefusal,
  ManifestRefusalCode,
  ManifestRow,
} from './manifest-entry.ts';
export {
  type HeaderPlace,
  type IgnoredColumn,
  type Mapping,
  mapHeader,
  type SampleColumn,
  type TimeColumn,
} from './mapping.ts';
export {
  latestVersion,
  type Migration,
  type MigrationFailure,
  type MigrationResult,
  migrateDocument,
  recordingMigrations,
  type VersionedDocument,
  validateMigrations,
} from './migrations.ts';
export type { PackedNumbers } from './packed-numbers.ts';
export { parseRecordingDocument } from './parse-document.ts';
export {
  type Axis,
  type Placement,
  placements,
  type Quantity,
  quantities,
  type Side,
  sides,
  siUnits,
} from './quantities.ts';
export { type RatingGroup, ratingGroups } from './rating-groups.ts';
export { type RatingCell, type RatingFactor, type RatingTable, readRatingTable } from './rating-table.ts';
export { type ReadOptions, readRecording } from './read-recording.ts';
export type { ChannelUnit, RawSource, RecordedChannel, RecordedGroup, Recording, UnusedColumn } from './recording.ts';
export { type RecordingDocument, recordingJsonSchema } from './recording-document.ts';
export { decodeBlocks, decodeNotes, encodeBlock, encodeNote, type StreamBlock } from './stream-codec.ts';
export {
  recordingFromStream,
  type StreamClock,
  type StreamContext,
  type StreamSource,
} from './stream-recording.ts';
export { readTable, type Table, type TableOptions } from './table.ts';
export type { Delimiter } from './table-header.ts';
export { applyScale, findUnit, listUnits, type Scale, scaleToSi, type Unit, units } from './units.ts';
