import { matchTops } from './matching.mjs';
import { mean, quantile, twoSided95 } from './statistics.mjs';
import { pooledP95 } from './top-limit.mjs';

/** Collects sets of one kind and level and gives their figures. */
export class Figures {
  sets = 0;
  exact = 0;
  withinOne = 0;
  hits = 0;
  found = 0;
  true = 0;
  topErrorS = [];
  startErrorS = [];
  heightErrorM = [];
  heightCovered = [];
  topCovered = [];
  countCovered = [];
  countWidth = [];
  signalToNoise = [];
  /** least standard deviation of the top, of some repetitions of each set [s] */
  topLimitS = [];
  wrongSeeds = [];

  /**
   * One set: `raises` have startS, topS, heightM and, if known, topUS, heightUM, topInGap; `count` has low and high. Times and
   * heights of a repetition whose top lies in a data gap are not judged, as the instrument itself refuses to.
   */
  add({ seed, raises, count, repetitions, heightOf }) {
    this.sets += 1;
    const difference = raises.length - repetitions.length;
    if (difference === 0) this.exact += 1;
    else this.wrongSeeds.push(`${seed}:${difference > 0 ? '+' : ''}${difference}`);
    if (Math.abs(difference) <= 1) this.withinOne += 1;
    this.found += raises.length;
    this.true += repetitions.length;
    for (const repetition of repetitions) {
      if (repetition.signalToNoise !== undefined) this.signalToNoise.push(repetition.signalToNoise);
    }
    if (count !== undefined) {
      this.countCovered.push(count.low <= repetitions.length && repetitions.length <= count.high ? 1 : 0);
      this.countWidth.push(count.high - count.low);
    }
    const pairs = matchTops(
      raises.map((raise) => raise.topS),
      repetitions.map((repetition) => repetition.topS),
    );
    this.hits += pairs.length;
    for (const pair of pairs) this.addPair(raises[pair.found], repetitions[pair.truth], heightOf);
  }

  addPair(raise, repetition, heightOf) {
    if (raise.topInGap === true) return;
    const topError = Math.abs(raise.topS - repetition.topS);
    const heightError = raise.heightM - heightOf(repetition);
    this.topErrorS.push(topError);
    this.startErrorS.push(Math.abs(raise.startS - repetition.startS));
    this.heightErrorM.push(heightError);
    if (raise.topUS !== undefined) this.topCovered.push(topError <= twoSided95 * raise.topUS ? 1 : 0);
    if (raise.heightUM !== undefined) {
      this.heightCovered.push(Math.abs(heightError) <= twoSided95 * raise.heightUM ? 1 : 0);
    }
  }

  summary() {
    const signalToNoise = this.signalToNoise;
    return {
      sets: this.sets,
      repetitions: this.true,
      exact: this.exact / this.sets,
      withinOne: this.withinOne / this.sets,
      f1: this.found + this.true === 0 ? 1 : (2 * this.hits) / (this.found + this.true),
      topP95Ms: scaled(quantile(this.topErrorS, 0.95), 1000),
      topLimitMs: this.topLimitS.length === 0 ? undefined : 1000 * pooledP95(this.topLimitS),
      startP95Ms: scaled(quantile(this.startErrorS, 0.95), 1000),
      heightRmseMm: scaled(Math.sqrt(mean(this.heightErrorM.map((error) => error * error)) ?? Number.NaN), 1000),
      heightBiasMm: scaled(mean(this.heightErrorM), 1000),
      heightCoverage: mean(this.heightCovered),
      topCoverage: mean(this.topCovered),
      countCoverage: mean(this.countCovered),
      countWidthMedian: quantile(this.countWidth, 0.5),
      countWidthMean: mean(this.countWidth),
      signalToNoiseMedian: quantile(signalToNoise, 0.5),
      signalToNoiseBelow4: mean(signalToNoise.map((value) => (value < 4 ? 1 : 0))),
    };
  }
}

function scaled(value, factor) {
  return value === undefined || Number.isNaN(value) ? undefined : value * factor;
}
