/**
 * Pairs found repetitions with true ones, one to one: the nearest pair of tops first, as long as they are less than half a
 * cycle apart.
 */
export function matchTops(foundTopsS, trueTopsS) {
  const half = halfCycleS(trueTopsS);
  const pairs = [];
  for (let found = 0; found < foundTopsS.length; found++) {
    for (let truth = 0; truth < trueTopsS.length; truth++) {
      const apartS = Math.abs(foundTopsS[found] - trueTopsS[truth]);
      if (apartS < half) pairs.push({ found, truth, apartS });
    }
  }
  pairs.sort((a, b) => a.apartS - b.apartS);
  const usedFound = new Set();
  const usedTruth = new Set();
  return pairs.filter(({ found, truth }) => {
    if (usedFound.has(found) || usedTruth.has(truth)) return false;
    usedFound.add(found);
    usedTruth.add(truth);
    return true;
  });
}

/** Half of the median interval between tops; one second when there are fewer than two. */
function halfCycleS(topsS) {
  if (topsS.length < 2) return 1;
  const intervals = topsS.slice(1).map((topS, index) => topS - topsS[index]);
  intervals.sort((a, b) => a - b);
  return intervals[Math.floor(intervals.length / 2)] / 2;
}
