import type { Decoded, Decoder } from './decoder.ts';
import type { FrameLayout } from './frame.ts';
import { FrameSplitter } from './frame-splitter.ts';
import type { PacketLayout } from './layout.ts';
import { lineDecoder } from './line-decoder.ts';
import { readLineHeader } from './line-header.ts';
import { checkLines, type LineLayout } from './line-layout.ts';
import { LineSplitter } from './line-splitter.ts';
import { packetDecoder } from './packet-decoder.ts';
import { PacketError, problemText } from './packet-error.ts';
import type { SkippedPiece, StreamPiece, StreamSplitter } from './splitter.ts';

/** How a stream of bytes without borders, such as a serial line, is to be read. */
export type StreamLayout =
  | { readonly kind: 'frames'; readonly frame: FrameLayout; readonly packet: PacketLayout }
  | { readonly kind: 'lines'; readonly lines: LineLayout };

/** A packet or a line, and what it held. */
export interface ReadPiece {
  readonly kind: 'read';
  readonly bytes: Uint8Array;
  /** where it begins in the stream, from 0 */
  readonly atByte: number;
  readonly decoded: Decoded;
}

export type StreamEvent = ReadPiece | SkippedPiece;

/** Reads a stream from its first byte to its last; chunks of any size give the same events. */
export class StreamReader {
  private readonly layout: StreamLayout;
  private readonly splitter: StreamSplitter;
  private known: Decoder | null;

  /** @throws {@link PacketError} when the layout cannot be used */
  constructor(layout: StreamLayout) {
    this.layout = layout;
    if (layout.kind === 'frames') {
      this.splitter = new FrameSplitter(layout.frame);
      this.known = packetDecoder(layout.packet);
    } else {
      const problems = checkLines(layout.lines);
      if (problems.length > 0) throw new PacketError(problems);
      this.splitter = new LineSplitter();
      this.known = layout.lines.columns === 'header' ? null : lineDecoder(layout.lines);
    }
  }

  /** What the stream holds; null until its header has come, where it has one. */
  get decoder(): Decoder | null {
    return this.known;
  }

  push(chunk: Uint8Array): StreamEvent[] {
    return this.splitter.push(chunk).map((piece) => this.read(piece));
  }

  end(): StreamEvent[] {
    return this.splitter.end().map((piece) => this.read(piece));
  }

  private read(piece: StreamPiece): StreamEvent {
    if (piece.kind === 'skipped') return piece;
    const { bytes, atByte } = piece;
    const decoded = this.known?.decode(bytes) ?? this.awaitHeader(bytes);
    return { kind: 'read', bytes, atByte, decoded };
  }

  /** Looks whether a line is the header that all others are read by. */
  private awaitHeader(bytes: Uint8Array): Decoded {
    const lines = this.layout.kind === 'lines' ? this.layout.lines : null;
    const text = new TextDecoder().decode(bytes);
    if (lines === null || text.startsWith('#') || text === lines.greeting) return { kind: 'note', text };
    const answer = readLineHeader(text, lines.delimiter);
    if (answer.kind === 'columns') {
      this.known = lineDecoder(lines, answer.columns);
      return { kind: 'note', text };
    }
    const expected = answer.kind === 'none' ? 'a header such as counter,time [ms],force [N]' : 'a header with units';
    const actual =
      answer.kind === 'none' ? JSON.stringify(text.slice(0, 40)) : answer.problems.map(problemText).join('; ');
    return { kind: 'refused', code: 'other-kind', atByte: 0, expected, actual, counter: null, timeS: null };
  }
}
