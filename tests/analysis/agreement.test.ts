import { expect, test } from 'vitest';
import { intraclassForms } from '../../packages/analysis/src/agreement/intraclass.ts';
import { meanSquares } from '../../packages/analysis/src/agreement/mean-squares.ts';
import { measurementError } from '../../packages/analysis/src/agreement/measurement-error.ts';
import { createRandom, gaussian } from '../../packages/analysis/src/signal/random.ts';
import { isLong } from '../support/runs.ts';

interface World {
  readonly subjects: number;
  readonly raters: number;
  /** standard deviation of subjects, of raters, and of the rest */
  readonly sd: readonly [number, number, number];
}

/** Share of samples whose 95 % interval holds the truth: standard error of measurement, ICC(2,1), ICC(3,1). */
function coverage({ subjects, raters, sd: [ofSubject, ofRater, ofRest] }: World, samples: number) {
  const random = createRandom(5);
  const held = { error: 0, absolute: 0, consistency: 0 };
  const absolute = ofSubject ** 2 / (ofSubject ** 2 + ofRater ** 2 + ofRest ** 2);
  const consistency = ofSubject ** 2 / (ofSubject ** 2 + ofRest ** 2);
  const holds = (bounds: { low: number; high: number } | undefined, truth: number): number =>
    bounds !== undefined && bounds.low <= truth && truth <= bounds.high ? 1 : 0;
  for (let i = 0; i < samples; i++) {
    const shifts = Array.from({ length: raters }, () => ofRater * gaussian(random));
    const table = Array.from({ length: subjects }, () => {
      const usual = 20 + ofSubject * gaussian(random);
      return shifts.map((shift) => usual + shift + ofRest * gaussian(random));
    });
    const squares = meanSquares(table);
    const forms = intraclassForms(squares, 0.95);
    held.error += holds(measurementError(squares, 0.95)?.sem, ofRest);
    held.absolute += holds(forms[1].estimate?.interval, absolute);
    held.consistency += holds(forms[2].estimate?.interval, consistency);
  }
  return { error: held.error / samples, absolute: held.absolute / samples, consistency: held.consistency / samples };
}

// a share of 0.95 in 1500 samples has a standard error of 0.006
const SAMPLES = isLong ? 10_000 : 1500;

test.each([
  // two visits of a clinic, three and more raters; they differ by up to a quarter of the variance of the rest
  { subjects: 15, raters: 2, sd: [5, 0, 2] },
  { subjects: 29, raters: 2, sd: [5, 0.5, 2] },
  { subjects: 20, raters: 3, sd: [5, 1, 2] },
  { subjects: 15, raters: 3, sd: [3, 1, 3] },
  { subjects: 50, raters: 5, sd: [5, 1, 2] },
  { subjects: 20, raters: 10, sd: [5, 2, 2] },
] satisfies World[])(
  'intervals hold the truth in 93 to 97 of 100 samples: $subjects by $raters, deviations $sd',
  (world) => {
    for (const [name, share] of Object.entries(coverage(world, SAMPLES))) {
      expect(share, name).toBeGreaterThan(0.93);
      expect(share, name).toBeLessThan(0.97);
    }
  },
);

test.each([
  [{ subjects: 50, raters: 2, sd: [5, 2, 2] }, 0.82],
  [{ subjects: 20, raters: 3, sd: [5, 3, 2] }, 0.87],
] satisfies [World, number][])(
  'few raters who differ much: the interval of ICC(2,1) holds less, the others what they say: %o',
  (world, about) => {
    const { absolute, error, consistency } = coverage(world, SAMPLES);
    expect(Math.abs(absolute - about)).toBeLessThan(0.03);
    for (const share of [error, consistency]) {
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.97);
    }
  },
);
