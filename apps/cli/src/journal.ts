import { crc32 } from 'node:zlib';
import type { Log } from './log.ts';
import type { PackedEntry } from './pool.ts';
import { UsageError } from './usage-error.ts';

/** Where an entry lies. */
export interface Place {
  readonly from: number;
  readonly length: number;
}

/** A result of what was told, and the one before it of the same: mostly there is none, and a run holds a hundred thousand of them. */
interface Result extends Place {
  readonly sha256: string;
  readonly before: Result | undefined;
}

const HEAD = '# surae journal 1: results of recordings, one a line. Only ever added to; a run goes on from it.\n';
const NEWLINE = 10;
/** Bytes that are read at a time. */
const PIECE = 1 << 20;
const LINE = /^([0-9a-f]{64}) ([0-9a-f]{64}|-) ([0-9a-f]{8}) /;
/** Bytes before the body of a line whose hash is known, and where it is not. */
const LONGEST_HEAD = 64 + 1 + 64 + 1 + 8 + 1;

function sumOf(bytes: Uint8Array | string): string {
  return crc32(bytes).toString(16).padStart(8, '0');
}

/**
 * Results that are there already, each under all that it hangs on: what was told of the recording (with the software and the
 * settings), and the hash of its bytes. It is only added to. A line that was torn when a run was cut off is no result.
 */
export class Journal {
  readonly #log: Log;
  readonly #results = new Map<string, Result>();
  #size = 0;
  /** whether the last line lacks its end */
  #isTorn = false;
  /** where the results of this run begin */
  readonly #openedAt: number;
  /** lines that hold no result: torn or damaged */
  damaged = 0;

  /** @throws {@link UsageError} where the file is no journal: nothing of somebody else's is ever added to */
  constructor(log: Log, name: string) {
    this.#log = log;
    if (log.length === 0) log.add(Buffer.from(HEAD));
    else this.#load(name);
    this.#openedAt = log.length;
  }

  /** Whether a result was there when the journal was opened. */
  wasThere({ from }: Place): boolean {
    return from < this.#openedAt;
  }

  /** Results that were there when the journal was opened, or have come since and can be found again. */
  get size(): number {
    return this.#size;
  }

  /** Hashes of the bytes for which there is a result of what was told so. */
  known(told: string): readonly string[] {
    return [...this.#of(told)].map(({ sha256 }) => sha256);
  }

  placeOf(told: string, sha256: string): Place {
    return this.#find(told, sha256)!;
  }

  /** Adds a result. One whose bytes could not be read is kept for this run and not found by another. */
  add(told: string, { sha256, body }: PackedEntry): Place {
    const text = Buffer.from(body.buffer, body.byteOffset, body.byteLength).toString('base64');
    const head = `${this.#isTorn ? '\n' : ''}${told} ${sha256 ?? '-'} ${sumOf(text)} `;
    this.#isTorn = false;
    const place = { from: this.#log.length + head.length, length: text.length };
    this.#log.add(Buffer.from(`${head}${text}\n`, 'latin1'));
    if (sha256 !== null) this.#put(told, sha256, place);
    return place;
  }

  /** @throws {@link UsageError} where another run writes into the same journal */
  read({ from, length }: Place): Uint8Array {
    const bytes = this.#log.read(from - 9, length + 9);
    const [sum, text] = [bytes.toString('latin1', 0, 8), bytes.subarray(9)];
    if (sumOf(text) !== sum) {
      throw new UsageError('the journal is being written by another run: name another one with --journal');
    }
    return Buffer.from(text.toString('latin1'), 'base64');
  }

  close(): void {
    this.#log.close();
  }

  /** Results of what was told so, the last that came first. */
  *#of(told: string): Generator<Result> {
    for (let one = this.#results.get(told); one !== undefined; one = one.before) yield one;
  }

  #find(told: string, sha256: string): Result | undefined {
    for (const one of this.#of(told)) if (one.sha256 === sha256) return one;
    return undefined;
  }

  #put(told: string, sha256: string, place: Place): void {
    const found = this.#find(told, sha256);
    if (found === undefined) {
      // field by field: spread, each would have a shape of its own, five times as large as itself
      const { from, length } = place;
      this.#results.set(told, { from, length, sha256, before: this.#results.get(told) });
      this.#size += 1;
    } else Object.assign(found, place);
  }

  #load(name: string): void {
    const head = this.#log.read(0, HEAD.length).toString('latin1');
    if (head !== HEAD) {
      if (!HEAD.startsWith(head)) {
        throw new UsageError(`${name} is no journal of surae: name another file with --journal`);
      }
      // a run that was cut off at its very beginning left part of the first line
      this.#log.add(Buffer.from(HEAD.slice(head.length)));
      return;
    }
    let line: Uint8Array[] = [];
    let lineFrom = HEAD.length;
    for (let from = HEAD.length; from < this.#log.length; ) {
      const piece = this.#log.read(from, Math.min(PIECE, this.#log.length - from));
      let start = 0;
      for (let end = piece.indexOf(NEWLINE); end >= 0; end = piece.indexOf(NEWLINE, start)) {
        line.push(piece.subarray(start, end));
        this.#take(Buffer.concat(line), lineFrom);
        line = [];
        start = end + 1;
        lineFrom = from + start;
      }
      line.push(piece.subarray(start));
      from += piece.length;
    }
    this.#isTorn = this.#log.length > lineFrom;
    if (this.#isTorn) this.#take(Buffer.concat(line), lineFrom);
  }

  #take(line: Buffer, from: number): void {
    const found = LINE.exec(line.toString('latin1', 0, LONGEST_HEAD));
    const at = found?.[0].length ?? 0;
    if (found === null || sumOf(line.subarray(at)) !== found[3]) {
      if (line.length > 0) this.damaged += 1;
      return;
    }
    if (found[2] !== '-') this.#put(found[1]!, found[2]!, { from: from + at, length: line.length - at });
  }
}
