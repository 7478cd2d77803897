// The sets that the observer is given: those of the table, without what it has no model of.
import { levels, setRequest } from '../kinds.mjs';

/** Left out: what else happens to the body, to the load or to the sensor. Wobble and the sensor's own noise stay. */
const leftOut = [
  'kneeAssistShare',
  'heelImpactShare',
  'handPushShare',
  'handSupport',
  'leanRad',
  'stepOnChance',
  'stepOffChance',
  'stampJitter',
  'lossShare',
  'gapCount',
  'spikesPerMinute',
  'forceDriftN',
];

/** Levels of which the observer can have a model. */
export const observedLevels = ['typical', 'hard'];

/** One simulated set, and the ranges of the quiet stances about it [s]. */
export function quietSet(simulation, kind, level, seed) {
  const faults = Object.fromEntries(leftOut.map((name) => [name, 0]));
  const set = simulation.simulateSet({ ...setRequest(kind, level, seed), faults });
  const rangeOf = (name) => simulation.faultTable[name].amounts[levels.indexOf(level)];
  return { set, quiet: { quietBeforeS: rangeOf('quietBeforeS'), quietAfterS: rangeOf('quietAfterS') } };
}
