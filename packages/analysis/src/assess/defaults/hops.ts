import type { HopSettings } from '../../hops/hop-settings.ts';

/** What the measurement of hop series takes as given unless the caller says otherwise. */
export const hopDefaults: HopSettings = {
  gravityMps2: 9.80665, // 3rd General Conference on Weights and Measures (1901)
  massRelativeU: 0.005, // ours
  series: {
    flightLeastS: 0.06, // ours
    flightMostS: 0.8, // a jump of 0.78 m; ours
    contactLeastS: 0.08, // ours
    contactMostS: 0.6, // ours
    stopMostS: 3, // ours
    hopsLeast: 5, // ours
    gapS: 0.02, // ours
  },
  platform: {
    contactN: 20, // common practice, no source: 10 to 20 N
    noiseTimes: 5, // ours
    coarseShare: 0.15, // ours
    ringS: 0.04, // ours
    slopeShare: 0.06, // ours
    zeroShareMost: 0.15, // ours
    weightLeastN: 150, // ours
    weightMostN: 2500, // ours
    weightShareMost: 0.1, // ours
    modelRelativeU: 0.5, // of the stretch that is extrapolated; ours
    edgeU: 0.3, // of the sampling interval; ours
  },
  foot: {
    rateLeastHz: 50, // ours
    smoothS: 0.03, // ours
    lowShare: 0.7, // ours
    joinS: 0.09, // ours
    landBeforeS: 0.05, // ours
    landAfterS: 0.07, // ours
    landHalfS: 0.004, // ours
    pushS: 0.2, // ours
    kinkS: 0.012, // ours
    kinkAfterS: 0.08, // ours
    turnLeastRadps: 1, // ours
    turnSpreadMost: 0.5, // ours
    landUS: 0.005, // ours, by simulation only
    takeOffUS: 0.012, // ours, by simulation only
  },
  stiffnessModelU: 0.03, // ours
};
