import { mean, quantile, twoSided95 } from './statistics.mjs';

function rootMeanSquare(values) {
  const square = mean(values.map((value) => value * value));
  return square === undefined ? undefined : Math.sqrt(square);
}

/** Errors of one quantity: in its unit or in percent of the truth, and whether 95 % intervals held the truth. */
class Errors {
  errors = [];
  covered = [];

  add(value, u, truth, scale = 1) {
    this.errors.push((value - truth) * scale);
    if (u !== undefined) this.covered.push(Math.abs(value - truth) <= twoSided95 * u ? 1 : 0);
  }
}

function p95Ms({ errors }) {
  const p95S = quantile(errors.map(Math.abs), 0.95);
  return p95S === undefined ? undefined : 1000 * p95S;
}

function share(part, whole) {
  return whole.errors.length === 0 ? undefined : part.errors.length / whole.errors.length;
}

/** Onset and rate of the fast efforts of one form of rise. */
class FamilyErrors {
  onset = new Errors();
  rise = new Errors();

  summary() {
    return {
      efforts: this.onset.errors.length,
      onsetP95Ms: p95Ms(this.onset),
      onsetCoverage: mean(this.onset.covered),
      riseRmsPercent: rootMeanSquare(this.rise.errors),
      riseCoverage: mean(this.rise.covered),
    };
  }
}

/** Forms of rise whose force grows from the first moment; the others begin softly or with slack. */
const atOnceForms = ['exponential', 'power', 'second-order'];

/** Collects recordings of pulls and gives their figures. */
export class PullFigures {
  traces = 0;
  exact = 0;
  true = 0;
  /** efforts whose peak was judged, and those with a rate over 200 ms */
  judged = 0;
  /** of fast efforts, and of ramps */
  onset = new Errors();
  rampOnset = new Errors();
  /** of fast efforts whose start the instrument calls distinct */
  distinctOnset = new Errors();
  peak = new Errors();
  halfSecond = new Errors();
  rise = new Errors();
  /** of fast efforts, by the form of their rise */
  families = new Map();
  groups = { 'at once': new FamilyErrors(), softly: new FamilyErrors() };
  wrongSeeds = [];

  /**
   * One recording. `efforts` have onsetS, peakS, peakN, meanN and perhaps rate200 (or null), each `{value, u}` or with u left
   * out; `distinct` is whether an effort starts distinctly (yes, no,
   * cannot_tell or left out); `peakJudged` and `onsetJudged` say whether the instrument itself stands by them.
   */
  add({ seed, efforts, truth }) {
    this.traces += 1;
    this.true += truth.length;
    if (efforts.length === truth.length) this.exact += 1;
    else this.wrongSeeds.push(`${seed}:${efforts.length - truth.length}`);
    for (const one of truth) {
      const found = efforts.filter(({ peakS }) => peakS > one.onsetS && peakS < one.endS);
      if (found.length === 1) this.addPair(found[0], one);
    }
  }

  addPair(found, one) {
    const onset = one.kind === 'ramp' ? this.rampOnset : this.onset;
    const alike = [this.family(one), this.groups[atOnceForms.includes(one.rise.family) ? 'at once' : 'softly']];
    if (found.onsetJudged) {
      onset.add(found.onsetS.value, found.onsetS.u, one.onsetS);
      if (one.kind === 'fast' && found.distinct === 'yes') {
        this.distinctOnset.add(found.onsetS.value, found.onsetS.u, one.onsetS);
      }
      if (one.kind === 'fast') for (const some of alike) some.onset.add(found.onsetS.value, found.onsetS.u, one.onsetS);
    }
    if (found.peakJudged) {
      this.judged += 1;
      this.peak.add(found.peakN.value, found.peakN.u, one.peakN, 100 / one.peakN);
      if (found.meanN !== null) {
        this.halfSecond.add(found.meanN.value, found.meanN.u, one.bestHalfSecondN, 100 / one.bestHalfSecondN);
      }
    }
    if (found.rate200 !== null && one.kind === 'fast') {
      const rate = one.risenN[3] / 0.2;
      this.rise.add(found.rate200.value, found.rate200.u, rate, 100 / rate);
      for (const some of alike) some.rise.add(found.rate200.value, found.rate200.u, rate, 100 / rate);
    }
  }

  family({ rise: { family } }) {
    const known = this.families.get(family) ?? new FamilyErrors();
    this.families.set(family, known);
    return known;
  }

  /** intervals that held the truth, and all of them, by kind of figure */
  intervalCounts() {
    const kinds = {
      onset: this.onset,
      distinctOnset: this.distinctOnset,
      rampOnset: this.rampOnset,
      peak: this.peak,
      mean: this.halfSecond,
      rise: this.rise,
    };
    return Object.fromEntries(
      Object.entries(kinds).map(([kind, { covered }]) => [
        kind,
        { held: covered.reduce((sum, one) => sum + one, 0), of: covered.length },
      ]),
    );
  }

  summary() {
    return {
      traces: this.traces,
      efforts: this.true,
      exact: this.exact / this.traces,
      judged: this.true === 0 ? undefined : this.judged / this.true,
      rates: this.rise.errors.length,
      fast: this.onset.errors.length,
      // of the fast efforts whose onset was judged
      distinctShare: share(this.distinctOnset, this.onset),
      rateShare: share(this.rise, this.onset),
      distinctP95Ms: p95Ms(this.distinctOnset),
      distinctCoverage: mean(this.distinctOnset.covered),
      onsetP95Ms: p95Ms(this.onset),
      rampOnsetP95Ms: p95Ms(this.rampOnset),
      onsetBiasMs: this.onset.errors.length === 0 ? undefined : 1000 * mean(this.onset.errors),
      peakRmsPercent: rootMeanSquare(this.peak.errors),
      peakBiasPercent: mean(this.peak.errors),
      meanRmsPercent: rootMeanSquare(this.halfSecond.errors),
      riseRmsPercent: rootMeanSquare(this.rise.errors),
      riseBiasPercent: mean(this.rise.errors),
      onsetCoverage: mean(this.onset.covered),
      rampOnsetCoverage: mean(this.rampOnset.covered),
      peakCoverage: mean(this.peak.covered),
      meanCoverage: mean(this.halfSecond.covered),
      riseCoverage: mean(this.rise.covered),
      counts: this.intervalCounts(),
      families: Object.fromEntries([...this.families].map(([name, errors]) => [name, errors.summary()])),
      groups: Object.fromEntries(Object.entries(this.groups).map(([name, errors]) => [name, errors.summary()])),
    };
  }
}
