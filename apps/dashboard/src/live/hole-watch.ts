import type { SampleBlock } from '@surae/sensors';

/** Times of samples that carry no number and lie further apart than this have a hole between them [s]. Common practice, no source. */
const longestStepS = 0.25;

/** Notices where samples are missing between blocks. */
export class HoleWatch {
  private nextIndex: number | undefined;
  private lastS = 0;

  /** Whether samples are missing just before a block; the first one has nothing before it, and one that came late fills a hole. */
  isAfterHole({ firstIndex, deviceTimesS, channels, isLate }: SampleBlock): boolean {
    const length = channels[0]?.samples.length ?? 0;
    if (isLate === true || length === 0) return false;
    const { nextIndex, lastS } = this;
    this.nextIndex = firstIndex + length;
    this.lastS = deviceTimesS?.at(-1) ?? lastS;
    if (nextIndex === undefined) return false;
    return firstIndex > nextIndex || (deviceTimesS !== null && (deviceTimesS[0] ?? 0) - lastS > longestStepS);
  }
}
