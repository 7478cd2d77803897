import type { BlockCounterSettings } from '../../raises/block-settings.ts';

/** Settings of the provisional count while samples arrive. */
export const blockCounterDefaults: BlockCounterSettings = {
  /** rate of the cells [Hz]; ours: 50 cells in the shortest repetition */
  cellRateHz: 100,
  movement: {
    /** least rise of the heel [m]; common practice, no source */
    leastRiseM: 0.02,
    /** least rise of the body [m]; ours: about half of that of the heel */
    leastBodyRiseM: 0.012,
    /** least rise as a share of the typical one [-]; ours */
    leastShare: 0.3,
    /** the same for the body, whose band-passed rise swings on after a repetition [-]; ours */
    leastBodyShare: 0.6,
    /** typical rise before any was seen [m]; ours: low, so that small raises are not missed */
    firstTypicalM: 0.06,
    /** the same for the body [m]; ours */
    firstTypicalBodyM: 0.03,
    /** repetitions that the typical rise is taken from [-]; ours */
    typicalCount: 5,
    /** leaving the bottom and back at it [-]; common practice, no source */
    leaveShare: 0.15,
    /** fall that ends a repetition without a full return [-]; common practice, no source */
    returnShare: 0.5,
    /** height at which start and end are taken [-]; ours */
    startShare: 0.05,
    /** share of the rise above which the top lies in the middle [-]; ours */
    topShare: 0.9,
    /** rising speed that leaves the bottom [m/s]; common practice, no source */
    risingSpeedMps: 0.02,
    /** speed below which the foot stands still [m/s]; ours: above the sway of a standing person */
    stillSpeedMps: 0.015,
    /** time that it must be slower [s]; common practice, no source */
    stillS: 1,
    /** shortest time off the bottom [s]; ours: a cycle of 0.5 s, common practice, less what lies below the shares */
    leastMoveS: 0.3,
    /** refractory time [s]; common practice, no source */
    refractoryS: 0.25,
    /** rise of the floor per repetition [m]; common practice, no source */
    floorDriftM: 0.002,
  },
  heel: {
    /** causal second-order low-pass [Hz]; Winter (2009): movement of the body */
    cutoffHz: 6,
  },
  foot: {
    /** standard gravity [m/s2]; BIPM (2019), The International System of Units */
    gravityMps2: 9.80665,
    /** heel lever [m]; ours: 0.71 of a foot of 26 cm */
    nominalLeverM: 0.185,
    /** low-pass of the accelerometer's tilt [Hz]; ours */
    tiltCutoffHz: 3,
    /** time constant of the correction by gravity [s]; ours */
    correctionS: 1.5,
    /** distance of |a| from gravity at which the correction fades [m/s2]; ours */
    correctionToleranceMps2: 0.6,
    /** scatter of the specific force while standing still [m/s2]; ours */
    stillToleranceMps2: 0.3,
    /** scatter of the turning while standing still [rad/s]; ours: well above the noise of a common gyroscope */
    stillTurningRadps: 0.08,
    /** time that it must last [s]; ours */
    stillS: 0.6,
    /** wait for a level for the time being [s]; ours */
    waitS: 0.4,
    /** time constant of the level [s]; ours */
    levelS: 1,
    /** greatest pitch of a raise [rad]; ours: 65 degrees, real feet reach 53 */
    mostPitchRad: 1.134,
    /** greatest pitch the other way [rad]; ours: the forefoot stays on the ground, 8 degrees for sensor and floor */
    mostToesUpRad: 0.14,
  },
  body: {
    /** standard gravity [m/s2]; BIPM (2019), The International System of Units */
    gravityMps2: 9.80665,
    /** drift that is let go [s]; ours */
    spreadS: 0.7,
    /** accelerations before and after an instant, also the delay of the count [s]; ours */
    reachS: 2,
    /** low-pass of the acceleration [Hz]; ours */
    cutoffHz: 4,
    /** force of a person who stands on the platform [N]; ours */
    loadedN: 200,
    /** steadiness of the force while standing [-]; ours */
    steadyShare: 0.05,
    /** time that it must last [s]; ours */
    steadyS: 0.8,
    /** share of body weight below which the person is stepping off [-]; ours: a quick raise nearly leaves the ground */
    unloadedShare: 0.15,
    /** greatest acceleration of a raise [m/s2]; ours: a quick rise of 8 cm in 0.2 s stays below it */
    mostAccelerationMps2: 12,
  },
};
