import type { RecordBytes, RecordDocument, TakenOut } from '@surae/exchange';
import type { ExportChoice } from './export-choice.ts';

/** What a file is made of, beside the bytes of recordings, which are asked for one after the other. */
export interface ExportWork {
  readonly documents: readonly RecordDocument[];
  readonly choice: ExportChoice;
  /** name and version of what writes */
  readonly software: string;
  /** ISO 8601 date of writing */
  readonly day: string;
  /** what study keys are made from */
  readonly secret: string;
}

/** A file that was made, and what was taken out before. */
export interface MadeExport {
  readonly name: string;
  readonly parts: number;
  readonly out: TakenOut | null;
}

/** What the worker is asked, and the answers to what it asks. */
export type ExportAsk =
  | { readonly kind: 'make'; readonly work: ExportWork }
  | { readonly kind: 'bytes'; readonly question: number; readonly bytes: RecordBytes | undefined }
  | { readonly kind: 'no-bytes'; readonly question: number; readonly reason: string };

/** What the worker tells; the store is open on the page alone, so that bytes are asked for from here. */
export type ExportAnswer =
  | { readonly kind: 'read'; readonly question: number; readonly bytesId: string }
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'piece'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'made'; readonly made: MadeExport }
  | { readonly kind: 'broken'; readonly reason: string };
