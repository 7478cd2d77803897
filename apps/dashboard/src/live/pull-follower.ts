import type { SampleBlock } from '@surae/sensors';

/** A force as it is followed while samples come; in the unit of the channel. */
export interface FollowedPull {
  /** time of the newest sample, from the first one [s] */
  readonly timeS: number;
  readonly unit: 'N' | 'N.m';
  /** load while the leg was relaxed; null until that is over */
  readonly rest: number | null;
  /** departure from the load at rest, mean of the last moment; null until the rest is known */
  readonly net: number | null;
  /** greatest mean over half a second so far */
  readonly best: number | null;
  /** the force fell by more than a share of itself in a moment, before the cue to let go */
  readonly dropped: boolean;
  /** the course of the net force, a point each twentieth of a second: times and values */
  readonly course: readonly (readonly [timeS: number, net: number])[];
}

/** Length of one step of the course, and of what is averaged for the large figure [s]; ours. */
const stepS = 0.05;
/** window of the mean that counts: 0.5 s in steps */
const windowSteps = 10;
/** Neighbouring samples lie no more steps apart, at 10 samples a second and more; ours. */
const mostStepsApart = 3;
/** The first moment after the start is no rest yet [s]; ours. */
const settleS = 0.2;
/** A fall by this share within two steps, from this size on, is sudden (the usual stop rule: 30 % in 100 ms) [-, N or N.m]. */
const dropShare = 0.3;
const dropLeast = { N: 50, 'N.m': 5 } as const;

/** Follows one trial: rest first, then the push above it, whichever way the sensor reads it. */
export class PullFollower {
  private readonly restUntilS: number;
  private readonly offS: number;
  private firstS: number | undefined;
  private lastS = 0;
  private unit: 'N' | 'N.m' = 'N';
  private restSum = 0;
  private restCount = 0;
  private step = { index: -1, sum: 0, count: 0 };
  private readonly steps: [number, number][] = [];
  /** the first step after which none is missing */
  private wholeFrom = 0;
  private best: number | null = null;
  private dropped = false;

  /** Rest is taken until one time, and a fall is no sudden drop after the cue to let go [s]. */
  constructor(restUntilS: number, offS: number) {
    this.restUntilS = restUntilS;
    this.offS = offS;
  }

  add({ deviceTimesS, channels }: SampleBlock): void {
    const channel =
      channels.find(({ quantity }) => quantity === 'force') ?? channels.find((one) => one.quantity === 'torque');
    if (channel === undefined || deviceTimesS === null) return;
    this.unit = channel.quantity === 'force' ? 'N' : 'N.m';
    deviceTimesS.forEach((timeS, i) => this.take(timeS, channel.samples[i] ?? 0));
  }

  get state(): FollowedPull {
    const rest = this.restCount > 0 && this.lastS >= this.restUntilS ? this.restSum / this.restCount : null;
    const net = rest === null ? null : (this.steps.at(-1)?.[1] ?? null);
    return {
      timeS: this.lastS,
      unit: this.unit,
      rest,
      net,
      best: this.best,
      dropped: this.dropped,
      course: this.steps,
    };
  }

  private take(atS: number, sample: number): void {
    this.firstS ??= atS;
    const timeS = atS - this.firstS;
    this.lastS = timeS;
    if (timeS < this.restUntilS) {
      if (timeS < settleS) return;
      this.restSum += sample;
      this.restCount += 1;
      return;
    }
    if (this.restCount === 0) return;
    const index = Math.floor((timeS - this.restUntilS) / stepS);
    if (index !== this.step.index) {
      this.closeStep();
      // samples are missing: what lies before says nothing of a mean or a fall here
      if (index - this.step.index > mostStepsApart) this.wholeFrom = this.steps.length;
      this.step = { index, sum: 0, count: 0 };
    }
    this.step.sum += sample;
    this.step.count += 1;
  }

  private closeStep(): void {
    const { index, sum, count } = this.step;
    if (count === 0) return;
    // a sensor that reads a push downwards is followed all the same
    const net = Math.abs(sum / count - this.restSum / this.restCount);
    const endS = this.restUntilS + (index + 1) * stepS;
    this.steps.push([endS, net]);
    const last = this.steps.slice(Math.max(this.wholeFrom, this.steps.length - windowSteps));
    if (last.length === windowSteps) {
      const mean = last.reduce((all, [, value]) => all + value, 0) / windowSteps;
      this.best = Math.max(this.best ?? 0, mean);
    }
    const before = this.steps.length - this.wholeFrom < 3 ? 0 : (this.steps.at(-3)?.[1] ?? 0);
    if (endS < this.offS && before > dropLeast[this.unit] && net < (1 - dropShare) * before) this.dropped = true;
  }
}
