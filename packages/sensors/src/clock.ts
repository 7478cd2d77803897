/** The clock of the host, handed in so that tests need not wait. */
export interface SensorClock {
  nowMs(): number;
  /** Calls back about every so many milliseconds; gives what ends it. */
  every(intervalMs: number, call: () => void): () => void;
}
