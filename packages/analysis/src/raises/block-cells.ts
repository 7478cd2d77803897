/** Takes one cell: the time of its middle [s] and the mean of each channel over it. The array is used again. */
export type CellSink = (timeS: number, means: Float64Array) => void;

/**
 * Turns samples of any rate, even or not, into means over cells of equal length, one sample at a time and without
 * setting memory aside. Between two samples the signal is taken as a straight line, so a cell holds the mean of many
 * samples at a high rate and lies on the line between two at a low one. A sample that differs from both its neighbours is
 * first replaced by the middle of the three, which removes wild single samples.
 */
export class CellAverager {
  private readonly channelCount: number;
  private readonly cellS: number;
  private readonly sink: CellSink;
  /** the last two samples as they came */
  private readonly before: Float64Array;
  private readonly last: Float64Array;
  /** end of the piece of line that has been taken up */
  private readonly reached: Float64Array;
  private readonly middle: Float64Array;
  private readonly area: Float64Array;
  private readonly means: Float64Array;
  private lastS = 0;
  private reachedS = 0;
  private startS = 0;
  private cellIndex = 0;
  private sampleCount = 0;

  constructor(channelCount: number, cellRateHz: number, sink: CellSink) {
    this.channelCount = channelCount;
    this.cellS = 1 / cellRateHz;
    this.sink = sink;
    this.before = new Float64Array(channelCount);
    this.last = new Float64Array(channelCount);
    this.reached = new Float64Array(channelCount);
    this.middle = new Float64Array(channelCount);
    this.area = new Float64Array(channelCount);
    this.means = new Float64Array(channelCount);
  }

  /** Takes the sample at `index` of each channel; its time lies after that of the one before [s]. */
  push(timeS: number, channels: readonly Float64Array[], index: number): void {
    const { before, last, middle, channelCount } = this;
    if (this.sampleCount === 0) {
      this.startS = timeS;
      this.reachedS = timeS;
      for (let c = 0; c < channelCount; c++) this.reached[c] = channels[c][index];
    } else if (this.sampleCount > 1) {
      for (let c = 0; c < channelCount; c++) {
        const a = before[c];
        const b = last[c];
        const next = channels[c][index];
        middle[c] = Math.max(Math.min(a, b), Math.min(Math.max(a, b), next));
      }
      this.advance(this.lastS, middle);
    }
    for (let c = 0; c < channelCount; c++) {
      before[c] = this.sampleCount === 0 ? channels[c][index] : last[c];
      last[c] = channels[c][index];
    }
    this.lastS = timeS;
    this.sampleCount += 1;
  }

  /** Takes up the last sample, which waited for its neighbour. */
  finish(): void {
    if (this.sampleCount > 1) this.advance(this.lastS, this.last);
  }

  /** Follows the line from where it stands to a sample and gives away every cell that this completes. */
  private advance(toS: number, samples: Float64Array): void {
    const { area, cellS, channelCount, means, reached } = this;
    let edgeS = this.startS + (this.cellIndex + 1) * cellS;
    while (toS >= edgeS) {
      const share = (edgeS - this.reachedS) / (toS - this.reachedS);
      for (let c = 0; c < channelCount; c++) {
        const atEdge = reached[c] + share * (samples[c] - reached[c]);
        means[c] = (area[c] + ((reached[c] + atEdge) / 2) * (edgeS - this.reachedS)) / cellS;
        area[c] = 0;
        reached[c] = atEdge;
      }
      this.reachedS = edgeS;
      this.sink(edgeS - cellS / 2, means);
      this.cellIndex += 1;
      edgeS = this.startS + (this.cellIndex + 1) * cellS;
      if (toS === this.reachedS) break;
    }
    const leftS = toS - this.reachedS;
    for (let c = 0; c < channelCount; c++) {
      area[c] += ((reached[c] + samples[c]) / 2) * leftS;
      reached[c] = samples[c];
    }
    this.reachedS = toS;
  }
}
