/** Bytes as they came in one piece. */
export interface LinkBytes {
  /** which of the streams of the link, from 0 */
  readonly stream: number;
  readonly bytes: Uint8Array;
  /** when they came, by the clock of the host [ms] */
  readonly hostTimeMs: number;
}

/** What a link tells of its own accord. */
export interface SensorLinkListener {
  bytes(arrived: LinkBytes): void;
  /** bytes were lost or damaged on the way, and the link goes on */
  disturbed(reason: string): void;
  /** the link is over, and nobody asked for it; it can be opened again */
  closed(error: Error): void;
}

/** A connection to one device that can be opened again after it was lost. */
export interface SensorLink {
  /** Connects and begins to listen. */
  open(): Promise<void>;
  /** Sends bytes to one of the places that can be written to, from 0. */
  write(target: number, bytes: Uint8Array): Promise<void>;
  /** Ends the connection; nothing follows. Does nothing when it is over. */
  close(): void;
}
