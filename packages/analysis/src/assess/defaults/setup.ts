import type { SetupSettings } from '../../setup/setup-settings.ts';

const level = {
  blockS: 0.25, // ours
  leastS: 1, // ours
  gapS: 0.25, // ours
};

/** Numbers of setting up; they stand apart from the settings of an assessment, since no result follows from them. */
export const setupDefaults: SetupSettings = {
  gravityMps2: 9.80665, // CGPM (1901), resolution 2
  zero: {
    level,
    limits: {
      // 15 N: a peak is void beyond it, 5 N: nothing is said below it, common practice, no source; the rest ours
      force: { moveMost: 6, noiseMost: 8, driftMost: 15, driftPlain: 5, emptyMost: 40 },
      // the same on a lever of 10 cm
      torque: { moveMost: 0.6, noiseMost: 0.8, driftMost: 1.5, driftPlain: 0.5, emptyMost: 4 },
    },
    emptyCapacityShare: 0.02, // common practice, no source: zero balance of a strain gauge cell, 1 to 2 % of its capacity
    driftCapacityShare: 0.005, // ours
  },
  masses: {
    level,
    massesLeast: 3, // ours: two give a line and nothing to judge it by
    greatestLeastKg: 5, // ours; 10 to 20 kg is common practice, no source
    linearityMost: 0.01, // ours
    strayProbability: 0.01, // ours
    answerLeast: 10, // ours
    returnMostN: 5, // common practice, no source
    stillMostN: 3, // ours
    stillShare: 0.03, // ours
    massHalfKg: 0.1, // common practice, no source
    // surface gravity lies between 9.780 and 9.832 m/s2 (WGS 84, equator and pole): half the width over root 3
    gravityRelativeU: 0.0015,
    validDays: 180, // common practice, no source
  },
  restLoad: {
    level,
    leastN: 10, // ours
    mostN: 250, // ours
    moveMostN: 10, // ours
  },
  lights: {
    level,
    silentS: 1.5, // ours
    zeroOldS: 3600, // ours
    massOldDays: 90, // common practice, no source
    massLeastKg: 25, // common practice, no source
    massMostKg: 250, // common practice, no source
    massDifference: 0.03, // common practice, no source
    standsShare: 0.5, // ours
    tiltMostRad: 0.785, // ours: half of a right angle
    steadyLeast: 0.8, // ours
    swayMost: 0.2, // ours
    gravityLeast: 0.85, // ours, beyond any error of calibration
    gravityMost: 1.15, // ours
    wanderMostRad: 0.1, // ours
    turnMostRadps: 0.1, // ours
    stringMostM: 0.005, // ours
  },
  guess: {
    askBelow: 0.9, // common practice, no source
    offerFrom: 0.02, // ours
    lowQuantile: 0.02, // ours
    highQuantile: 0.98, // ours
  },
};
