import { matchTops } from '../matching.mjs';
import { mean, quantile } from '../statistics.mjs';

/** Collects what the observer answered of sets of one kind and level, and gives its figures. */
export class ObserverFigures {
  exact = [];
  withinOne = [];
  covered = [];
  width = [];
  /** chance that the observer gives to its own count, and to its own range */
  claimedExact = [];
  claimedCovered = [];
  topErrorS = [];
  hits = 0;
  found = 0;
  true = 0;

  add({ count, safest, range, topsS, chances }, repetitions) {
    const truth = repetitions.length;
    const yes = (holds) => (holds ? 1 : 0);
    this.exact.push(yes(count === truth));
    this.withinOne.push(yes(Math.abs(safest - truth) <= 1));
    this.covered.push(yes(range.low <= truth && truth <= range.high));
    this.width.push(range.high - range.low);
    this.claimedExact.push(chances.count);
    this.claimedCovered.push(chances.range);
    const tops = repetitions.map(({ topS }) => topS);
    const pairs = matchTops(topsS, tops);
    for (const pair of pairs) this.topErrorS.push(Math.abs(topsS[pair.found] - tops[pair.truth]));
    this.hits += pairs.length;
    this.found += topsS.length;
    this.true += truth;
  }

  /** How many sets are counted here and not by another observer of the same sets, and the other way round. */
  against(other) {
    const only = (some, others) => some.exact.filter((right, i) => right > others.exact[i]).length;
    return { gained: only(this, other), lost: only(other, this) };
  }

  summary() {
    return {
      sets: this.exact.length,
      exact: mean(this.exact),
      withinOne: mean(this.withinOne),
      f1: (2 * this.hits) / (this.found + this.true),
      topP95Ms: 1000 * quantile(this.topErrorS, 0.95),
      countCoverage: mean(this.covered),
      claimedExact: mean(this.claimedExact),
      claimedCoverage: mean(this.claimedCovered),
      countWidthMean: mean(this.width),
    };
  }
}
