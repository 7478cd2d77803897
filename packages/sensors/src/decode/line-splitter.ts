import {
  joinBytes,
  longestSkipped,
  type StreamFault,
  type StreamPiece,
  type StreamSplitter,
  skippedPieces,
} from './splitter.ts';

const LF = 10;
const CR = 13;

/**
 * Finds lines in a stream: what stands between line ends, LF or CR; empty ones are left out. The first line is skipped unless
 * it begins with a letter or `#`, as a header does: the listener may have come in the middle of a number. So is a line that
 * is longer than any.
 */
export class LineSplitter implements StreamSplitter {
  private held: Uint8Array = new Uint8Array(0);
  /** place of the first held byte in the stream */
  private heldAt = 0;
  private isFirst = true;
  /** whether the held bytes go on with a line that is too long */
  private isTooLong = false;

  push(chunk: Uint8Array): StreamPiece[] {
    this.held = joinBytes(this.held, chunk);
    const pieces: StreamPiece[] = [];
    for (;;) {
      const end = this.held.findIndex((byte) => byte === LF || byte === CR);
      if ((end < 0 ? this.held.length : end) >= longestSkipped) {
        const fault = { expected: `a line of less than ${longestSkipped} bytes`, actual: 'a longer one' };
        pieces.push(...this.skip(longestSkipped, this.isTooLong ? null : fault));
        this.isTooLong = true;
      } else if (end < 0) return pieces;
      else {
        pieces.push(...this.line(end));
        this.drop(1);
        this.isTooLong = false;
        this.isFirst = false;
      }
    }
  }

  end(): StreamPiece[] {
    const fault = { expected: 'the end of the line', actual: 'the end of the stream' };
    return this.skip(this.held.length, this.isTooLong ? null : fault);
  }

  /** The line of so many bytes at the front. */
  private line(length: number): StreamPiece[] {
    if (length === 0) return [];
    if (this.isTooLong) return this.skip(length, null);
    const bytes = this.held.slice(0, length);
    if (this.isFirst && !/[A-Za-z#]/.test(String.fromCharCode(bytes[0]!))) {
      return this.skip(length, {
        expected: 'a line from its beginning',
        actual: 'the first one, which may have lost it',
      });
    }
    const piece: StreamPiece = { kind: 'found', bytes, atByte: this.heldAt };
    this.drop(length);
    return [piece];
  }

  private skip(count: number, fault: Omit<StreamFault, 'atByte'> | null): StreamPiece[] {
    const faults = fault === null ? [] : [{ atByte: this.heldAt, ...fault }];
    const pieces = skippedPieces(this.held.subarray(0, count), this.heldAt, faults);
    this.drop(count);
    return pieces;
  }

  private drop(count: number): void {
    this.held = this.held.slice(count);
    this.heldAt += count;
  }
}
