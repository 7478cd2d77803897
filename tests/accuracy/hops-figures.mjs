import { mean, quantile, twoSided95 } from './statistics.mjs';

/** Errors of one measure beside the truth, and whether 95 % intervals held it. */
class Errors {
  errors = [];
  covered = [];

  add({ value, u }, truth, scale) {
    this.errors.push((value - truth) * scale);
    this.covered.push(Math.abs(value - truth) <= twoSided95 * u ? 1 : 0);
  }

  get p95() {
    return quantile(this.errors.map(Math.abs), 0.95);
  }
}

/** Collects hop series and gives their figures. */
export class HopFigures {
  series = 0;
  exact = 0;
  within = 0;
  contact = new Errors();
  flight = new Errors();
  stiffness = new Errors();
  meanContact = new Errors();
  wrongSeeds = [];

  /** One recording: what was found in it, and its true hops. */
  add({ seed, found, truth }) {
    this.series += 1;
    const { hops, low, high } = found.count;
    if (hops === truth.length) this.exact += 1;
    else this.wrongSeeds.push(`${seed}:${hops - truth.length}`);
    if (low <= truth.length && truth.length <= high) this.within += 1;
    const pairs = [];
    for (const hop of found.hops) {
      const one = truth.find(
        ({ takeOffS, landsAgainS }) => hop.middleS > takeOffS - 0.02 && hop.middleS < landsAgainS + 0.02,
      );
      if (one === undefined || !hop.analysed || one.contactS === null) continue;
      pairs.push(one);
      this.contact.add(hop.contactS, one.contactS, 1000);
      this.flight.add(hop.flightS, one.flightS, 1000);
      if (hop.stiffnessNpm !== null) this.stiffness.add(hop.stiffnessNpm, one.stiffnessNpm, 100 / one.stiffnessNpm);
    }
    const contact = found.measures.contactS.mean;
    if (contact !== null && pairs.length === found.count.analysed) {
      this.meanContact.add(contact, mean(pairs.map(({ contactS }) => contactS)), 1000);
    }
  }

  summary() {
    return {
      series: this.series,
      exact: this.exact / this.series,
      within: this.within / this.series,
      hops: this.contact.errors.length,
      contactBiasMs: mean(this.contact.errors),
      contactP95Ms: this.contact.p95,
      flightP95Ms: this.flight.p95,
      meanContactP95Ms: this.meanContact.p95,
      stiffnessP95Percent: this.stiffness.p95,
      contactCoverage: mean(this.contact.covered),
      flightCoverage: mean(this.flight.covered),
      stiffnessCoverage: mean(this.stiffness.covered),
    };
  }
}
