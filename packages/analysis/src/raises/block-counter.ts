import { requireFinite, requireIncreasing, requireSameLength } from '../check.ts';
import { InputError } from '../errors.ts';
import { butterworthLowPass } from '../signal/butterworth.ts';
import type { Interval } from '../signal/intervals.ts';
import { SectionFilter } from '../signal/section-filter.ts';
import type { ChannelGroup, Quantity, SensedPlacement } from '../trace.ts';
import { BodyRise, PlatformAcceleration } from './block-body.ts';
import { CellAverager } from './block-cells.ts';
import { FootHeight } from './block-foot.ts';
import { type ProvisionalRaise, RaiseMachine, type RaisePhase } from './block-machine.ts';
import type { BlockCounterSettings } from './block-settings.ts';
import { heightOfDrawn } from './heel/string-slant.ts';

/** What the counter knows about the person besides the samples. */
export interface BlockCounterOptions {
  readonly settings: BlockCounterSettings;
  /** lever from the metatarsal heads to the heel; the settings' nominal one when left out [m] */
  readonly heelLeverM?: number;
  /** length of the string at rest, where a string measures: heights are told without its slant, and the count is the same [m] */
  readonly stringRestLengthM?: number;
}

/** What the counter sees now, for a live display. */
export interface LiveState {
  readonly phase: RaisePhase;
  /** time of the newest cell that was taken up [s] */
  readonly timeS: number | undefined;
  /** height of heel or band-passed rise of body above the floor [m] */
  readonly heightM: number;
  readonly count: number;
}

const axes = ['x', 'y', 'z'] as const;

/** The columns of one quantity in a block: one for a scalar, three for a vector. */
function columnsOf(block: ChannelGroup, quantity: Quantity): Float64Array[] | undefined {
  const found = block.channels.filter((channel) => channel.quantity === quantity);
  const wanted = quantity === 'acceleration' || quantity === 'angular-velocity' ? axes : [null];
  const columns = wanted.map((axis) => found.find((channel) => axis === null || channel.axis === axis)?.samples);
  return columns.every((column) => column !== undefined) ? columns : undefined;
}

const neededQuantity = { heel: 'heel-height', foot: 'acceleration', trunk: 'acceleration', platform: 'force' } as const;

/**
 * Counts repetitions while samples arrive. Everything it does depends on one sample after another, so blocks of any size
 * give exactly the same repetitions. The count is provisional: the final pass sees what came later.
 */
export class BlockCounter {
  private readonly placement: SensedPlacement;
  private readonly settings: BlockCounterSettings;
  private readonly leverM: number;
  private readonly stringRestLengthM: number | undefined;
  private readonly machine: RaiseMachine;
  private readonly heelFilter: SectionFilter;
  private wholeBody: BodyRise | undefined;
  private readonly platform: PlatformAcceleration;
  private foot: FootHeight | undefined;
  private cells: CellAverager | undefined;
  private hasGyroscope = false;
  private standing = false;
  private lastS = -Infinity;
  private hole: Interval | undefined;
  private cellTimeS: number | undefined;
  private count = 0;
  private finished = false;
  private ready: ProvisionalRaise[] = [];

  constructor(placement: SensedPlacement, { settings, heelLeverM, stringRestLengthM }: BlockCounterOptions) {
    this.placement = placement;
    this.settings = settings;
    this.leverM = heelLeverM ?? settings.foot.nominalLeverM;
    this.stringRestLengthM = placement === 'heel' ? stringRestLengthM : undefined;
    const isPosition = placement === 'heel' || placement === 'foot';
    this.machine = new RaiseMachine(settings.movement, isPosition ? 'position' : 'band-passed');
    this.heelFilter = new SectionFilter(butterworthLowPass(2, settings.heel.cutoffHz, settings.cellRateHz));
    this.platform = new PlatformAcceleration(settings.body, settings.cellRateHz);
  }

  /**
   * Takes the next samples, of any number; gives the repetitions that they complete, in time order. Throws an
   * {@link InputError}: `missing-channel`, `length-mismatch`, `not-finite`, `not-increasing`, `out-of-range` after
   * {@link finish}.
   */
  push(block: ChannelGroup): ProvisionalRaise[] {
    if (this.finished) {
      throw new InputError('out-of-range', { argument: 'block', expected: 'none after the end', actual: 'a block' });
    }
    const columns = this.columns(block);
    const { timesS } = block;
    for (const column of columns) {
      requireSameLength(timesS, column, 'block.channels');
      requireFinite(column, 'block.channels');
    }
    requireIncreasing(timesS, 'block.timesS');
    if (timesS.length > 0 && timesS[0] <= this.lastS) {
      const details = { argument: 'block.timesS', expected: `times after ${this.lastS}`, actual: String(timesS[0]) };
      throw new InputError('not-increasing', details);
    }
    this.cells ??= new CellAverager(columns.length, this.settings.cellRateHz, (timeS, means) =>
      this.take(timeS, means),
    );
    for (let i = 0; i < timesS.length; i++) {
      this.noteHole(this.lastS, timesS[i]);
      this.cells.push(timesS[i], columns, i);
      this.lastS = timesS[i];
    }
    return this.handOver();
  }

  /** Says that no more samples come; gives the repetition that was nearly over, if any. */
  finish(): ProvisionalRaise[] {
    if (!this.finished) {
      this.cells?.finish();
      this.report(this.machine.finish());
      this.finished = true;
    }
    return this.handOver();
  }

  /** What the counter sees now. */
  get state(): LiveState {
    const waits = this.placement === 'platform' && !this.standing;
    return {
      phase: waits ? 'waiting' : this.machine.phase,
      timeS: this.cellTimeS,
      heightM: this.told(this.machine.aboveFloorM),
      count: this.count,
    };
  }

  /** A stretch without samples that is longer than the wait for a level; holes that a single sample parts are one. */
  private noteHole(fromS: number, toS: number): void {
    if (fromS === -Infinity || toS - fromS <= this.settings.foot.waitS) return;
    this.hole = { fromS: this.hole?.toS === fromS ? this.hole.fromS : fromS, toS };
  }

  private columns(block: ChannelGroup): Float64Array[] {
    const quantity = neededQuantity[this.placement];
    const columns = columnsOf(block, quantity);
    const turn = this.placement === 'foot' ? columnsOf(block, 'angular-velocity') : undefined;
    if (this.cells === undefined) this.hasGyroscope = turn !== undefined;
    if (columns === undefined || (turn !== undefined) !== this.hasGyroscope) {
      const expected = this.hasGyroscope ? `${quantity} and angular-velocity, all axes` : `${quantity}, all axes`;
      throw new InputError('missing-channel', { argument: 'block.channels', expected, actual: 'a block without' });
    }
    return turn === undefined ? columns : [...columns, ...turn];
  }

  /** Rise of the body: its weights take a millisecond to work out, and a sensor on the foot needs none. */
  private get body(): BodyRise {
    this.wholeBody ??= new BodyRise(this.settings.body, this.settings.cellRateHz);
    return this.wholeBody;
  }

  private handOver(): ProvisionalRaise[] {
    const raises = this.ready;
    this.ready = [];
    return raises;
  }

  private take(timeS: number, means: Float64Array): void {
    this.cellTimeS = timeS;
    const heightM = this.height(means, timeS);
    if (heightM === undefined) return;
    this.report(this.machine.step(timeS, heightM, 1 / this.settings.cellRateHz));
  }

  private height(means: Float64Array, timeS: number): number | undefined {
    switch (this.placement) {
      case 'heel':
        return this.heelFilter.step(means[0]);
      case 'foot':
        return this.footHeight(means, timeS);
      case 'trunk':
        return this.trunkHeight(means);
      case 'platform':
        return this.platformHeight(means[0]);
      default:
        return this.placement satisfies never;
    }
  }

  private footHeight(means: Float64Array, timeS: number): number | undefined {
    const { settings, hole } = this;
    this.foot ??= new FootHeight(settings.foot, this.leverM, settings.cellRateHz, this.hasGyroscope);
    const isUnseen = this.hasGyroscope && hole !== undefined && timeS > hole.fromS && timeS < hole.toS;
    const heightM = isUnseen ? this.foot.bridge(means) : this.foot.step(means, this.machine.restsLow);
    const { hasLevel, pitchRad } = this.foot;
    const isStep = pitchRad > settings.foot.mostPitchRad || pitchRad < -settings.foot.mostToesUpRad;
    if (hasLevel && this.hasGyroscope && isStep) this.machine.spoil();
    return heightM;
  }

  private trunkHeight(means: Float64Array): number {
    const acceleration = Math.sqrt(means[0] ** 2 + means[1] ** 2 + means[2] ** 2) - this.settings.body.gravityMps2;
    if (!this.standing) this.body.settle(acceleration);
    this.standing = true;
    return this.bodyHeight(acceleration);
  }

  private bodyHeight(acceleration: number): number {
    if (Math.abs(acceleration) > this.settings.body.mostAccelerationMps2) this.machine.spoil();
    return this.body.step(acceleration);
  }

  private platformHeight(forceN: number): number | undefined {
    const acceleration = this.platform.step(forceN);
    if (acceleration === undefined) {
      if (this.standing) this.machine.spoil();
      this.standing = false;
      return undefined;
    }
    if (!this.standing) this.body.settle(0);
    this.standing = true;
    return this.bodyHeight(acceleration);
  }

  private report(raise: ProvisionalRaise | undefined): void {
    if (raise === undefined) return;
    this.count += 1;
    this.ready.push(this.inTime(raise));
  }

  /** Takes off the delay of the filters. */
  private inTime(raise: ProvisionalRaise): ProvisionalRaise {
    const { foot, heel } = this.settings;
    // group delay of a second-order Butterworth low pass well below its cut-off: sqrt(2) / (2 pi fc)
    const delayOf = (cutoffHz: number): number => Math.SQRT2 / (2 * Math.PI * cutoffHz);
    let delayS = 0;
    if (this.placement === 'heel') delayS = delayOf(heel.cutoffHz);
    else if (this.placement === 'foot') delayS = this.hasGyroscope ? 0 : delayOf(foot.tiltCutoffHz);
    else delayS = this.body.delayS;
    const { startS, topS, endS, heightM } = raise;
    return { startS: startS - delayS, topS: topS - delayS, endS: endS - delayS, heightM: this.told(heightM) };
  }

  /** The height without what a slanting string reads too much. */
  private told(heightM: number): number {
    const { stringRestLengthM, leverM } = this;
    return stringRestLengthM === undefined ? heightM : heightOfDrawn(heightM, leverM, { stringRestLengthM });
  }
}
