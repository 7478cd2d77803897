/** Watches for samples that stay away, from the moment on at which they are awaited. */
export class SilenceWatch {
  private readonly forS: number;
  private lastMs: number;

  /**
   * @param forS - without samples for so long a sensor is silent [s]
   * @param fromMs - when the first are awaited, by the clock of the host [ms]
   */
  constructor(forS: number, fromMs: number) {
    this.forS = forS;
    this.lastMs = fromMs;
  }

  /** Samples came [ms]. */
  hear(atMs: number): void {
    this.lastMs = Math.max(this.lastMs, atMs);
  }

  /** For how long none have come, in whole seconds [s]; null while that is not long. */
  silentS(nowMs: number): number | null {
    const forS = (nowMs - this.lastMs) / 1000;
    return forS < this.forS ? null : Math.floor(forS);
  }
}
