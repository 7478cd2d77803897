import type { HeelSettings } from '../../raises/heel/heel-settings.ts';

const degree = Math.PI / 180;

/** What the detection from a heel or foot sensor takes as given unless the caller says otherwise. */
export const heelDefaults: HeelSettings = {
  workingRateHz: 100, // several samples on the steepest part of a half-second cycle; ours
  movementCutoffHz: 6, // common practice for human movement (Winter 2009)
  bumpCutoffHz: 4, // passes half-second cycles, leaves out tremor; ours
  longGapS: 0.25, // common practice, no source
  leastHeightM: 0.02, // common practice, no source
  leastCycleS: 0.5, // common practice, no source
  leastFall: 0.5, // half of the last top; common practice, no source
  leastOwnRise: 0.3, // ours
  shortestStringM: 0.1, // a base right below the heel; ours
  nominalHeelLeverM: 0.18, // 0.71 of a foot of 25.5 cm; ours
  longestHeelLeverM: 0.23, // 0.71 of a foot of 32 cm; ours
  steepestRad: 66 * degree, // ours
  stillWindowS: 0.5, // ours
  stillRangeM: 0.006, // sway of the heel is 2 to 3 mm; ours
  boutGapS: 30, // ours
  company: {
    heightSpread: 0.3, // ours
    waySpread: 0.25, // ours
    otherArea: 6, // ours
    inside: 3, // ours
    pause: 2.5, // a set pauses once in twenty repetitions; ours
    alone: 0.5, // recordings of a single repetition are rare; ours
    blocked: 4, // ours
    fewest: 3, // ours
    mutual: 2, // ours
    few: 0.8, // ours
  },
  belowFloorM: 0.014, // 4.5 degrees toes-up on an 18 cm lever, six times the sway; ours
  travelAcceleration: 0.8, // ours
  heelLeverUM: 0.005, // tape on a foot; common practice, no source
  tiltURad: 0.35 * degree, // between bottom and top, by the gyroscope; ours
  tiltAccelerometerOnlyURad: 0.7 * degree, // offsets of the axes and what the lever leaves over; ours
  pivotMigrationU: 0.05, // common practice, no source
  spikeM: 0.012, // ours
  spikeAcceleration: 4, // ours
  spikeRate: 1.5, // ours
  noise: {
    usualSwayM: 0.002, // from memory: sway of a standing heel is 1 to 3 mm
    usualSwayTimeS: 0.5, // ours
    leastSwayM: 0.0004, // ours
    leastWhiteM: 0.0001, // ours
    leastWhiteFootM: 0.0003, // ours
  },
  pitch: {
    movementCutoffHz: 8, // ours
    tempoCutoffHz: 3, // ours
    sensorPlace: {
      behindM: 0.1, // instep; ours
      behindSdM: 0.06, // laces to heel; ours
      aboveM: 0.05, // instep or heel counter above the sole line; ours
      accelerationSd: 0.1, // ours
    },
    tiltSdRad: 2 * degree, // ours
    tiltSdPerExcess: 3 * degree, // ours
    driftSdRad: 0.1 * degree, // ours
    shakeWindowS: 0.4, // ours
    shakeAcceleration: 3, // quick raises stay near it, strides reach ten times as much; ours
    leverRounds: 5, // ours
    leastAgreement: 0.5, // ours
    slip: { sideS: 2.5, leastRad: 1.8 * degree, greatestRad: 9 * degree }, // ours
    rest: { windowS: 0.5, toleranceRad: 2 * degree, enoughS: 1.5 },
  },
  floor: {
    pieceS: 0.5, // ours
    mostPieces: 3, // ours
    leastWeight: 0.3, // ours
    reachS: 20, // ours
    usualSlopeMps: 0.003 / 60, // 3 mm a minute; ours
    slopeScatterM: 0.002, // ours
    sideCount: 12, // ours
    nearQuantile: 0.35, // ours
    aboveScatters: 2, // ours
    belowScatters: 3, // ours
    heldFrom: 0.3, // ours
    steps: {
      sideMost: 12, // ours
      sideLeast: 2, // ours
      raisedShare: 0.25, // ours
      raisedMostM: 0.04, // ours
      strayShare: 0.02, // ours
      strayReachM: 0.1, // ours
      scattersM: [0.0015, 0.003, 0.006], // ours
      leastGain: 9, // few sensors slip, and at many instants they might; ours
      leastStepM: 0.003, // ours
      stepsMost: 3, // ours
      topsNear: 3, // ours
      tops: {
        spreadsM: [0.003, 0.005, 0.008, 0.012], // ours
        strayShare: 0.1, // ours
        strayReachM: 0.1, // ours
        leastTops: 5, // ours
      },
    },
  },
  parts: {
    commonSpread: 0.2, // ours
    ownSpread: 0.03, // ours
    leastOwnS: 0.01, // ours
  },
  shape: {
    usualSd: [0.4, 0.4, 3, 0.7], // a factor of 1.5 in either exponent; ours
    mirroredSd: [0.06, 0.06, 0.7, 0.5], // ours
  },
};
