import { isoWithOffset } from '../browser-clock.ts';

/** A clock that is set by hand: the visits lie in the past, a few minutes between their answers. */
export class PastClock {
  nowMs = 0;
  private readonly offsetMinutes: number;

  constructor(offsetMinutes: number) {
    this.offsetMinutes = offsetMinutes;
  }

  isoNow(): string {
    return isoWithOffset(this.nowMs, this.offsetMinutes);
  }
}
