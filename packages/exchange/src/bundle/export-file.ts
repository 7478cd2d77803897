/** A file that leaves. */
export interface ExportFile {
  /** path with slashes inside the bundle */
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const TYPES: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  json: 'application/json',
  jsonl: 'application/x-ndjson',
  parquet: 'application/vnd.apache.parquet',
  txt: 'text/plain',
  html: 'text/html',
};

/** Media type of a file by the ending of its name. */
export function mediaType(name: string): string {
  return TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
}
