/** How contacts are told from flights, and which of them make a series. */
export interface HopSettings {
  readonly gravityMps2: number;
  readonly massRelativeU: number;
  /** what is a hop at all */
  readonly series: {
    readonly flightLeastS: number;
    readonly flightMostS: number;
    readonly contactLeastS: number;
    readonly contactMostS: number;
    readonly stopMostS: number;
    readonly hopsLeast: number;
    readonly gapS: number;
  };
  readonly platform: {
    readonly contactN: number;
    readonly noiseTimes: number;
    readonly coarseShare: number;
    readonly ringS: number;
    readonly slopeShare: number;
    readonly zeroShareMost: number;
    readonly weightLeastN: number;
    readonly weightMostN: number;
    readonly weightShareMost: number;
    readonly modelRelativeU: number;
    readonly edgeU: number;
  };
  readonly foot: {
    readonly rateLeastHz: number;
    readonly smoothS: number;
    readonly lowShare: number;
    readonly joinS: number;
    readonly landBeforeS: number;
    readonly landAfterS: number;
    readonly landHalfS: number;
    readonly pushS: number;
    readonly kinkS: number;
    readonly kinkAfterS: number;
    readonly turnLeastRadps: number;
    readonly turnSpreadMost: number;
    readonly landUS: number;
    readonly takeOffUS: number;
  };
  /** relative standard uncertainty of the stiffness by the timing model, which takes the force for half a sine */
  readonly stiffnessModelU: number;
}
