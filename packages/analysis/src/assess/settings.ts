/** How repetitions are judged and set measures taken, apart from what the protocol says. */
export interface JudgingSettings {
  readonly gravityMps2: number;
  readonly plainNoBelow: number;
  readonly plainYesAbove: number;
  readonly movementCutoffHz: number;
  readonly massRelativeU: number;
  readonly ankleModelRelativeU: number;
  readonly bottomUM: number;
  readonly leanURad: number;
  readonly speedRelativeU: number;
  readonly forceRelativeU: number;
  readonly kneeDipWindowS: number;
  readonly plateauLeastS: number;
  readonly draws: number;
  readonly seed: number;
  readonly belowFractions: readonly number[];
  readonly countFractions: readonly number[];
  readonly dropSign: number;
  readonly exertionFull: number;
  readonly exertionLow: number;
  readonly topMovedS: number;
  readonly gapShareMost: number;
}

/** Every number that an assessment uses and no protocol states; plain JSON. */
export interface Settings {
  readonly judging: JudgingSettings;
}
