import type { SensorClock, SensorLinkListener } from '@surae/sensors';
import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';
import type { Link } from './link.ts';
import { OperationQueue } from './operation-queue.ts';
import type { SerialOptions, SerialPort } from './serial-interface.ts';
import { withinTime } from './time-limit.ts';

export interface SerialLinkOptions {
  readonly port: SerialOptions;
  readonly clock: Pick<SensorClock, 'nowMs'>;
  /** after this long opening or writing is given up [ms] */
  readonly limitMs: number;
  readonly listener: SensorLinkListener;
}

const opening = {
  InvalidStateError: 'in-use',
  NetworkError: 'refused',
  NotFoundError: 'not-found',
  SecurityError: 'not-allowed',
  NotAllowedError: 'not-allowed',
} as const;

const writing = { NetworkError: 'lost', InvalidStateError: 'lost' } as const;

/** Errors after which a port goes on with a new stream: bytes were lost or damaged (Web Serial API, section 4.4). */
const passing = ['BreakError', 'BufferOverrunError', 'FramingError', 'ParityError', 'UnknownError'];

/** What a port is called: nothing but the numbers of its USB maker and product tell it from others. */
export function portName(port: Pick<SerialPort, 'getInfo'>): string {
  const { usbVendorId, usbProductId } = port.getInfo();
  if (usbVendorId === undefined) return 'serial port';
  return `serial port ${[usbVendorId, usbProductId ?? 0].map((id) => id.toString(16).padStart(4, '0')).join(':')}`;
}

/** A connection over a serial port: bytes come in pieces of any length. Its only stream and its only target are 0. */
export class SerialLink implements Link {
  private readonly port: SerialPort;
  private readonly options: SerialLinkOptions;
  private queue = new OperationQueue();
  private reader: ReadableStreamDefaultReader<Uint8Array> | undefined;
  private state: 'closed' | 'open' | 'closing' = 'closed';
  /** counts openings and closings, so that one that was given up meanwhile is known */
  private turn = 0;
  /** ends when the port is closed for good */
  private reading: Promise<void> = Promise.resolve();

  constructor(port: SerialPort, options: SerialLinkOptions) {
    this.port = port;
    this.options = options;
  }

  get name(): string {
    return portName(this.port);
  }

  get isOpen(): boolean {
    return this.state === 'open';
  }

  async open(): Promise<void> {
    if (this.state === 'open') return;
    this.turn += 1;
    const turn = this.turn;
    // what was asked to close closes first
    await this.reading;
    this.queue = new OperationQueue();
    try {
      await withinTime(this.port.open(this.options.port), this.options.limitMs, 'Opening the port', () => {
        void this.closePort();
      });
    } catch (error) {
      throw deviceError(error, 'Opening the port', opening);
    }
    if (turn !== this.turn) {
      await this.closePort();
      throw new DeviceError('not-open', 'The port was closed while it was being opened.');
    }
    this.state = 'open';
    this.reading = this.read();
  }

  async write(target: number, bytes: Uint8Array): Promise<void> {
    const { writable } = this.port;
    if (this.state !== 'open' || writable === null || target !== 0) {
      throw new DeviceError('not-open', `There is no open target ${target}.`);
    }
    const copy = Uint8Array.from(bytes);
    try {
      await withinTime(
        this.queue.run(async () => {
          const writer = writable.getWriter();
          try {
            await writer.write(copy);
          } finally {
            writer.releaseLock();
          }
        }),
        this.options.limitMs,
        'Writing to the port',
      );
    } catch (error) {
      throw deviceError(error, 'Writing to the port', writing);
    }
  }

  close(): void {
    this.turn += 1;
    if (this.state !== 'open') return;
    this.state = 'closing';
    void this.reader?.cancel().catch(() => {});
  }

  /** Reads until the port is closed or lost; gives when it is. */
  private async read(): Promise<void> {
    let error: DeviceError | undefined;
    while (this.isOpen && this.port.readable !== null && error === undefined) {
      error = await this.readStream(this.port.readable);
    }
    const wasAsked = this.state === 'closing';
    this.state = 'closed';
    await this.closePort();
    if (!wasAsked) this.options.listener.closed(error ?? new DeviceError('lost', 'The port gives no more.'));
  }

  /** Reads one stream to its end; gives the error after which there is no other. */
  private async readStream(readable: ReadableStream<Uint8Array>): Promise<DeviceError | undefined> {
    const { clock, listener } = this.options;
    const reader = readable.getReader();
    this.reader = reader;
    try {
      for (;;) {
        const { value, done } = await reader.read();
        const hostTimeMs = clock.nowMs();
        if (done || !this.isOpen) return undefined;
        if (value.length > 0) listener.bytes({ stream: 0, bytes: value.slice(), hostTimeMs });
      }
    } catch (error) {
      if (!this.isOpen) return undefined;
      if (!(error instanceof Error) || !passing.includes(error.name)) {
        return deviceError(error, 'Reading from the port', { NetworkError: 'lost' });
      }
      listener.disturbed(error.name);
      // a port that goes on has a new stream by now
      return this.port.readable === readable
        ? deviceError(error, 'Reading from the port', { [error.name]: 'lost' })
        : undefined;
    } finally {
      this.reader = undefined;
      reader.releaseLock();
    }
  }

  /** Closes the port so that it can be opened again; one that is gone cannot be closed, and need not be. */
  private async closePort(): Promise<void> {
    try {
      await withinTime(this.port.close(), this.options.limitMs, 'Closing the port');
    } catch {
      // nothing can be done about it, and nobody waits for it
    }
  }
}
