import { LowerLine } from './lower-line.ts';

/** From this span on the rate is taken from the arrivals themselves [s]; ours. */
const fittedFromS = 2;
/** A rate that departs more from the word of its maker is not believed [-]; ours. */
const mostDeparture = 0.1;

/**
 * When a place in a stream could have arrived at the earliest. The rate is that of its maker until there are arrivals enough.
 */
export class ArrivalFloor {
  private readonly lower = new LowerLine();
  private readonly toldSecondsPerUnit: number;
  /** least of host time less told time [s] */
  private leastS = Infinity;
  private zeroMs: number | undefined;

  constructor(toldSecondsPerUnit: number) {
    this.toldSecondsPerUnit = toldSecondsPerUnit;
  }

  /** Length of a unit as the host sees it [s]. */
  get secondsPerUnit(): number {
    const told = this.toldSecondsPerUnit;
    const { range, line } = this.lower;
    if (range === undefined || line === undefined || (range.to - range.from) * told < fittedFromS) return told;
    return Math.abs(line.slope / told - 1) > mostDeparture ? told : line.slope;
  }

  /** Stretch of the stream that has been seen [s]. */
  get spanS(): number {
    const { range } = this.lower;
    return range === undefined ? 0 : (range.to - range.from) * this.toldSecondsPerUnit;
  }

  /** Takes an arrival. One of an earlier place than the newest is left out. */
  add(position: number, hostMs: number): void {
    this.zeroMs ??= hostMs;
    const hostS = (hostMs - this.zeroMs) / 1000;
    const { range } = this.lower;
    if (range !== undefined && position < range.to) return;
    this.lower.add(position, hostS);
    this.leastS = Math.min(this.leastS, hostS - position * this.toldSecondsPerUnit);
  }

  /** How much later than the earliest arrivals a place arrives; below 0 it is earlier than any; 0 before there is one [s]. */
  latenessS(position: number, hostMs: number): number {
    if (this.zeroMs === undefined) return 0;
    const hostS = (hostMs - this.zeroMs) / 1000;
    const { line } = this.lower;
    const secondsPerUnit = this.secondsPerUnit;
    if (line === undefined || secondsPerUnit !== line.slope) {
      return hostS - position * this.toldSecondsPerUnit - this.leastS;
    }
    return hostS - line.intercept - line.slope * position;
  }
}
