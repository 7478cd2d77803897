import type { SampleBlock, SourceQuantity } from '@surae/sensors';

/** A signal that moves less than this lies flat, in the SI unit of the quantity; ours: below the sway of a standing person. */
const flatBands: Readonly<Record<SourceQuantity, number>> = {
  'heel-height': 0.0003,
  acceleration: 0.01,
  'angular-velocity': 0.002,
  force: 1,
  torque: 0.1,
  angle: 0.001,
  tap: 0,
};

interface Run {
  least: number;
  most: number;
  sinceS: number;
}

/** Watches for a sensor that lies still or is dead: all its channels flat, or no samples at all. */
export class FlatWatch {
  private readonly flatForS: number;
  private runs: Run[] = [];
  private lastS = 0;
  private lastHostMs: number | undefined;

  constructor(flatForS: number) {
    this.flatForS = flatForS;
  }

  add({ deviceTimesS, channels, hostTimeMs }: SampleBlock): void {
    if (deviceTimesS === null || deviceTimesS.length === 0) return;
    this.lastHostMs = hostTimeMs;
    this.lastS = deviceTimesS[deviceTimesS.length - 1] ?? this.lastS;
    channels.forEach(({ quantity, samples }, k) => {
      const band = flatBands[quantity];
      const run = (this.runs[k] ??= { least: samples[0] ?? 0, most: samples[0] ?? 0, sinceS: deviceTimesS[0] ?? 0 });
      samples.forEach((value, i) => {
        run.least = Math.min(run.least, value);
        run.most = Math.max(run.most, value);
        if (run.most - run.least <= band) return;
        run.least = value;
        run.most = value;
        run.sinceS = deviceTimesS[i] ?? run.sinceS;
      });
    });
  }

  /** Whether nothing has moved for as long as is watched for, by the samples or by their staying away. */
  isFlat(nowMs: number): boolean {
    if (this.lastHostMs === undefined) return false;
    if (nowMs - this.lastHostMs >= this.flatForS * 1000) return true;
    return this.runs.every(({ sinceS }) => this.lastS - sinceS >= this.flatForS);
  }
}
