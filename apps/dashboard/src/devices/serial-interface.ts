// What the dashboard uses of the Web Serial API (WICG, Web Serial API, section 4), which the compiler does not know.

export interface SerialPortInfo {
  readonly usbVendorId?: number;
  readonly usbProductId?: number;
}

export interface SerialOptions {
  /** symbols a second */
  readonly baudRate: number;
  readonly dataBits?: 7 | 8;
  readonly stopBits?: 1 | 2;
  readonly parity?: 'none' | 'even' | 'odd';
  readonly flowControl?: 'none' | 'hardware';
  /** bytes that the browser keeps while the page is busy */
  readonly bufferSize?: number;
}

export interface SerialPort {
  readonly readable: ReadableStream<Uint8Array> | null;
  readonly writable: WritableStream<Uint8Array> | null;
  open(options: SerialOptions): Promise<void>;
  close(): Promise<void>;
  getInfo(): SerialPortInfo;
}

export interface Serial {
  getPorts(): Promise<SerialPort[]>;
  requestPort(options?: { readonly filters?: readonly SerialPortInfo[] }): Promise<SerialPort>;
}
