import type { DocumentQuery, NewDocument, StoredDocument } from '@surae/storage';
import { hashByNode } from '../store-laws.ts';

interface OracleDocument {
  readonly document: StoredDocument;
  readonly whose: string | null;
  damaged: boolean;
}

interface OracleStream {
  readonly id: string;
  readonly whose: string | null;
  readonly pieces: Uint8Array[];
  sha256: string | null;
  damaged: boolean;
}

/** What a store must hold, kept in the plainest way: lists, and nothing that is ever written anywhere. */
export class Oracle {
  documents: OracleDocument[] = [];
  streams: OracleStream[] = [];
  /** ids of streams in the order in which they were closed */
  closed: string[] = [];
  readonly erased = new Set<string>();

  private find(id: string | null): OracleDocument | undefined {
    return this.documents.find(({ document }) => document.id === id);
  }

  /** Whose a new document is. */
  whoseOf({ kind, about, whose }: NewDocument, id = ''): string | null {
    return whose ?? (kind === 'person' ? id : (this.find(about)?.whose ?? null));
  }

  /** Whether a new document must be refused: it would be of somebody who was erased, or of nobody can say whom. */
  isRefused(given: NewDocument): boolean {
    const { kind, about, whose } = given;
    const owner = this.whoseOf(given);
    if (owner !== null && this.erased.has(owner)) return true;
    const isUnknown = about !== null && /^[0-9a-f]{32}$/.test(about) && this.find(about) === undefined;
    return whose === undefined && kind !== 'person' && isUnknown && this.erased.size > 0;
  }

  add(document: StoredDocument, given: NewDocument): void {
    this.documents.push({ document, whose: this.whoseOf(given, document.id), damaged: false });
  }

  /** Bodies that can be read, in order. */
  whole(query: DocumentQuery = {}): StoredDocument[] {
    const fits = (wanted: string | readonly string[] | undefined, value: string | null): boolean =>
      wanted === undefined || (value !== null && (typeof wanted === 'string' ? [wanted] : wanted).includes(value));
    return this.documents
      .filter(({ damaged, whose, document }) => {
        if (damaged || (query.whose !== undefined && whose !== query.whose)) return false;
        return fits(query.kind, document.kind) && fits(query.about, document.about);
      })
      .map(({ document }) => document);
  }

  append(id: string, piece: Uint8Array): void {
    this.stream(id).pieces.push(piece);
  }

  close(id: string): string {
    const stream = this.stream(id);
    stream.sha256 = hashByNode(stream.pieces);
    this.closed.push(id);
    return stream.sha256;
  }

  stream(id: string): OracleStream {
    return this.streams.find((one) => one.id === id)!;
  }

  /** Takes a person away; gives the counts. */
  erase(whose: string): { readonly documents: number; readonly streams: number } {
    const theirs = this.documents.filter((one) => one.whose === whose);
    const named = theirs
      .filter(({ damaged }) => !damaged)
      .map(({ document }) => JSON.stringify(document.body))
      .join();
    const gone = this.streams.filter((one) => one.whose === whose || (one.whose === null && named.includes(one.id)));
    this.documents = this.documents.filter((one) => one.whose !== whose);
    this.streams = this.streams.filter((one) => !gone.includes(one));
    this.closed = this.closed.filter((id) => !gone.some((one) => one.id === id));
    this.erased.add(whose);
    return { documents: theirs.length, streams: gone.length };
  }

  /** Ids of what is damaged, sorted. */
  damaged(): string[] {
    const documents = this.documents.filter(({ damaged }) => damaged).map(({ document }) => document.id);
    return [...documents, ...this.streams.filter(({ damaged }) => damaged).map(({ id }) => id)].sort();
  }
}
