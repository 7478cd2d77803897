import type { SignalLimits } from '../settings.ts';

/** When a signal cannot be that of a person on the placement that was given. */
export const signalDefaults: SignalLimits = {
  // least and greatest way of the heel over a recording, without single stray samples [m]: ours, no foot is longer
  heelMoveLeastM: 0.001,
  heelMoveMostM: 0.4,
  // least and greatest force of a person who stands [N]: ours, 15 to 300 kg
  standingForceLeastN: 150,
  standingForceMostN: 3000,
  // median of what an accelerometer shows, in shares of gravity [-]: ours, beyond any error of calibration
  gravityShareLeast: 0.85,
  gravityShareMost: 1.15,
  // greatest rate at which a foot or trunk turns, without single stray samples [rad/s]: ours, 2000 degrees a second
  turnMostRadps: 35,
  // share of the samples at a limit of the sensor above which the set is doubtful [-]: ours
  railShareMost: 0.001,
  // span over which movement averages out [s], angle [rad] within which gravity keeps to its usual direction, and the
  // least share of the recording that it does so [-]: ours
  steadyWindowS: 2,
  steadyRad: 0.785,
  steadyShareLeast: 0.5,
  // spread of force or acceleration, in shares of the median, below which nothing moved [-]: ours
  flatShare: 0.001,
  // share of its way that a heel goes above its level at both ends of the recording; less is a turned sign [-]: ours
  riseShareLeast: 0.25,
  // way of the heel from which its direction can be told [m]: ours
  directionFromM: 0.02,
  // stretch at either end of the recording that shows the level at rest [s]: ours
  restS: 1,
  // rate below which the times shown are coarse [Hz]: ours
  rateLeastHz: 20,
  // long sampling intervals (95th percentile) in multiples of short ones (5th) that are uneven [-]: ours
  intervalRatioMost: 2,
};
