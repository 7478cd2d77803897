/** Sends beats at a rate until it is stopped, whether anybody listens or not, and keeps which packets were heard. */
export class SteadySender<Beat> {
  /** beats that were sent and heard, by their place */
  readonly heard: number[] = [];
  private readonly startMs = performance.now();
  private next = 0;
  private readonly timer: ReturnType<typeof setInterval>;

  constructor(beats: readonly Beat[], rateHz: number, send: (beat: Beat, place: number) => boolean) {
    this.timer = setInterval(() => {
      const due = Math.min(beats.length, Math.floor(((performance.now() - this.startMs) * rateHz) / 1000));
      for (; this.next < due; this.next += 1) if (send(beats[this.next], this.next)) this.heard.push(this.next);
      if (this.next === beats.length) this.stop();
    }, 2);
  }

  /** how many beats are over */
  get place(): number {
    return this.next;
  }

  stop(): void {
    clearInterval(this.timer);
  }
}
