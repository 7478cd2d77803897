export { aboutText } from './bundle/about-text.ts';
export { inBundleOrder } from './bundle/bundle-order.ts';
export { CHECKSUMS, checkSums, checksumList, checksums } from './bundle/checksums.ts';
export { type CrateRequest, crateMetadata } from './bundle/crate.ts';
export { type ExportFile, mediaType } from './bundle/export-file.ts';
export { jsonText } from './bundle/json-text.ts';
export { BUNDLE_VERSION, parametersOf, protocolsOf, provenanceOf } from './bundle/provenance.ts';
export { bundleAgain, type ReadFile, readBundle } from './bundle/read-bundle.ts';
export {
  type Bundle,
  type BundleParts,
  type BundleRequest,
  studyFiles,
  studyParts,
  TABLE_FORMS,
  type TableForm,
} from './bundle/study-files.ts';
export { unzipped, ZipPacker, zipped } from './bundle/zip.ts';
export { ageIn, ageLeaving } from './deidentify/age-group.ts';
export { clockOriginS, resultFrom, traceFrom } from './deidentify/clock-origin.ts';
export { dayNumber, dayOffsets, daysSince } from './deidentify/days.ts';
export { type DeidentifyRequest, deidentified, type TakenOut } from './deidentify/deidentified.ts';
export { nameScan } from './deidentify/name-scan.ts';
export { type Keyed, studyKeys } from './deidentify/study-keys.ts';
export { ExchangeError, type ExchangeErrorCode, type ExchangeErrorDetails } from './errors.ts';
export {
  absent,
  CODE_SYSTEM,
  dateTimeOf,
  KEY_SYSTEM,
  ownCode,
  quantity,
  referenceTo,
  UCUM,
  uuidOf,
} from './fhir/codes.ts';
export { healthRecord } from './fhir/health-record.ts';
export { type Sampled, sampledOf } from './fhir/sampled.ts';
export {
  type AfterAtHome,
  type Diary,
  type DoneAtHome,
  diaryCode,
  diaryOfCode,
  planKey,
  type RunAtHome,
  seriesKey,
} from './handout/diary.ts';
export {
  type Handout,
  type HandoutLeg,
  type HandoutPushes,
  handoutCode,
  handoutOfCode,
  type Morning,
  morningsCode,
  morningsOfCode,
  type Stiffness,
} from './handout/handout.ts';
export { type HandoutLine, isListed, wordsHome } from './handout/plan-code.ts';
export { openedCode, sealedCode } from './handout/sealed-code.ts';
export { type HandoutWeeks, weekPointsMost } from './handout/weeks-code.ts';
export { filled, ofTen, percentWithInterval, withInterval, withUncertainty } from './letter/figures.ts';
export { legLines } from './letter/leg-lines.ts';
export { type Letter, letterOf, letterParagraphs } from './letter/letter.ts';
export { escaped, unbreakable } from './letter/unbreakable.ts';
export { decimal, rounded } from './numbers.ts';
export {
  bytesOf,
  lookAt,
  type ReadBytes,
  type RecordBytes,
  type RecordedStreams,
  recordingOf,
} from './record/record-bytes.ts';
export { type Extent, type RecordDocument, type RecordStudyRequest, recordStudy } from './record/record-study.ts';
export { repetitionRows, studyByHand } from './record/study-by-hand.ts';
export type {
  Json,
  RawFile,
  Study,
  StudyByHand,
  StudyChannel,
  StudyLeg,
  StudyLegs,
  StudyPerson,
  StudyPlanItem,
  StudyPractice,
  StudyReach,
  StudyRecount,
  StudyResult,
  StudyTotal,
  StudyTrace,
  StudyTrial,
  StudyVisit,
} from './study.ts';
export { columnCells } from './tables/column-cells.ts';
export { writeCsvTable } from './tables/csv-table.ts';
export { csvLines, csvText } from './tables/csv-text.ts';
export { csvwMetadata, type ReadMetadata, readCsvwMetadata } from './tables/csvw.ts';
export { dictionaryTable } from './tables/dictionary.ts';
export { readJsonLines, writeJsonLines } from './tables/json-lines.ts';
export { writeParquet } from './tables/parquet.ts';
export { ParquetRows } from './tables/parquet-rows.ts';
export { cellsOfLines, readCsvTable } from './tables/read-csv-table.ts';
export { SAMPLE_SHAPE, sampleTable } from './tables/sample-table.ts';
export { studyTables } from './tables/study-tables.ts';
export { type Cell, type Table, type TableColumn, type TableShape, tableOf } from './tables/table.ts';
