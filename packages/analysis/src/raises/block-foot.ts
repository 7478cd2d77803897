import { butterworthLowPass } from '../signal/butterworth.ts';
import { SectionFilter } from '../signal/section-filter.ts';
import type { BlockFootSettings } from './block-settings.ts';

/** Length of three numbers. */
function size(x: number, y: number, z: number): number {
  return Math.sqrt(x * x + y * y + z * z);
}

/**
 * Height of the heel from a sensor on the foot in any mounting, one cell at a time: the direction of gravity in the
 * sensor, carried on by the gyroscope and corrected by the accelerometer when it reads gravity alone (complementary
 * filter), or smoothed from the accelerometer where there is no gyroscope. The pitch is its angle from the direction
 * while standing, along the direction in which the foot has tilted so far: a raise always tilts the same way.
 */
export class FootHeight {
  private readonly settings: BlockFootSettings;
  private readonly leverM: number;
  private readonly cellS: number;
  private readonly hasGyroscope: boolean;
  private readonly smoothing: SectionFilter[];
  private readonly force = new Float64Array(3);
  private readonly mean = new Float64Array(3);
  private readonly quickMean = new Float64Array(3);
  private readonly turn = new Float64Array(3);
  private readonly meanTurn = new Float64Array(3);
  private readonly bias = new Float64Array(3);
  /** direction of gravity now and while standing, and two directions across it */
  private readonly now = new Float64Array(3);
  private readonly rest = new Float64Array(3);
  private readonly across = new Float64Array(3);
  private readonly along = new Float64Array(3);
  private tiltAcross = 0;
  private tiltAlong = 0;
  private started = false;
  private levelled: 'not' | 'for-now' | 'standing' = 'not';
  private waitedS = 0;
  private stillForS = 0;
  private agreement = 0;
  private turned = 0;
  private hand = 1;
  private readonly lastDirection = new Float64Array(3);
  /** pitch now, heel up positive [rad] */
  pitchRad = 0;

  constructor(settings: BlockFootSettings, leverM: number, cellRateHz: number, hasGyroscope: boolean) {
    this.settings = settings;
    this.leverM = leverM;
    this.cellS = 1 / cellRateHz;
    this.hasGyroscope = hasGyroscope;
    const sections = butterworthLowPass(2, settings.tiltCutoffHz, cellRateHz);
    this.smoothing = [0, 1, 2].map(() => new SectionFilter(sections));
  }

  /** Whether the pitch counts from a level at which the foot stood still. */
  get hasLevel(): boolean {
    return this.levelled === 'standing';
  }

  /**
   * Takes the specific force of a stretch without samples, which is a straight line [m/s2]; gives the height [m]. Nobody knows how
   * the foot turned there: its direction is that of gravity, and nothing is learnt of rest and bias.
   */
  bridge(means: Float64Array): number | undefined {
    if (!this.hasLevel) return undefined;
    this.stillForS = 0;
    for (let i = 0; i < 3; i++) this.now[i] = means[i];
    normalise(this.now);
    this.lastDirection.set(this.now);
    this.pitchRad = this.pitch();
    return this.heightM;
  }

  /** Takes specific force [m/s2] and, where there is one, angular velocity [rad/s]; gives the height [m]. */
  step(means: Float64Array, restsLow: boolean): number | undefined {
    const { force, settings, turn } = this;
    for (let i = 0; i < 3; i++) {
      force[i] = means[i];
      turn[i] = this.hasGyroscope ? means[3 + i] : 0;
    }
    this.followRest();
    if (this.levelled !== 'standing') {
      this.waitedS += this.cellS;
      if (this.waitedS < settings.waitS) return undefined;
      const stands = this.stillForS >= settings.stillS;
      if (stands || this.levelled === 'not') {
        this.level(1);
        this.now.set(this.rest);
        this.tiltAcross = 0;
        this.tiltAlong = 0;
        this.levelled = stands ? 'standing' : 'for-now';
      }
    }
    if (this.hasGyroscope) this.fuse();
    else this.smooth();
    if (this.stillForS >= settings.stillS) {
      const share = this.cellS / settings.levelS;
      if (restsLow) this.level(share);
      for (let i = 0; i < 3; i++) this.bias[i] += share * (this.meanTurn[i] - this.bias[i]);
    }
    this.pitchRad = this.pitch();
    return this.heightM;
  }

  private get heightM(): number {
    return this.leverM * Math.sin(Math.max(-Math.PI / 2, Math.min(Math.PI / 2, this.pitchRad)));
  }

  /** Recent means of force and turning, and for how long the force has stayed close to its own. */
  private followRest(): void {
    const { force, mean, meanTurn, quickMean, settings, turn } = this;
    // means over about a tenth and half a second: noise is the same in both, movement is not
    const quickShare = this.started ? this.cellS / 0.1 : 1;
    const share = this.started ? this.cellS / 0.5 : 1;
    this.started = true;
    for (let i = 0; i < 3; i++) {
      quickMean[i] += quickShare * (force[i] - quickMean[i]);
      mean[i] += share * (force[i] - mean[i]);
      meanTurn[i] += share * (turn[i] - meanTurn[i]);
    }
    const away = size(quickMean[0] - mean[0], quickMean[1] - mean[1], quickMean[2] - mean[2]);
    const turning = size(turn[0] - meanTurn[0], turn[1] - meanTurn[1], turn[2] - meanTurn[2]);
    const isStill = away < settings.stillToleranceMps2 && turning < settings.stillTurningRadps;
    this.stillForS = isStill ? this.stillForS + this.cellS : 0;
    if (this.levelled !== 'standing' && this.stillForS >= settings.stillS) this.bias.set(meanTurn);
  }

  /** Turns the direction at rest towards the recent mean, and the two directions across it with it. */
  private level(share: number): void {
    const { across, along, mean, rest } = this;
    const length = size(mean[0], mean[1], mean[2]);
    if (length === 0) return;
    for (let i = 0; i < 3; i++) rest[i] += share * (mean[i] / length - rest[i]);
    normalise(rest);
    if (size(across[0], across[1], across[2]) === 0) across[Math.abs(rest[0]) < 0.7 ? 0 : 1] = 1;
    const dot = across[0] * rest[0] + across[1] * rest[1] + across[2] * rest[2];
    for (let i = 0; i < 3; i++) across[i] -= dot * rest[i];
    normalise(across);
    along[0] = rest[1] * across[2] - rest[2] * across[1];
    along[1] = rest[2] * across[0] - rest[0] * across[2];
    along[2] = rest[0] * across[1] - rest[1] * across[0];
  }

  private fuse(): void {
    const { bias, cellS, force, now, settings, turn } = this;
    const wx = this.hand * (turn[0] - bias[0]);
    const wy = this.hand * (turn[1] - bias[1]);
    const wz = this.hand * (turn[2] - bias[2]);
    // a direction fixed in the room turns the other way in the sensor: dg/dt = -w x g
    const [x, y, z] = [now[0], now[1], now[2]];
    now[0] -= (wy * z - wz * y) * cellS;
    now[1] -= (wz * x - wx * z) * cellS;
    now[2] -= (wx * y - wy * x) * cellS;
    const length = size(force[0], force[1], force[2]);
    if (length > 0) {
      const away = (length - settings.gravityMps2) / settings.correctionToleranceMps2;
      const share = (cellS / settings.correctionS) * Math.exp(-away * away);
      for (let i = 0; i < 3; i++) now[i] += share * (force[i] / length - now[i]);
      this.checkHand(wx, wy, wz, length);
    }
    normalise(now);
  }

  /** Some sensors mirror the axes of one instrument: then gravity and gyroscope turn against each other throughout. */
  private checkHand(wx: number, wy: number, wz: number, length: number): void {
    const { cellS, force, lastDirection: last } = this;
    const cx = -(wy * last[2] - wz * last[1]);
    const cy = -(wz * last[0] - wx * last[2]);
    const cz = -(wx * last[1] - wy * last[0]);
    if (size(last[0], last[1], last[2]) > 0) {
      this.agreement +=
        cx * (force[0] / length - last[0]) + cy * (force[1] / length - last[1]) + cz * (force[2] / length - last[2]);
      this.turned += (cx * cx + cy * cy + cz * cz) * cellS;
    }
    for (let i = 0; i < 3; i++) last[i] = force[i] / length;
    // about one raise of turning is enough to tell +1 from -1
    if (this.turned > 1 && this.agreement < -0.3 * this.turned) {
      this.hand = -this.hand;
      this.agreement = 0;
      this.turned = 0;
      this.now.set(last);
    }
  }

  private smooth(): void {
    for (let i = 0; i < 3; i++) this.now[i] = this.smoothing[i].step(this.force[i]);
    normalise(this.now);
  }

  private pitch(): number {
    const { across, along, now, rest } = this;
    const a = now[0] * across[0] + now[1] * across[1] + now[2] * across[2];
    const b = now[0] * along[0] + now[1] * along[1] + now[2] * along[2];
    const up = now[0] * rest[0] + now[1] * rest[1] + now[2] * rest[2];
    const tilt = Math.sqrt(a * a + b * b);
    // mean direction of tilting, weighted with the square of the tilt: rest and sway hardly count
    const weight = 2 * this.cellS * tilt;
    this.tiltAcross += weight * (a - this.tiltAcross * tilt);
    this.tiltAlong += weight * (b - this.tiltAlong * tilt);
    const length = Math.sqrt(this.tiltAcross * this.tiltAcross + this.tiltAlong * this.tiltAlong);
    if (length === 0) return 0;
    return Math.atan2((a * this.tiltAcross + b * this.tiltAlong) / length, up);
  }
}

function normalise(vector: Float64Array): void {
  const length = size(vector[0], vector[1], vector[2]);
  if (length > 0) for (let i = 0; i < 3; i++) vector[i] /= length;
}
