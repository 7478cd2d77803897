import type { SerialOptions, SerialPort } from '../../apps/dashboard/src/devices/serial-interface.ts';

/** A serial port that a test speaks through, with the states and errors that the Web Serial API describes. */
export class ScriptedPort implements SerialPort {
  readable: ReadableStream<Uint8Array> | null = null;
  writable: WritableStream<Uint8Array> | null = null;
  /** what it was opened with, each time */
  readonly openedWith: SerialOptions[] = [];
  /** what was written to it */
  readonly written: number[] = [];
  private reads: ReadableStreamDefaultController<Uint8Array> | undefined;
  private refusals: string[] = [];

  /** The next opening fails with an error of this name. */
  refuse(name: string): void {
    this.refusals.push(name);
  }

  open(options: SerialOptions): Promise<void> {
    const refusal = this.refusals.shift();
    if (refusal !== undefined) return Promise.reject(new DOMException('Failed to open serial port.', refusal));
    if (this.readable !== null) {
      return Promise.reject(new DOMException('The port is already open.', 'InvalidStateError'));
    }
    this.openedWith.push(options);
    this.readable = this.stream();
    this.writable = new WritableStream({
      write: (chunk) => {
        this.written.push(...chunk);
      },
    });
    return Promise.resolve();
  }

  close(): Promise<void> {
    if (this.readable?.locked === true) return Promise.reject(new TypeError('The stream is locked.'));
    this.readable = null;
    this.writable = null;
    return Promise.resolve();
  }

  getInfo(): { usbVendorId: number; usbProductId: number } {
    return { usbVendorId: 0x1209, usbProductId: 0x2a };
  }

  /** Bytes arrive. */
  send(bytes: Uint8Array): void {
    this.reads!.enqueue(bytes);
  }

  /** Something goes wrong on the line, and the port goes on with a new stream. */
  disturb(name: string): void {
    const old = this.reads!;
    this.readable = this.stream();
    old.error(new DOMException('', name));
  }

  /** The stream breaks, and no other follows. */
  breakForGood(name: string): void {
    this.reads!.error(new DOMException('', name));
  }

  /** The cable is pulled. */
  unplug(): void {
    const old = this.reads!;
    this.readable = null;
    this.writable = null;
    old.error(new DOMException('The device has been lost.', 'NetworkError'));
  }

  private stream(): ReadableStream<Uint8Array> {
    return new ReadableStream({
      start: (controller) => {
        this.reads = controller;
      },
    });
  }
}
