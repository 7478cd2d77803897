export { writeRecordingCsv } from './csv-codec.ts';
export { RecordError, type RecordErrorCode, type RecordErrorDetails } from './errors.ts';
export type { ClockChange, ClockKind } from './form/clock.ts';
export type { Encoding } from './form/encoding.ts';
export type { Gap } from './gaps.ts';
export { GUARD, guarded, guardedNote, unguarded, unguardedNote } from './guarded-text.ts';
export { type Answers, formTopics } from './guess/answers.ts';
export type { ColumnProposal } from './guess/column-guess.ts';
export { findingsOf } from './guess/findings.ts';
export type { FormProposal } from './guess/form-proposal.ts';
export { ASK_BELOW, type Evidence, type Guessed } from './guess/guessed.ts';
export type { LineList, OddLines } from './guess/odd-lines.ts';
export type { Proposal, SurveyedTable } from './guess/proposal.ts';
export { type ColumnUse, columnUses } from './guess/quantity-guess.ts';
export { answersTo, type Question, type QuestionTopic, questionTopics } from './guess/questions.ts';
export { TableSurvey } from './guess/survey.ts';
export type { TimeProposal } from './guess/time-guess.ts';
export type { Window } from './guess/windows.ts';
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
export { ManifestLines, manifestCells } from './manifest-lines.ts';
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
export {
  alikeNames,
  type NamedCells,
  type NamePattern,
  type NameReading,
  parseNamePattern,
  readName,
} from './names/name-pattern.ts';
export type { PackedNumbers } from './packed-numbers.ts';
export { parseRecordingDocument } from './parse-document.ts';
export {
  joinedRecording,
  type PartedTable,
  partTable,
  type ReadBytes,
  readPart,
  type TablePart,
} from './parted-table.ts';
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
export { makeRecipe } from './recipe/make-recipe.ts';
export { parseRecipe, recipeOf } from './recipe/parse-recipe.ts';
export { type Recipe, recipeJsonSchema } from './recipe/recipe.ts';
export {
  type OpenChoices,
  type RecipeOptions,
  RecipeReader,
  type RecipeReading,
  readWithRecipe,
} from './recipe/recipe-reader.ts';
export type { PassedOver } from './recipe/strict-watcher.ts';
export type { ChannelUnit, RawSource, RecordedChannel, RecordedGroup, Recording, UnusedColumn } from './recording.ts';
export { type RecordingDocument, recordingJsonSchema } from './recording-document.ts';
export { sampleText } from './sample-text.ts';
export { decodeBlocks, decodeNotes, encodeBlock, encodeNote, joinPieces, type StreamBlock } from './stream-codec.ts';
export {
  recordingFromStream,
  type StreamClock,
  type StreamContext,
  type StreamSource,
} from './stream-recording.ts';
export { readTable, type Table, type TableOptions } from './table.ts';
export type { Delimiter } from './table-header.ts';
export { applyScale, findUnit, listUnits, type Scale, type Unit, units } from './units.ts';
export { readWordTable, type WordRow } from './word-table.ts';
