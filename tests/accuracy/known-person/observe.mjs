// One simulated set through the observer.
import { agreedTops, chanceOf, countShares, likeliestCount, narrowestRange, safestCount } from './answers.mjs';
import { chanceOfCount, habitsOf } from './habits.mjs';
import { seriesOf } from './series.mjs';
import { heardSet } from './signal.mjs';
import { uniformNumbers } from './uniform-numbers.mjs';
import { chainOf } from './weights.mjs';

/** Steps of time [s] and of pace [-]. */
export const usualGrid = { stepS: 0.025, paceStep: 0.02 };

/** Tops are placed so that as many as can be are this near: the goal at trunk and platform [s]. */
const aimS = 0.055;

/** Series that are drawn of each set. */
const draws = 2000;

/** Counts that are expected less are kept less often, so that what is left follows the chances known beforehand. */
function keptByCount(series, uniform) {
  const most = Math.max(...series.map(({ length }) => chanceOfCount(length)));
  return series.filter(({ length }) => uniform() * most < chanceOfCount(length));
}

/** What the observer answers: best single count, count within one, range of 95 %, tops [s]. */
export function observe({ placement, set, quiet, seed, wayGone, grid = usualGrid }) {
  const habits = habitsOf(set, { ...quiet, paceStep: grid.paceStep });
  const chain = chainOf(placement, set, heardSet(placement, set, grid.stepS), habits, wayGone);
  const uniform = uniformNumbers(seed);
  const topS = habits.paces.map(({ upS, holdS }) => upS + holdS / 2);
  const drawn = keptByCount(seriesOf(chain, uniform, draws).series, uniform);
  const series = drawn.map((one) => one.map(({ start, pace }) => start * grid.stepS + topS[pace]));
  const counts = countShares(series);
  const count = likeliestCount(counts);
  const range = narrowestRange(counts, 0.95);
  const chances = { count: chanceOf(counts, count, count), range: chanceOf(counts, range.low, range.high) };
  return { count, safest: safestCount(counts), range, chances, topsS: agreedTops(series, aimS) };
}
