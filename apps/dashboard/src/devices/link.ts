import type { DeviceError } from './device-error.ts';

/** Bytes as they came in one piece. */
export interface ArrivedBytes {
  /** which of the streams that were asked for, counted from 0 */
  readonly stream: number;
  /** a copy of its own */
  readonly bytes: Uint8Array;
  /** when the page got them, by the clock of the host [ms] */
  readonly hostTimeMs: number;
}

export interface LinkListener {
  bytes(arrived: ArrivedBytes): void;
  /** bytes were lost or damaged on the way, and the link goes on: how many is not known */
  disturbed(reason: string): void;
  /** the link is over, and nobody asked for it; it can be opened again */
  closed(error: DeviceError): void;
}

/** A connection to one device. It can be opened again after it was closed or lost, without another choice by a person. */
export interface Link {
  readonly name: string;
  readonly isOpen: boolean;
  /** Connects and begins to listen; rejects with a {@link DeviceError}. */
  open(): Promise<void>;
  /** Sends bytes to one of the places that can be written to, counted from 0; rejects with a {@link DeviceError}. */
  write(target: number, bytes: Uint8Array): Promise<void>;
  /** Ends the connection; nothing follows. Does nothing when it is over. */
  close(): void;
}
