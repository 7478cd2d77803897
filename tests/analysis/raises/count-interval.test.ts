import type { FaultKind } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  type CountRules,
  countInterval,
  type UncertainRepetition,
} from '../../../packages/analysis/src/raises/count-interval.ts';
import { faultEnd } from '../../../packages/analysis/src/raises/end-rule.ts';
import { normalCdf } from '../../../packages/analysis/src/signal/normal.ts';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';

const noRule = { heightShare: 0.75, referenceU: 0, faultsInARow: undefined, cap: undefined };

function byHeight(share: number, u: number, exists = 1): UncertainRepetition {
  return { exists, height: { share, u }, others: [], judged: true };
}

/** Exact distribution of a sum of independent yes-or-no draws, one convolution at a time. */
function poissonBinomial(probabilities: readonly number[]): number[] {
  let distribution = [1];
  for (const p of probabilities) {
    const next = new Array<number>(distribution.length + 1).fill(0);
    distribution.forEach((share, count) => {
      next[count] += share * (1 - p);
      next[count + 1] += share * p;
    });
    distribution = next;
  }
  return distribution;
}

function quantileOf(distribution: readonly number[], share: number): { count: number; margin: number } {
  let sum = 0;
  let margin = 1;
  for (let count = 0; count < distribution.length; count++) {
    sum += distribution[count];
    margin = Math.min(margin, Math.abs(sum - share));
    if (sum >= share) return { count, margin };
  }
  return { count: distribution.length - 1, margin };
}

test('without an end rule the bounds are the quantiles of the exact Poisson binomial distribution', () => {
  const random = createRandom(11);
  let compared = 0;
  for (let round = 0; round < 30; round++) {
    const set = Array.from({ length: 5 + Math.floor(30 * random()) }, () => byHeight(0.6 + 0.3 * random(), 0.05));
    const exact = poissonBinomial(set.map((one) => normalCdf(((one.height?.share ?? 0) - 0.75) / 0.05)));
    const low = quantileOf(exact, 0.025);
    const high = quantileOf(exact, 0.975);
    const found = countInterval(set, noRule, 20_000, round);
    expect(found.scoredLow).toBe(found.validLow);
    // 20000 draws know a tail of 2.5 % to about 0.1 %: where the exact tail is nearer than 0.5 % either count is right
    if (low.margin > 0.005) expect(found.scoredLow).toBe(low.count);
    if (high.margin > 0.005) expect(found.scoredHigh).toBe(high.count);
    compared += Number(low.margin > 0.005) + Number(high.margin > 0.005);
  }
  expect(compared).toBeGreaterThan(30);
});

test('other criteria and the chance of not being a repetition enter as independent draws', () => {
  const set = Array.from({ length: 20 }, () => ({
    exists: 0.8,
    height: undefined,
    others: [{ probability: 0.9, kind: undefined }],
    judged: true,
  }));
  const exact = poissonBinomial(Array.from({ length: 20 }, () => 0.72));
  const found = countInterval(set, noRule, 20_000, 3);
  expect(found.validLow).toBe(quantileOf(exact, 0.025).count);
  expect(found.validHigh).toBe(quantileOf(exact, 0.975).count);
});

test('certain repetitions leave no room', () => {
  const set = [byHeight(1, 0), byHeight(0.75, 0), byHeight(0.74, 0)];
  expect(countInterval(set, noRule, 100, 1)).toEqual({ validLow: 2, validHigh: 2, scoredLow: 2, scoredHigh: 2 });
});

test('the end rule is applied in every draw: repetitions after it are valid but do not score', () => {
  const set = [1, 1, 0.5, 0.5, 1, 1, 1].map((share) => byHeight(share, 0));
  const found = countInterval(set, { ...noRule, faultsInARow: 2 }, 100, 1);
  expect(found).toEqual({ validLow: 5, validHigh: 5, scoredLow: 2, scoredHigh: 2 });
});

test('an end that may or may not come widens the score downwards', () => {
  // two borderline repetitions in the middle: a quarter of the draws end there
  const set = [1, 1, 1, 0.75, 0.75, 1, 1, 1].map((share) => byHeight(share, 0.02));
  const found = countInterval(set, { ...noRule, faultsInARow: 2 }, 5000, 5);
  expect(found.scoredLow).toBe(3);
  expect(found.scoredHigh).toBe(8);
  expect(found.validLow).toBe(6);
});

test('an error of the reference is common to a draw and does not average out', () => {
  const set = Array.from({ length: 40 }, () => byHeight(0.75, 0));
  const found = countInterval(set, { ...noRule, referenceU: 0.03 }, 2000, 7);
  expect(found).toMatchObject({ validLow: 0, validHigh: 40 });
});

test('a repetition hidden by a gap may be either, and a cap cuts the score', () => {
  const hidden = { exists: 1, height: undefined, others: [], judged: false };
  expect(countInterval([hidden], noRule, 500, 1)).toMatchObject({ validLow: 0, validHigh: 1 });
  const found = countInterval([byHeight(1, 0), byHeight(1, 0), byHeight(1, 0)], { ...noRule, cap: 2 }, 100, 1);
  expect(found).toMatchObject({ validLow: 3, scoredLow: 2, scoredHigh: 2 });
});

/** Whether something is so rare, or its opposite, that it is told and not drawn. */
const isOpen = (probability: number): boolean => probability > 1e-9 && probability < 1 - 1e-9;

/** The same draws written plainly: every height worked out, and the end found by the rule itself. */
function plainInterval(set: readonly UncertainRepetition[], rules: CountRules, draws: number, seed: number) {
  const random = createRandom(seed);
  // what is hardly ever missing: how many draws pass before it is, by the inverse of the geometric distribution
  const passed = (exists: number): number => Math.floor(Math.log(1 - random()) / Math.log(exists));
  const isSeldom = ({ exists }: UncertainRepetition): boolean => isOpen(exists) && exists > 0.9;
  const nextMissing = new Map(set.filter(isSeldom).map((one) => [one, passed(one.exists)]));
  const counts = Array.from({ length: draws }, (_, draw) => {
    const reference = 1 + (rules.referenceU > 0 ? rules.referenceU * gaussian(random) : 0);
    const present = set.flatMap((one) => {
      if (isSeldom(one)) {
        if (nextMissing.get(one) === draw) {
          nextMissing.set(one, draw + 1 + passed(one.exists));
          return [];
        }
      } else if (isOpen(one.exists) && random() >= one.exists) return [];
      if (!one.judged) return [{ faults: new Set<FaultKind>(), judged: false, valid: random() < 0.5 }];
      const faults = new Set<FaultKind>();
      let valid = true;
      if (one.height !== undefined && rules.heightShare !== undefined) {
        const { share: mean, u } = one.height;
        const isFar = Math.abs(mean - rules.heightShare) > 6 * Math.hypot(u, rules.heightShare * rules.referenceU);
        const share = mean + (u > 0 && !isFar ? u * gaussian(random) : 0);
        if (share < rules.heightShare * reference * (1 - 1e-12)) {
          valid = false;
          faults.add('height');
        }
      }
      for (const { probability, kind } of one.others) {
        if (isOpen(probability) ? random() < probability : probability > 0.5) continue;
        valid = false;
        if (kind !== undefined) faults.add(kind);
      }
      return [{ faults, judged: true, valid }];
    });
    const end = rules.faultsInARow === undefined ? undefined : faultEnd(present, rules.faultsInARow);
    const last = Math.min(end === undefined ? present.length : end.index + 1, rules.cap ?? present.length);
    const valid = present.map((one) => Number(one.valid));
    const sum = (values: number[]): number => values.reduce((all, value) => all + value, 0);
    return { valid: sum(valid), scored: sum(valid.slice(0, last)) };
  });
  const bound = (of: (one: { valid: number; scored: number }) => number, share: number): number =>
    counts.map(of).sort((a, b) => a - b)[Math.ceil(share * draws - 1e-9) - 1];
  return {
    validLow: bound(({ valid }) => valid, 0.025),
    validHigh: bound(({ valid }) => valid, 0.975),
    scoredLow: bound(({ scored }) => scored, 0.025),
    scoredHigh: bound(({ scored }) => scored, 0.975),
  };
}

test('the draws are those of heights that are all worked out and of the end rule itself', () => {
  const random = createRandom(5);
  const kinds = ['height', 'tempo', 'posture', 'support', undefined] as const;
  let widths = 0;
  for (let round = 0; round < 60; round++) {
    const set = Array.from(
      { length: 3 + Math.floor(20 * random()) },
      (): UncertainRepetition => ({
        exists: random() < 0.7 ? 1 : random() < 0.5 ? random() : 0.9 + 0.1 * random(),
        height: random() < 0.2 ? undefined : { share: 0.6 + 0.3 * random(), u: random() < 0.2 ? 0 : 0.06 * random() },
        others: Array.from({ length: Math.floor(4 * random()) }, () => ({
          probability: random() < 0.5 ? 1 : random() < 0.1 ? 0 : random(),
          kind: kinds[Math.floor(5 * random())],
        })),
        judged: random() < 0.9,
      }),
    );
    const rules = {
      heightShare: random() < 0.9 ? 0.75 : undefined,
      referenceU: random() < 0.5 ? 0 : 0.02,
      faultsInARow: [undefined, 1, 2, 3][round % 4],
      cap: random() < 0.3 ? 6 : undefined,
    };
    const found = countInterval(set, rules, 200, round);
    expect(found).toEqual(plainInterval(set, rules, 200, round));
    widths += found.scoredHigh - found.scoredLow;
  }
  expect(widths).toBeGreaterThan(60);
  expect(() => countInterval([], { ...noRule, faultsInARow: 0 }, 200, 1)).toThrow('faultsInARow');
});

test('what is certain of a set is the same in every draw', () => {
  const never = { probability: 0, kind: 'tempo' as const };
  const certain: UncertainRepetition[] = [
    byHeight(1, 0.02),
    { ...byHeight(1, 0.02), others: [{ probability: 1, kind: undefined }] },
    // a fault of the tempo, and twice one of the height: the end comes after the sixth
    { ...byHeight(1, 0.02), others: [never] },
    byHeight(1, 0.02),
    byHeight(0.4, 0.02),
    byHeight(0.4, 0.02),
    byHeight(1, 0.02),
  ];
  const rules = { ...noRule, referenceU: 0.01, faultsInARow: 2 };
  const same = { validLow: 4, validHigh: 4, scoredLow: 3, scoredHigh: 3 };
  expect(countInterval(certain, rules, 2000, 1)).toEqual(same);
  expect(countInterval(certain, rules, 100, 2)).toEqual(same);
  // one that is open changes nothing of the others
  const open = [...certain, byHeight(0.75, 0.02)];
  expect(countInterval(open, rules, 2000, 1)).toEqual({ ...same, validHigh: 5 });
});

test('the same seed gives the same bounds', () => {
  const set = Array.from({ length: 12 }, () => byHeight(0.76, 0.04));
  expect(countInterval(set, noRule, 300, 9)).toEqual(countInterval(set, noRule, 300, 9));
  expect(() => countInterval(set, noRule, 10, 9)).toThrow('draws');
});

/** Valid repetitions before two in a row below the share, in a fading set with noise on every height. */
function scoreOfFadingSet(share: number, random: () => number): number {
  let row = 0;
  let score = 0;
  for (let k = 0; k < 40; k++) {
    const height = 0.1 * (1 - 0.012 * k) + 0.005 * gaussian(random);
    if (height >= share * 0.1) {
      row = 0;
      score += 1;
    } else if (++row === 2) {
      break;
    }
  }
  return score;
}

test.each([
  [0.6, 32],
  [0.7, 24],
  [0.75, 20],
  [0.8, 16],
  [0.9, 8],
])(
  'with the criterion at %s of the reference a set that fades by 1.2 per cent scores about %s, within its interval',
  (share, expected) => {
    const random = createRandom(17);
    const scores = Array.from({ length: 4000 }, () => scoreOfFadingSet(share, random));
    const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
    expect(Math.abs(mean - expected)).toBeLessThan(1);
    // judging the noiseless heights with that uncertainty draws the same experiment
    const set = Array.from({ length: 40 }, (_, k) => byHeight(1 - 0.012 * k, 0.05));
    const found = countInterval(set, { ...noRule, heightShare: share, faultsInARow: 2 }, 4000, 23);
    scores.sort((a, b) => a - b);
    expect(Math.abs(found.scoredLow - scores[99])).toBeLessThanOrEqual(1);
    expect(Math.abs(found.scoredHigh - scores[3899])).toBeLessThanOrEqual(1);
  },
);
