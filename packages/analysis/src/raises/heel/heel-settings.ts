import type { PitchSettings } from '../../movement/pitch.ts';
import type { FloorRule } from './floor-line.ts';
import type { PartsRule } from './parts-prior.ts';
import type { CompanyRule } from './set-isolation.ts';
import type { ShapeRule } from './shape-prior.ts';
import type { NoiseRule } from './sway-noise.ts';

/** Everything that the detection of heel raises from a heel or foot sensor takes as given. */
export interface HeelSettings {
  /** rate of the working grid [Hz] */
  readonly workingRateHz: number;
  /** low-pass of the height that is measured and shown [Hz] */
  readonly movementCutoffHz: number;
  /** low-pass of the height in which bumps are looked for [Hz] */
  readonly bumpCutoffHz: number;
  /** a stretch without samples of this length is a gap in which nothing can be judged [s] */
  readonly longGapS: number;
  /** lower movements are no repetitions [m] */
  readonly leastHeightM: number;
  /** quicker cycles are no repetitions [s] */
  readonly leastCycleS: number;
  /** share of its height that the heel must fall before the next rise is a repetition of its own [-] */
  readonly leastFall: number;
  /** rise over its own lows, in shares of the usual height of the set, below which a bump is a bounce [-] */
  readonly leastOwnRise: number;
  /** length at rest of the shortest string that is likely at a heel [m] */
  readonly shortestStringM: number;
  /** heel lever used for counting when none was measured [m] */
  readonly nominalHeelLeverM: number;
  /** longest heel lever of a person [m] */
  readonly longestHeelLeverM: number;
  /** steepest foot that still stands on its forefoot [rad] */
  readonly steepestRad: number;
  /** window in which the height must hardly move for stillness [s], and by how much it may [m] */
  readonly stillWindowS: number;
  readonly stillRangeM: number;
  /** longer pauses part one bout from the next [s] */
  readonly boutGapS: number;
  /** how the bumps of a recording are told from those of the set */
  readonly company: CompanyRule;
  /** below the floor by this much, the forefoot cannot be down [m] */
  readonly belowFloorM: number;
  /** unexplained vertical acceleration of a foot whose forefoot stays where it is [m/s2] */
  readonly travelAcceleration: number;
  /** standard uncertainties of the model: heel lever [m], tilt [rad], share of the height by which the pivot migrates [-] */
  readonly heelLeverUM: number;
  readonly tiltURad: number;
  readonly tiltAccelerometerOnlyURad: number;
  readonly pivotMigrationU: number;
  /** single-sample spikes: least distance from the neighbours [m], [m/s2], [rad/s] */
  readonly spikeM: number;
  readonly spikeAcceleration: number;
  readonly spikeRate: number;
  /** sway and noise of the level */
  readonly noise: NoiseRule;
  readonly pitch: PitchSettings;
  /** how the level at rest is followed */
  readonly floor: FloorRule;
  /** how long the parts of a repetition last, and how the ways of people differ */
  readonly parts: PartsRule;
  readonly shape: ShapeRule;
}
