/** How a level is read from a stretch in which nothing should move. */
export interface LevelRule {
  /** length of the blocks whose means are compared [s] */
  readonly blockS: number;
  /** least length of a stretch [s] */
  readonly leastS: number;
  /** longest step between two samples that is no hole [s] */
  readonly gapS: number;
}

/** What a quantity may show when nothing acts on it, in SI units of the quantity. */
export interface ZeroLimits {
  /** greatest range of the block means: more is movement */
  readonly moveMost: number;
  /** greatest standard deviation of single samples about their block: more is noise */
  readonly noiseMost: number;
  /** greatest departure from the last zero that is drift */
  readonly driftMost: number;
  /** drift up to which nothing is said */
  readonly driftPlain: number;
  /** greatest level of an empty sensor of which neither a last zero nor a capacity is known */
  readonly emptyMost: number;
}

/** When a zero is taken and when it is refused. */
export interface ZeroRule {
  readonly level: LevelRule;
  readonly limits: Readonly<Record<'force' | 'torque', ZeroLimits>>;
  /** greatest level of an empty sensor, as a share of its capacity [-] */
  readonly emptyCapacityShare: number;
  /** greatest departure from the last zero that is drift, as a share of the capacity [-] */
  readonly driftCapacityShare: number;
}

/** When a calibration by known masses holds. */
export interface MassRule {
  readonly level: LevelRule;
  /** fewest different masses, the empty sensor among them [-] */
  readonly massesLeast: number;
  /** least of the greatest mass [kg] */
  readonly greatestLeastKg: number;
  /** greatest departure from the line, as a share of the greatest load [-] */
  readonly linearityMost: number;
  /** probability under which the departure of one mass from the line through the others is no chance [-] */
  readonly strayProbability: number;
  /** least span of the readings over their scatter about the line: below it the sensor does not answer [-] */
  readonly answerLeast: number;
  /** greatest difference between the empty sensor before and after [N] */
  readonly returnMostN: number;
  /** greatest range of the block means of a still stretch, and its greatest share of the range of the recording [N, -] */
  readonly stillMostN: number;
  readonly stillShare: number;
  /** half the width within which a mass is what was told [kg] */
  readonly massHalfKg: number;
  /** relative standard uncertainty of taking standard gravity for that of the place [-] */
  readonly gravityRelativeU: number;
  /** days after which a calibration is to be repeated [day] */
  readonly validDays: number;
}

/** When the weight of a resting limb is read. */
export interface RestLoadRule {
  readonly level: LevelRule;
  /** least load that is a limb [N] */
  readonly leastN: number;
  /** greatest load that is a resting limb [N] */
  readonly mostN: number;
  /** greatest range of the block means of a limb at rest [N] */
  readonly moveMostN: number;
}

/** When a light is lit. */
export interface LightRule {
  readonly level: LevelRule;
  /** greatest age of the newest sample [s] */
  readonly silentS: number;
  /** oldest zero that still counts [s] */
  readonly zeroOldS: number;
  /** oldest body mass that still counts [day] */
  readonly massOldDays: number;
  /** least and greatest body mass [kg] */
  readonly massLeastKg: number;
  readonly massMostKg: number;
  /** greatest difference between mass on the platform and mass told, relative [-] */
  readonly massDifference: number;
  /** least share of the body weight with which somebody stands on the platform [-] */
  readonly standsShare: number;
  /** greatest angle between up and the direction told [rad] */
  readonly tiltMostRad: number;
  /** least share of the stretch in which the direction of gravity holds [-] */
  readonly steadyLeast: number;
  /** greatest spread of the force from its tenth to its ninth tenth while somebody is weighed, as a share of the force [-] */
  readonly swayMost: number;
  /** least and greatest size of gravity, as a share of it [-] */
  readonly gravityLeast: number;
  readonly gravityMost: number;
  /** greatest wander of the direction of gravity, and greatest mean rate, while still [rad, rad/s] */
  readonly wanderMostRad: number;
  readonly turnMostRadps: number;
  /** greatest range of a string while still [m] */
  readonly stringMostM: number;
}

/** How a guess is weighed. */
export interface GuessRule {
  /** confidence under which one is asked [-] */
  readonly askBelow: number;
  /** probability under which an answer is not offered [-] */
  readonly offerFrom: number;
  /** quantiles that are taken for the ends of a range, so that single samples do not make it [-] */
  readonly lowQuantile: number;
  readonly highQuantile: number;
}

/** Every number of setting up; no result of a test depends on one. */
export interface SetupSettings {
  readonly gravityMps2: number;
  readonly zero: ZeroRule;
  readonly masses: MassRule;
  readonly restLoad: RestLoadRule;
  readonly lights: LightRule;
  readonly guess: GuessRule;
}
