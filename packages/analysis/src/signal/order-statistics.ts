import { requireCount, requireFinite, requireRange } from '../check.ts';

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i];
  values[i] = values[j];
  values[j] = kept;
}

/**
 * Reorders `values` between `left` and `right` so that the element at `rank` is the one that sorting would put there,
 * none before it is greater and none after it is smaller (Floyd & Rivest 1975, Algorithm 489: a small sample gives
 * a pivot close to the wanted rank, so that most of a long array is looked at once).
 */
function select(values: Float64Array, rank: number, left = 0, right = values.length - 1): number {
  while (right > left) {
    if (right - left > 600) {
      const n = right - left + 1;
      const place = rank - left + 1;
      const log = Math.log(n);
      const size = 0.5 * Math.exp((2 * log) / 3);
      const spread = 0.5 * Math.sqrt((log * size * (n - size)) / n) * (place < n / 2 ? -1 : 1);
      const from = Math.max(left, Math.floor(rank - (place * size) / n + spread));
      const to = Math.min(right, Math.floor(rank + ((n - place) * size) / n + spread));
      select(values, rank, from, to);
    }
    const pivot = values[rank];
    let i = left;
    let j = right;
    swap(values, left, rank);
    if (values[right] > pivot) swap(values, left, right);
    while (i < j) {
      swap(values, i, j);
      i++;
      j--;
      while (values[i] < pivot) i++;
      while (values[j] > pivot) j--;
    }
    if (values[left] === pivot) swap(values, left, j);
    else {
      j++;
      swap(values, j, right);
    }
    if (j <= rank) left = j + 1;
    if (rank <= j) right = j - 1;
  }
  return values[rank];
}

/**
 * Quantile by linear interpolation between the two nearest order statistics.
 *
 * @param samples - values in any order, n >= 1, finite; left as they are [unit of samples]
 * @param probability - share of values below, 0 to 1 [-]
 * @returns the value at rank (n - 1) p, interpolated [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity; `out-of-range` for the probability
 *
 * Source: Hyndman & Fan (1996), Sample quantiles in statistical packages, Am Stat 50:361-365, definition 7
 */
export function quantile(samples: ArrayLike<number>, probability: number): number {
  requireCount(samples, 1, 'samples');
  requireFinite(samples, 'samples');
  requireRange(probability, probability >= 0 && probability <= 1, 'probability', '0 <= p <= 1');
  return quantileInPlace(new Float64Array(samples), probability);
}

/**
 * The same quantile of values that may be reordered: no copy, no check; for values that the caller has just made.
 *
 * @param values - n >= 1, finite; reordered [unit of values]
 * @param probability - share of values below, 0 to 1 [-]
 * @returns the value at rank (n - 1) p, interpolated [unit of values]
 *
 * Source: as {@link quantile}
 */
export function quantileInPlace(values: Float64Array, probability: number): number {
  const rank = (values.length - 1) * probability;
  const below = Math.floor(rank);
  const lower = select(values, below);
  if (rank === below) return lower;
  // after selection everything above the rank is at least as great: the next order statistic is the least of it
  let upper = values[below + 1];
  for (let i = below + 2; i < values.length; i++) if (values[i] < upper) upper = values[i]!;
  return lower + (rank - below) * (upper - lower);
}

/**
 * Median; the mean of the two middle values when n is even.
 *
 * @param samples - values in any order, n >= 1, finite; left as they are [unit of samples]
 * @returns the median [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity
 *
 * Source: definition
 */
export function median(samples: ArrayLike<number>): number {
  return quantile(samples, 0.5);
}

/** makes the median absolute deviation of a normal distribution equal its standard deviation: 1 / (0.75 quantile) */
const NORMAL_SCALE = 1.482602218505602;

/**
 * Median absolute deviation from the median, scaled to equal the standard deviation where the values are normal.
 *
 * @param samples - values in any order, n >= 1, finite; left as they are [unit of samples]
 * @returns 1.4826 times the median of |x - median(x)| [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity
 *
 * Source: Hampel (1974), The influence curve and its role in robust estimation, J Am Stat Assoc 69:383-393
 */
export function medianAbsoluteDeviation(samples: ArrayLike<number>): number {
  const centre = median(samples);
  const deviations = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) deviations[i] = Math.abs(samples[i] - centre);
  return NORMAL_SCALE * median(deviations);
}
