import {
  type Decoder,
  type LinkBytes,
  readLineHeader,
  type SensorLinkListener,
  type StreamLayout,
  StreamReader,
} from '@surae/sensors';
import type { Link } from './link.ts';

/** So much of what came last is kept as it came [bytes]; ours: some lines, as many as one looks at. */
const keptBytes = 240;

/** No packet or line is longer than this [bytes]; ours: as long as a line may be. */
const longestCut = 1024;

/**
 * A serial connection whose bytes come as whole packets or lines. What was damaged on the way is told as a disturbance; what
 * came before the first whole one of a connection is none. A header is asked for once: a device that runs on sends no second.
 */
export class PieceLink implements Link {
  private readonly link: Link;
  private readonly listener: SensorLinkListener;
  private layout: StreamLayout;
  private reader: StreamReader;
  private isBegun = false;
  /** bytes of this connection that came before its first whole piece */
  private before = 0;
  private last: Uint8Array = new Uint8Array(0);
  private readonly waiting: ((decoder: Decoder) => void)[] = [];

  constructor(makeLink: (listener: SensorLinkListener) => Link, layout: StreamLayout, listener: SensorLinkListener) {
    this.layout = layout;
    this.listener = listener;
    this.reader = new StreamReader(layout);
    this.link = makeLink({
      bytes: (arrived) => this.hear(arrived),
      disturbed: (reason) => listener.disturbed(reason),
      closed: (error) => listener.closed(error),
    });
  }

  get name(): string {
    return this.link.name;
  }

  get isOpen(): boolean {
    return this.link.isOpen;
  }

  /** What came last, as it came, whatever it is read as; undefined before anything did. */
  get recent(): Uint8Array | undefined {
    return this.last.length === 0 ? undefined : this.last;
  }

  /** What the stream holds, as soon as it is known: at once, or when its header has come. */
  decoder(): Promise<Decoder> {
    const { decoder } = this.reader;
    return decoder === null ? new Promise((resolve) => this.waiting.push(resolve)) : Promise.resolve(decoder);
  }

  open(): Promise<void> {
    this.reader = new StreamReader(this.layout);
    this.isBegun = false;
    this.before = 0;
    return this.link.open();
  }

  write(target: number, bytes: Uint8Array): Promise<void> {
    return this.link.write(target, bytes);
  }

  close(): void {
    this.link.close();
  }

  private hear({ stream, bytes, hostTimeMs }: LinkBytes): void {
    this.last = Uint8Array.from([...this.last, ...bytes.slice(-keptBytes)]).slice(-keptBytes);
    for (const event of this.reader.push(bytes)) {
      if (event.kind === 'skipped') {
        this.skip(event.bytes.length);
        continue;
      }
      const { decoded, bytes: piece } = event;
      if (decoded.kind === 'note') this.keepHeader(piece);
      else {
        this.isBegun = true;
        this.listener.bytes({ stream, bytes: piece, hostTimeMs });
      }
    }
  }

  /** One listens from the middle of a packet on: what is missing of that one is no damage, and more than any holds is. */
  private skip(count: number): void {
    this.before += this.isBegun ? 0 : count;
    if (this.isBegun || this.before > longestCut) this.listener.disturbed(`${count} bytes belong to no packet.`);
  }

  private keepHeader(line: Uint8Array): void {
    const { layout } = this;
    if (layout.kind !== 'lines' || layout.lines.columns !== 'header') return;
    const { decoder } = this.reader;
    const header = readLineHeader(new TextDecoder().decode(line), layout.lines.delimiter);
    if (decoder === null || header.kind !== 'columns') return;
    this.layout = { kind: 'lines', lines: { ...layout.lines, columns: header.columns } };
    for (const resolve of this.waiting.splice(0)) resolve(decoder);
  }
}
