/** How the causal pass turns samples into a height and the height into provisional repetitions. Plain JSON. */
export interface BlockCounterSettings {
  /** rate at which the counter thinks; native samples are averaged or joined by lines to it [Hz] */
  readonly cellRateHz: number;
  readonly movement: BlockMovementSettings;
  readonly heel: { readonly cutoffHz: number };
  readonly foot: BlockFootSettings;
  readonly body: BlockBodySettings;
}

/** From a height to repetitions. */
export interface BlockMovementSettings {
  /** least rise of a repetition of heel and foot, and of the body [m] */
  readonly leastRiseM: number;
  readonly leastBodyRiseM: number;
  /** and as a share of the typical rise of the set [-] */
  readonly leastShare: number;
  readonly leastBodyShare: number;
  /** typical rise until the first repetition has been seen, heel and foot, and body [m] */
  readonly firstTypicalM: number;
  readonly firstTypicalBodyM: number;
  /** the typical rise is the median of this many last repetitions [-] */
  readonly typicalCount: number;
  /** leaving the bottom, and back at it: this share of the typical rise above it [-] */
  readonly leaveShare: number;
  /** a bottom above that counts after a fall of this share of the last top [-] */
  readonly returnShare: number;
  /** start and end of a repetition are taken at this share of the typical rise above the bottom [-] */
  readonly startShare: number;
  /** the top is the middle of the time above this share of the rise [-] */
  readonly topShare: number;
  /** leaving the bottom needs this speed [m/s] */
  readonly risingSpeedMps: number;
  /** slower than this for so long is standing still [m/s, s] */
  readonly stillSpeedMps: number;
  readonly stillS: number;
  /** shortest time from leaving the bottom to being back at it, as these shares see it [s] */
  readonly leastMoveS: number;
  /** time after a repetition in which no other may begin to count [s] */
  readonly refractoryS: number;
  /** most that the floor rises from one repetition to the next [m] */
  readonly floorDriftM: number;
}

/** From acceleration and turning of the foot to a height of the heel. */
export interface BlockFootSettings {
  readonly gravityMps2: number;
  /** lever from the metatarsal heads to the heel where nobody measured it [m] */
  readonly nominalLeverM: number;
  /** smoothing of the accelerometer's tilt without a gyroscope [Hz] */
  readonly tiltCutoffHz: number;
  /** how fast gravity corrects the gyroscope, and how far |a| may be from gravity for it [s, m/s2] */
  readonly correctionS: number;
  readonly correctionToleranceMps2: number;
  /** standing still: the specific force stays this close to its recent mean for so long [m/s2, s] */
  readonly stillToleranceMps2: number;
  /** and so does the turning [rad/s] */
  readonly stillTurningRadps: number;
  readonly stillS: number;
  /** after this time a level is taken for the time being, until the foot has stood still [s] */
  readonly waitS: number;
  /** while standing still at the bottom the level follows with this time constant [s] */
  readonly levelS: number;
  /** higher than this is a step, not a raise; toes further up than this as well [rad] */
  readonly mostPitchRad: number;
  readonly mostToesUpRad: number;
}

/** From acceleration or force to a band-passed rise of the body. */
export interface BlockBodySettings {
  readonly gravityMps2: number;
  /** movement slower than about twice this is let go as drift [s] */
  readonly spreadS: number;
  /** the rise at an instant is taken from the accelerations so long before and after it [s] */
  readonly reachS: number;
  /** above this frequency the acceleration is left out [Hz] */
  readonly cutoffHz: number;
  /** standing on the platform: force above this, and steady within this share for so long [N, -, s] */
  readonly loadedN: number;
  readonly steadyShare: number;
  readonly steadyS: number;
  /** less than this share of body weight: the person is stepping off [-] */
  readonly unloadedShare: number;
  /** a trunk or platform acceleration beyond this is a step, not a raise [m/s2] */
  readonly mostAccelerationMps2: number;
}
