export { ExchangeError, type ExchangeErrorCode, type ExchangeErrorDetails } from './errors.ts';
export { decimal, rounded } from './numbers.ts';
export type {
  Json,
  RawFile,
  Study,
  StudyChannel,
  StudyLeg,
  StudyPerson,
  StudyPlanItem,
  StudyResult,
  StudyTrace,
  StudyTrial,
  StudyVisit,
} from './study.ts';
export { columnCells, columnTexts } from './tables/column-cells.ts';
export { writeCsvTable } from './tables/csv-table.ts';
export { csvText } from './tables/csv-text.ts';
export { csvwMetadata, type ReadMetadata, readCsvwMetadata } from './tables/csvw.ts';
export { dictionaryTable } from './tables/dictionary.ts';
export { guarded, unguarded } from './tables/guarded-text.ts';
export { readJsonLines, writeJsonLines } from './tables/json-lines.ts';
export { writeParquet } from './tables/parquet.ts';
export { readCsvTable } from './tables/read-csv-table.ts';
export { SAMPLE_SHAPE, sampleTable } from './tables/sample-table.ts';
export { studyTables } from './tables/study-tables.ts';
export { type Cell, type Table, type TableColumn, tableOf } from './tables/table.ts';
