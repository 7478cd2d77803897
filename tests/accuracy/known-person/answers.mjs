// What an observer answers when it holds many series drawn from all that are possible: for each figure the best answer to it.
import { matchTops } from '../matching.mjs';

/** Series that are tried as the answer, those that they are tried against, and those that place each top. */
const tried = 40;
const against = 200;
const answers = 1000;

/** Share of the draws with each count, from the least count to the greatest. */
export function countShares(series) {
  const counts = series.map(({ length }) => length);
  const least = Math.min(...counts);
  const shares = new Array(Math.max(...counts) - least + 1).fill(0);
  for (const count of counts) shares[count - least] += 1 / counts.length;
  return { least, shares };
}

/** Share of the draws whose count lies from `low` to `high`. */
export function chanceOf({ least, shares }, low, high) {
  return shares.slice(Math.max(0, low - least), high - least + 1).reduce((sum, share) => sum + share, 0);
}

/** The single likeliest count. */
export function likeliestCount({ least, shares }) {
  return least + shares.indexOf(Math.max(...shares));
}

/** The count that is within one of the truth most often. */
export function safestCount({ least, shares }) {
  const about = shares.map((share, i) => (shares[i - 1] ?? 0) + share + (shares[i + 1] ?? 0));
  return least + about.indexOf(Math.max(...about));
}

/** The narrowest range that holds at least this share of the draws; of two alike the one that holds more. */
export function narrowestRange({ least, shares }, share) {
  for (let width = 0; ; width++) {
    let best = { held: 0, from: 0 };
    for (let from = 0; from + width < shares.length; from++) {
      const held = shares.slice(from, from + width + 1).reduce((sum, one) => sum + one, 0);
      if (held > best.held) best = { held, from };
    }
    if (best.held >= share - 1e-12) return { low: least + best.from, high: least + best.from + width };
  }
}

function agreement(tops, others) {
  return others.reduce((sum, other) => sum + (2 * matchTops(tops, other).length) / (tops.length + other.length), 0);
}

/** The middle of the window of a width where most of the times lie. */
export function fullestPlace(times, width) {
  const sorted = Float64Array.from(times).sort();
  let best = { held: 0, middle: 0 };
  for (let from = 0, to = 0; to < sorted.length; to++) {
    while (sorted[to] - sorted[from] > width) from++;
    if (to - from + 1 > best.held) best = { held: to - from + 1, middle: (sorted[from] + sorted[to]) / 2 };
  }
  return best.middle;
}

/**
 * Tops that agree best with all that could be true, by F1: the best of several drawn series. Each top is moved to where those
 * that answer to it in the others are most often less than `withinS` away.
 */
export function agreedTops(series, withinS) {
  const others = series.slice(-against);
  let best = { tops: [], agrees: -1 };
  for (const tops of series.slice(0, tried)) {
    const agrees = agreement(tops, others);
    if (agrees > best.agrees) best = { tops, agrees };
  }
  const answering = best.tops.map((top) => [top]);
  for (const other of series.slice(-answers)) {
    for (const { found, truth } of matchTops(best.tops, other)) answering[found].push(other[truth]);
  }
  return answering.map((times) => fullestPlace(times, 2 * withinS));
}
