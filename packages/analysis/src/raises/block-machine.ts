import type { BlockMovementSettings } from './block-settings.ts';

/** A repetition as the causal pass sees it; the final pass may move or drop it. */
export interface ProvisionalRaise {
  readonly startS: number;
  readonly topS: number;
  readonly endS: number;
  /** height of heel or rise of body above the floor as known at the time [m] */
  readonly heightM: number;
}

/** Where in a repetition the person is; `waiting` until the counter knows its level. */
export type RaisePhase = 'waiting' | 'settled-low' | 'rising' | 'high' | 'lowering';

/** Heights of the movement under way, oldest overwritten first; long enough for the longest repetition with its hold. */
const keptCells = 2048;

/** The floor of `position` is a level that drifts slowly; a `band-passed` rise has none but the bottom just left. */
export type HeightKind = 'position' | 'band-passed';

/**
 * Settled low, rising, high, lowering, settled low: repetitions from a height, one value at a time. What counts as
 * leaving the bottom, returning to it or dipping at the top is measured against the typical rise of the last
 * repetitions. A dip that does not fall by the return share belongs to the same repetition.
 */
export class RaiseMachine {
  private readonly settings: BlockMovementSettings;
  private readonly kind: HeightKind;
  private readonly leastRiseM: number;
  private readonly leastShare: number;
  private readonly lastRisesM: number[] = [];
  private typicalM: number;
  private floorM: number | undefined;
  private started = false;
  private up = false;
  private meanM = 0;
  private heightM = 0;
  private speedMps = 0;
  private stillForS = 0;
  private valleyM = 0;
  private valleyS = 0;
  private baseS = 0;
  private startS = 0;
  private startValleyM = 0;
  private topM = 0;
  private topS = 0;
  private dipM = 0;
  private dipS = 0;
  private lastEndS = -Infinity;
  private spoiled = false;
  private readonly keptS = new Float64Array(keptCells);
  private readonly keptM = new Float64Array(keptCells);
  private kept = 0;

  constructor(settings: BlockMovementSettings, kind: HeightKind) {
    this.settings = settings;
    this.kind = kind;
    this.leastRiseM = kind === 'position' ? settings.leastRiseM : settings.leastBodyRiseM;
    this.leastShare = kind === 'position' ? settings.leastShare : settings.leastBodyShare;
    this.typicalM = kind === 'position' ? settings.firstTypicalM : settings.firstTypicalBodyM;
  }

  /** Whether the height rests at the bottom and has been still for long enough to be a level. */
  get restsLow(): boolean {
    return !this.up && this.stillForS >= this.settings.stillS;
  }

  get phase(): RaisePhase {
    if (!this.started) return 'waiting';
    if (!this.up) return 'settled-low';
    const fallenM = this.topM - this.heightM;
    if (this.speedMps > this.settings.risingSpeedMps && fallenM <= this.leaveM) return 'rising';
    return fallenM <= this.leaveM ? 'high' : 'lowering';
  }

  /** Height above the floor now [m]. */
  get aboveFloorM(): number {
    return this.heightM - (this.floorM ?? this.valleyM);
  }

  /** This movement is no raise, whatever its height: the foot went where a raise does not take it. */
  spoil(): void {
    if (this.up) this.spoiled = true;
  }

  /** Takes the height at a time; gives the repetition that it completes. */
  step(timeS: number, heightM: number, cellS: number): ProvisionalRaise | undefined {
    this.follow(timeS, heightM, cellS);
    return this.up ? this.stepUp(timeS) : this.stepLow(timeS);
  }

  /** Gives the repetition that is nearly over when the recording ends. */
  finish(): ProvisionalRaise | undefined {
    if (!this.up || !this.hasFallen) return undefined;
    return this.close(this.dipS);
  }

  private get leaveM(): number {
    return this.settings.leaveShare * this.typicalM;
  }

  /** Level against which a fall is measured [m]. */
  private get referenceM(): number {
    const { floorM, startValleyM } = this;
    return this.kind === 'position' && floorM !== undefined ? Math.min(floorM, startValleyM) : startValleyM;
  }

  private get hasFallen(): boolean {
    return this.topM - this.dipM >= this.settings.returnShare * (this.topM - this.referenceM);
  }

  private follow(timeS: number, heightM: number, cellS: number): void {
    const smoothingS = 0.1; // lag of the mean that the speed is taken against: ten cells
    if (!this.started) {
      this.started = true;
      this.meanM = heightM;
      this.settle(timeS, heightM);
    }
    this.heightM = heightM;
    this.meanM += (cellS / (smoothingS + cellS)) * (heightM - this.meanM);
    this.speedMps = (heightM - this.meanM) / smoothingS;
    this.stillForS = Math.abs(this.speedMps) < this.settings.stillSpeedMps ? this.stillForS + cellS : 0;
  }

  private settle(timeS: number, levelM: number): void {
    this.up = false;
    this.spoiled = false;
    this.valleyM = levelM;
    this.valleyS = timeS;
    this.baseS = timeS;
  }

  private stepLow(timeS: number): undefined {
    const { settings, heightM } = this;
    if (heightM < this.valleyM || this.restsLow) {
      this.valleyM = this.restsLow && this.kind === 'position' ? this.meanM : Math.min(this.valleyM, heightM);
      this.valleyS = timeS;
    }
    if (heightM <= this.valleyM + settings.startShare * this.typicalM) this.baseS = timeS;
    if (heightM > this.valleyM + this.leaveM && this.speedMps > settings.risingSpeedMps) {
      this.moveFloor();
      this.rise(timeS, Math.max(this.baseS, this.valleyS), this.valleyM);
    }
    return undefined;
  }

  /** The floor goes down at once and up a little per repetition, so that a slipped sensor is not swallowed. */
  private moveFloor(): void {
    const { floorM, valleyM } = this;
    const upM = floorM === undefined ? 0 : Math.min(valleyM - floorM, this.settings.floorDriftM);
    this.floorM = floorM === undefined ? valleyM : floorM + upM;
  }

  private rise(timeS: number, startS: number, valleyM: number): void {
    this.up = true;
    this.spoiled = false;
    this.startS = startS;
    this.startValleyM = valleyM;
    this.topM = this.heightM;
    this.topS = timeS;
    this.dipM = this.heightM;
    this.dipS = timeS;
    this.kept = 0;
  }

  /** Middle of the time spent in the uppermost part, which a hold with a ripple on it moves less than its highest cell. */
  private middleOfTopS(): number {
    const levelM = this.topM - (1 - this.settings.topShare) * (this.topM - this.startValleyM);
    let fromS = this.topS;
    let toS = this.topS;
    for (let i = Math.max(0, this.kept - keptCells); i < this.kept; i++) {
      if (this.keptM[i % keptCells] < levelM) continue;
      const timeS = this.keptS[i % keptCells];
      fromS = Math.min(fromS, timeS);
      toS = Math.max(toS, timeS);
    }
    return (fromS + toS) / 2;
  }

  private stepUp(timeS: number): ProvisionalRaise | undefined {
    const { settings, heightM } = this;
    this.keptS[this.kept % keptCells] = timeS;
    this.keptM[this.kept % keptCells] = heightM;
    this.kept += 1;
    if (heightM > this.topM) {
      this.topM = heightM;
      this.topS = timeS;
      this.dipM = heightM;
    }
    if (heightM <= this.dipM) {
      this.dipM = heightM;
      this.dipS = timeS;
    }
    const reference = this.referenceM;
    if (heightM < reference + settings.leaveShare * (this.topM - reference)) {
      const raise = this.close(timeS);
      this.settle(timeS, heightM);
      return raise;
    }
    if (this.hasFallen && heightM > this.dipM + this.leaveM) {
      const raise = this.close(this.dipS);
      this.rise(timeS, this.dipS, this.dipM);
      return raise;
    }
    const isStill = this.stillForS >= settings.stillS;
    // a rise by less than half of what this set shows, and then stillness, is a level and no top
    const seenM = this.lastRisesM.length === 0 ? 0 : settings.returnShare * this.typicalM;
    const isSmall = this.topM - this.startValleyM < Math.max(this.leastRise, seenM);
    if (isStill && (this.hasFallen || isSmall)) {
      // the level moved: a slipped sensor, a string hooked on, a rest on a higher bottom
      const raise = this.hasFallen ? this.close(timeS - this.stillForS) : undefined;
      this.settle(timeS, this.meanM);
      this.floorM = this.meanM;
      return raise;
    }
    return undefined;
  }

  private get leastRise(): number {
    return Math.max(this.leastRiseM, this.leastShare * this.typicalM);
  }

  private close(endS: number): ProvisionalRaise | undefined {
    const { settings, startS, topM } = this;
    const topS = this.middleOfTopS();
    const riseM = topM - this.startValleyM;
    if (this.spoiled || riseM < this.leastRise || endS - startS < settings.leastMoveS) return undefined;
    if (topS - this.lastEndS < settings.refractoryS) return undefined;
    this.lastEndS = endS;
    this.lastRisesM.push(riseM);
    if (this.lastRisesM.length > settings.typicalCount) this.lastRisesM.shift();
    const sorted = this.lastRisesM.slice().sort((a, b) => a - b);
    this.typicalM = sorted[sorted.length >> 1];
    return { startS, topS, endS, heightM: topM - this.referenceM };
  }
}
