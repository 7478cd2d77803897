/** A stretch of a stream without samples. */
export interface SampleHole {
  /** from the first place that is missing to the first that is there again, in units of what packets are placed by */
  readonly position: number;
  readonly toPosition: number;
  /** number of its first sample */
  readonly index: number;
  /** samples that fit in it */
  readonly count: number;
  /** times of the samples before and after it [s] */
  readonly fromS: number;
  readonly toS: number;
}

/** Where samples of a hole belong after all. */
export interface HolePlace {
  readonly index: number;
  readonly timesS: Float64Array;
}

/** How many holes are remembered to be filled; the count goes on. */
const mostKept = 4096;

/** The holes of a stream, and what has come late for them. */
export class SampleHoles {
  private readonly kept: SampleHole[] = [];
  private missing = 0;
  private longest = 0;

  /** Samples that are missing now. */
  get missingCount(): number {
    return this.missing;
  }

  /** Longest time between neighbouring samples that lie apart, as it was when it opened; 0 without a hole [s]. */
  get longestS(): number {
    return this.longest;
  }

  /** Takes what lies between two stretches of samples; it may be no hole. */
  add(hole: SampleHole, intervalS: number): void {
    const apartS = hole.toS - hole.fromS;
    if (hole.count > 0 || apartS > 1.5 * intervalS) this.longest = Math.max(this.longest, apartS);
    if (hole.count === 0) return;
    this.missing += hole.count;
    this.kept.push(hole);
    if (this.kept.length > mostKept) this.kept.shift();
  }

  /** Fills part of a hole; undefined when none holds so many samples at that place. */
  fill(position: number, count: number, samplesPerUnit: number): HolePlace | undefined {
    const at = this.kept.findLastIndex((hole) => hole.position <= position && position < hole.toPosition);
    const hole = this.kept[at];
    if (hole === undefined) return undefined;
    const offset = Math.round((position - hole.position) * samplesPerUnit);
    const left = hole.count - offset - count;
    if (left < 0) return undefined;
    const index = hole.index + offset;
    const stepS = (hole.toS - hole.fromS) / (hole.count + 1);
    const timeOf = (one: number): number => hole.fromS + (one + 1) * stepS;
    const timesS = Float64Array.from({ length: count }, (_, i) => timeOf(offset + i));
    const end = position + count / samplesPerUnit;
    const before = { ...hole, toPosition: position, count: offset, toS: timesS[0]! };
    const after = {
      ...hole,
      position: end,
      index: index + count,
      count: left,
      fromS: timesS[count - 1]!,
    };
    this.kept.splice(at, 1, ...[before, after].filter((one) => one.count > 0));
    this.missing -= count;
    return { index, timesS };
  }
}
