import type { SampleBlock } from '@surae/sensors';
import { SIGNAL_RULES } from '@surae/shared';

/** A stretch in which nobody stood on the plate. */
export interface OffPlate {
  readonly fromS: number;
  readonly forS: number;
}

/** force from which somebody may stand there [N], and span over which a standing weight is a mean [s]; as the count sees it */
const loadedN = 200;
const meanS = 0.3;

/**
 * Watches a plate that is stood on for somebody who steps off it, or leans away from it: a force below a share of the greatest
 * weight that stood there. Whoever has not stood there yet has not stepped off.
 */
export class PlateWatch {
  private readonly levelN: number;
  private readonly factor: number;
  private meanN = 0;
  private weightN = 0;
  private lastS: number | undefined;
  private lowFromS: number | undefined;
  private over: OffPlate[] = [];

  /**
   * @param levelN - what the plate shows when it is empty, as it comes [N]
   * @param factor - by what samples are multiplied before they are read [-]
   */
  constructor(levelN = 0, factor = 1) {
    this.levelN = levelN;
    this.factor = factor;
  }

  add({ deviceTimesS, channels }: Pick<SampleBlock, 'deviceTimesS' | 'channels'>): void {
    const force = channels.find(({ quantity }) => quantity === 'force')?.samples;
    if (deviceTimesS === null || force === undefined) return;
    deviceTimesS.forEach((timeS, i) => this.step(timeS, this.factor * ((force[i] ?? Number.NaN) - this.levelN)));
  }

  private step(timeS: number, forceN: number): void {
    // what is missing says nothing of who stands there
    if (!Number.isFinite(forceN)) return;
    const forS = Math.min(Math.max(timeS - (this.lastS ?? timeS), 0), meanS);
    this.lastS = timeS;
    this.meanN += (forS / meanS) * (forceN - this.meanN);
    this.weightN = Math.max(this.weightN, this.meanN);
    const isLow = this.weightN > loadedN && forceN < SIGNAL_RULES.offPlateShare.value * this.weightN;
    if (isLow) {
      this.lowFromS ??= timeS;
      return;
    }
    const off = this.off;
    if (off !== null) {
      this.over.push(off);
      // another one may stand there now
      this.weightN = 0;
      this.meanN = forceN;
    }
    this.lowFromS = undefined;
  }

  /** The stretch that goes on; null while somebody stands there. */
  get off(): OffPlate | null {
    if (this.lowFromS === undefined || this.lastS === undefined) return null;
    const forS = this.lastS - this.lowFromS;
    return forS < SIGNAL_RULES.offPlateFor.value ? null : { fromS: this.lowFromS, forS };
  }

  /** Stretches that are over since this was last asked. */
  takeOver(): readonly OffPlate[] {
    const { over } = this;
    this.over = [];
    return over;
  }
}
