import {
  type Decoder,
  type LinkBytes,
  readLineHeader,
  type SensorLinkListener,
  type StreamLayout,
  StreamReader,
} from '@surae/sensors';
import type { Link } from './link.ts';

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

  /** What the stream holds, as soon as it is known: at once, or when its header has come. */
  decoder(): Promise<Decoder> {
    const { decoder } = this.reader;
    return decoder === null ? new Promise((resolve) => this.waiting.push(resolve)) : Promise.resolve(decoder);
  }

  open(): Promise<void> {
    this.reader = new StreamReader(this.layout);
    this.isBegun = false;
    return this.link.open();
  }

  write(target: number, bytes: Uint8Array): Promise<void> {
    return this.link.write(target, bytes);
  }

  close(): void {
    this.link.close();
  }

  private hear({ stream, bytes, hostTimeMs }: LinkBytes): void {
    for (const event of this.reader.push(bytes)) {
      if (event.kind === 'skipped') {
        if (this.isBegun) this.listener.disturbed(`${event.bytes.length} bytes belong to no packet.`);
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
