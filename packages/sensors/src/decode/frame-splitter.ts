import { type FrameLayout, Framing } from './frame.ts';
import {
  joinBytes,
  longestSkipped,
  type StreamFault,
  type StreamPiece,
  type StreamSplitter,
  skippedPieces,
} from './splitter.ts';

/**
 * Finds frames in a stream. Where a marker turns out to begin no frame, the search goes on at the byte after it, so that noise
 * costs no frame that is whole.
 */
export class FrameSplitter implements StreamSplitter {
  private readonly framing: Framing;
  /** bytes that belong to no piece yet */
  private held: Uint8Array = new Uint8Array(0);
  /** place of the first of them in the stream */
  private heldAt = 0;
  /** how many of them are known to begin no frame */
  private passed = 0;
  private faults: StreamFault[] = [];

  /** @throws {@link PacketError} when the layout cannot be used */
  constructor(layout: FrameLayout) {
    this.framing = new Framing(layout);
  }

  push(chunk: Uint8Array): StreamPiece[] {
    this.held = joinBytes(this.held, chunk);
    return this.search(false);
  }

  end(): StreamPiece[] {
    return [...this.search(true), ...this.skip(this.held.length)];
  }

  private search(isOver: boolean): StreamPiece[] {
    const pieces: StreamPiece[] = [];
    for (;;) {
      this.passed = this.nextMarker(this.passed, isOver);
      const from = this.passed;
      const rest = this.held.subarray(from);
      if (rest.length < this.framing.marker.length) break;
      const reading = this.framing.read(rest);
      if (reading.kind === 'frame') {
        pieces.push(...this.skip(from), { kind: 'found', bytes: reading.packet, atByte: this.heldAt });
        this.drop(reading.byteLength);
        continue;
      }
      if (reading.kind === 'open' && !isOver) break;
      const told =
        reading.kind === 'none' ? reading : { expected: 'a whole frame', actual: `the end after ${rest.length} bytes` };
      this.faults.push({ atByte: this.heldAt + from, expected: told.expected, actual: told.actual });
      this.passed = from + 1;
    }
    // whole pieces of a long run go on at once
    const whole = this.passed - (this.passed % longestSkipped);
    pieces.push(...this.skip(whole));
    return pieces;
  }

  /** The next place where a marker stands, or may begin at the end of what is held. */
  private nextMarker(from: number, isOver: boolean): number {
    const { marker } = this.framing;
    for (let at = from; at < this.held.length; at += 1) {
      let same = 0;
      while (same < marker.length && at + same < this.held.length && this.held[at + same] === marker[same]) same += 1;
      if (same === marker.length || (at + same === this.held.length && !isOver)) return at;
    }
    return this.held.length;
  }

  /** Takes bytes from the front as skipped. */
  private skip(count: number): StreamPiece[] {
    const pieces = skippedPieces(this.held.subarray(0, count), this.heldAt, this.faults);
    this.drop(count);
    return pieces;
  }

  private drop(count: number): void {
    this.held = this.held.slice(count);
    this.heldAt += count;
    this.passed = Math.max(0, this.passed - count);
    this.faults = this.faults.filter(({ atByte }) => atByte >= this.heldAt);
  }
}
