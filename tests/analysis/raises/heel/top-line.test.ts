import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import {
  greatestTopsLikelihood,
  type LevelStep,
  type Moment,
  topsLikelihood,
} from '../../../../packages/analysis/src/raises/heel/top-line.ts';
import { createRandom } from '../../../../packages/analysis/src/signal/random.ts';

const likelihood = (tops: readonly Moment[], step: LevelStep | undefined): number =>
  topsLikelihood(tops, step, heelDefaults.floor.steps.tops);

const falling = Array.from({ length: 12 }, (_, i) => ({
  timeS: 2 * i,
  level: 0.1 - 0.001 * i + (i % 2 === 0 ? 0.004 : -0.004),
}));

test('tops about a falling line: the likelihood of their spread, and a step that is not there costs', () => {
  // ten degrees of freedom of 4 mm each way; the tried spread of 5 mm gives about 0.9/(sqrt(2 pi) 0.005) exp(-0.32) each
  const each = likelihood(falling, undefined) / falling.length;
  const byHand = Math.log(0.9 * (Math.exp(-0.5 * (0.004 / 0.005) ** 2) / (Math.sqrt(2 * Math.PI) * 0.005)) + 0.1 / 0.2);
  expect(Math.abs(each - byHand)).toBeLessThan(0.05);
  expect(likelihood(falling, { timeS: 11, stepM: 0.03 })).toBeLessThan(likelihood(falling, undefined) - 5);
});

test('a step that is there is worth taking, whatever its way, though a steeper line takes part of it', () => {
  for (const stepM of [0.03, -0.03]) {
    const stepped = falling.map((top) => (top.timeS > 11 ? { ...top, level: top.level + stepM } : top));
    const gain = likelihood(stepped, { timeS: 11, stepM }) - likelihood(stepped, undefined);
    expect(gain).toBeGreaterThan(5);
  }
});

test('half a raise among whole ones is a stray and draws no line', () => {
  const one = falling.map((top, i) => (i === 5 ? { ...top, level: 0.05 } : top));
  const lost = likelihood(falling, undefined) - likelihood(one, undefined);
  expect(lost).toBeLessThan(8);
});

test('fewer than five tops say nothing', () => {
  expect(likelihood(falling.slice(0, 4), { timeS: 3, stepM: 0.05 })).toBe(0);
});

test('the rule is read: how many tops say something, and how often one strays', () => {
  const rule = heelDefaults.floor.steps.tops;
  expect(topsLikelihood(falling, undefined, { ...rule, leastTops: 13 })).toBe(0);
  const one = falling.map((top, i) => (i === 5 ? { ...top, level: 0.05 } : top));
  const lost = (strayShare: number): number =>
    topsLikelihood(falling, undefined, { ...rule, strayShare }) -
    topsLikelihood(one, undefined, { ...rule, strayShare });
  expect(lost(0.001)).toBeGreaterThan(lost(0.1) + 3);
});

test('no tops are likelier than those that lie on their line', () => {
  const rule = heelDefaults.floor.steps.tops;
  const straight = falling.map(({ timeS }) => ({ timeS, level: 0.1 - 0.001 * timeS }));
  const most = greatestTopsLikelihood(falling.length, rule);
  expect(Math.abs(topsLikelihood(straight, undefined, rule) - most)).toBeLessThan(1e-6);
  const random = createRandom(4);
  for (let round = 0; round < 50; round++) {
    const tops = straight.map((top) => ({ ...top, level: top.level + 0.01 * (random() - 0.5) }));
    expect(topsLikelihood(tops, undefined, rule)).toBeLessThan(most);
  }
  expect(greatestTopsLikelihood(rule.leastTops - 1, rule)).toBe(0);
});
