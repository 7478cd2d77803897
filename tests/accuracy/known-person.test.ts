import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import {
  agreedTops,
  type Chain,
  chanceOfCount,
  countShares,
  filtered,
  lackable,
  likeliestCount,
  narrowestRange,
  noiseCovariance,
  ObserverFigures,
  observe,
  onGrid,
  quietSet,
  riseByPowers,
  safestCount,
  seriesOf,
  takenInGeneral,
  uniformNumbers,
  wavesOf,
  whiteningFilter,
} from './known-person/modules.ts';

/** A chain of 24 steps that can be enumerated: two paces, two bottoms, stays of several lengths, weights by chance. */
function smallChain(seed: number): Chain {
  const uniform = uniformNumbers(seed);
  const moveSteps = [3, 4];
  const [steps, lastEnd] = [24, 23];
  return {
    levels: 2,
    moveSteps,
    starts: Array.from({ length: steps }, (_, t) =>
      moveSteps.flatMap((moves, pace) =>
        t + moves > lastEnd ? [] : [{ pace, logs: [0, 1, 2, 3].map(() => 3 * uniform() - 1) }],
      ),
    ),
    usualNext: moveSteps.map((moves) => [0, 1].map((more) => ({ steps: moves + more, log: Math.log(0.4) }))),
    lateNext: [
      { from: 2, to: 5, log: Math.log(0.15 / 3) },
      { from: 5, to: 9, log: Math.log(0.05 / 4) },
    ],
    mayBegin: (t) => t >= 1 && t <= 4,
    mayEnd: (end) => end >= 17 && end <= lastEnd,
  };
}

/** Weight of all series by their count, each series written out. */
function enumerated(chain: Chain): Map<number, number> {
  const byCount = new Map<number, number>();
  const from = (t: number, before: number, count: number, log: number): void => {
    for (const { pace, logs } of chain.starts[t] ?? []) {
      const end = t + chain.moveSteps[pace];
      for (let level = 0; level < chain.levels; level++) {
        const sofar = log + logs[before * chain.levels + level];
        if (level === 0 && chain.mayEnd(end)) {
          byCount.set(count + 1, (byCount.get(count + 1) ?? 0) + Math.exp(sofar));
        }
        for (const next of chain.usualNext[pace]) from(t + next.steps, level, count + 1, sofar + next.log);
        for (const late of chain.lateNext) {
          for (let stay = late.from; stay < late.to; stay++) from(end + stay, level, count + 1, sofar + late.log);
        }
      }
    }
  };
  for (let t = 0; t < chain.starts.length; t++) if (chain.mayBegin(t)) from(t, 0, 0, 0);
  return byCount;
}

describe('the chain of repetitions', () => {
  test.each([1, 2, 3])('weighs and draws as writing out every series does (%i)', (seed) => {
    const chain = smallChain(seed);
    const byCount = enumerated(chain);
    const sum = [...byCount.values()].reduce((all, weight) => all + weight, 0);
    const draws = 20000;
    const { series, logWeight } = seriesOf(chain, uniformNumbers(seed + 10), draws);
    expect(Math.abs(logWeight - Math.log(sum))).toBeLessThan(1e-9);
    expect(byCount.size).toBeGreaterThan(2);
    for (const [count, weight] of byCount) {
      const share = weight / sum;
      const drawn = series.filter(({ length }) => length === count).length / draws;
      // four standard errors of a share of independent draws
      expect(Math.abs(drawn - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / draws) + 1 / draws);
    }
  });
});

/** Solution x of matrix x = right, by elimination. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    for (let i = k + 1; i < size; i++) {
      const factor = rows[i][k] / rows[k][k];
      for (let j = k; j <= size; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  const x = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let sum = rows[i][size];
    for (let j = i + 1; j < size; j++) sum -= rows[i][j] * x[j];
    x[i] = sum / rows[i][i];
  }
  return x;
}

const foot = { heelLeverM: 0.186, ankleLeverM: 0.148, ankleAngleRad: 0.49, restPitchRad: 0, pivotMigration: 0 };
const shape = { kind: 'minimum-jerk', skew: 0.1, share: 0.4 } as const;
const bodyRise = (pitch: number): number =>
  foot.ankleLeverM * (Math.sin(foot.ankleAngleRad + pitch) - Math.sin(foot.ankleAngleRad));

describe('a repetition in the signal', () => {
  test('the rise along a move is that of the lever, within a tenth of a millimetre', () => {
    for (const [from, to] of [
      [0, 0.6],
      [0.6, 0.2],
      [0, 0.35],
    ]) {
      const rises = riseByPowers(foot, from, to);
      const at = (way: number): number => rises.reduce((sum, rise, m) => sum + rise * (way - 0.5) ** (m + 1), 0);
      for (const way of [0.1, 0.3, 0.5, 0.8, 1]) {
        const exact = bodyRise(from + way * (to - from)) - bodyRise(from);
        expect(Math.abs(at(way) - at(0) - exact)).toBeLessThan(1e-4);
      }
    }
  });

  test('its likelihood ratio is that of the dense normal distribution', () => {
    const stepS = 0.025;
    const { set } = quietSet(simulation, 'trunk', 'hard', 1003);
    const covariance = noiseCovariance('trunk', set, stepS, 24);
    const filter = whiteningFilter(covariance);
    const parts = { upS: 0.6, holdS: 0.1, downS: 0.7 };
    const { waves, products } = wavesOf(
      parts,
      { upShape: shape, downShape: shape },
      { filter, stepS },
      simulation.wayGone,
    );
    const rises = [...riseByPowers(foot, 0, 0.55), ...riseByPowers(foot, 0.55, 0.1)];
    const [count, start] = [130, 30];
    const pitchAt = (timeS: number): number =>
      timeS < 0.7
        ? 0.55 * simulation.wayGone(shape, timeS / 0.6)
        : 0.55 - 0.45 * simulation.wayGone(shape, (timeS - 0.7) / 0.7);
    const speedAt = (timeS: number): number =>
      (bodyRise(pitchAt(timeS + 1e-4)) - bodyRise(pitchAt(timeS - 1e-4))) / 2e-4;
    const signal = Array.from({ length: count }, (_, i) => {
      const sinceS = (i - start) * stepS;
      return (speedAt(sinceS + stepS / 2) - speedAt(sinceS - stepS / 2)) / stepS;
    });
    const uniform = uniformNumbers(5);
    const raw = Float64Array.from(signal, (value) => 0.8 * value + 0.3 * (uniform() - 0.5));
    const long = noiseCovariance('trunk', set, stepS, count);
    const matrix = signal.map((_, i) => signal.map((__, j) => long[Math.abs(i - j)]));
    const product = (a: readonly number[], b: ArrayLike<number>): number =>
      a.reduce((sum, value, i) => sum + value * b[i], 0);
    const weighed = solved(matrix, signal);
    const dense = { fit: product(weighed, raw), energy: product(weighed, signal) };
    const heard = filtered(raw, filter);
    const fits = waves.map((wave) => wave.reduce((sum, value, i) => sum + value * (heard[start + i] ?? 0), 0));
    const fit = product(rises, fits);
    const energy = product(
      rises,
      products.map((row) => product(rises, row)),
    );
    expect(dense.energy).toBeGreaterThan(10);
    expect(Math.abs(energy / dense.energy - 1)).toBeLessThan(0.01);
    expect(Math.abs(fit / dense.fit - 1)).toBeLessThan(0.01);
  });

  test('the grid holds means over its steps: those of a straight line are its values', () => {
    const timesS = Float64Array.from([0, 0.013, 0.04, 0.055, 0.09, 0.13, 0.2]);
    const means = onGrid({ timesS, values: timesS.map((timeS) => 2 * timeS + 1) }, 0.02);
    means.slice(1).forEach((mean, i) => {
      expect(Math.abs(mean - (2 * (i + 1) * 0.02 + 1))).toBeLessThan(1e-12);
    });
  });

  test('whitening: of noise that keeps a share of its past, the rest is left', () => {
    const filter = whiteningFilter(Float64Array.from([1, 0.8, 0.64, 0.512]));
    expect(Math.abs(filter[0] - 1 / 0.6)).toBeLessThan(1e-12);
    expect(Math.abs(filter[1] + 0.8 / 0.6)).toBeLessThan(1e-12);
    expect(Math.abs(filter[3])).toBeLessThan(1e-12);
  });
});

describe('answers', () => {
  const counts = { least: 7, shares: [0.3, 0.05, 0.35, 0.2, 0.1] };

  test('the likeliest count, the one that is within one most often, and the narrowest range', () => {
    expect(likeliestCount(counts)).toBe(9);
    expect(safestCount(counts)).toBe(8);
    expect(narrowestRange(counts, 0.6)).toEqual({ low: 7, high: 9 });
    expect(narrowestRange(counts, 0.95)).toEqual({ low: 7, high: 11 });
    expect(narrowestRange({ least: 4, shares: [1] }, 0.95)).toEqual({ low: 4, high: 4 });
  });

  test('counts are those of the series, and tops those that most of them have', () => {
    const series = [
      [1, 3, 5],
      [1.02, 3, 5.02],
      [1, 3.02, 5],
      [1, 5],
    ];
    expect(countShares(series)).toEqual({ least: 2, shares: [0.25, 0.75] });
    const tops = agreedTops(series, 0.055);
    expect(tops).toHaveLength(3);
    tops.forEach((top, i) => expect(Math.abs(top - [1.01, 3.01, 5.01][i])).toBeLessThan(1e-9));
  });

  test('of two observers of the same sets: what the one counts and the other does not', () => {
    const counting = (counts: readonly number[]): InstanceType<typeof ObserverFigures> => {
      const figures = new ObserverFigures();
      for (const count of counts) {
        const topsS = Array.from({ length: count }, (_, i) => 2 * i);
        const answer = { count, safest: count, range: { low: 0, high: 9 }, chances: { count: 1, range: 1 }, topsS };
        figures.add(answer, [{ topS: 0 }, { topS: 2 }, { topS: 4 }]);
      }
      return figures;
    };
    expect(counting([3, 3, 3, 4, 2]).against(counting([3, 2, 4, 3, 2]))).toEqual({ gained: 2, lost: 1 });
  });

  test('the chances of all numbers of repetitions sum to one', () => {
    const sum = Array.from({ length: 100 }, (_, count) => chanceOfCount(count)).reduce((all, one) => all + one, 0);
    expect(Math.abs(sum - 1)).toBeLessThan(1e-12);
  });
});

describe('the observer', () => {
  test.each([
    ['trunk', 1006],
    ['platform', 1003],
  ] as const)('counts a typical set and finds its tops (%s, %i)', (kind, seed) => {
    const { set, quiet } = quietSet(simulation, kind, 'typical', seed);
    const { repetitions } = set.truth;
    const answer = observe({ placement: kind, set, quiet, seed, wayGone: simulation.wayGone });
    expect(answer.count).toBe(repetitions.length);
    expect(answer.safest).toBe(repetitions.length);
    expect(answer.range).toEqual({ low: repetitions.length, high: repetitions.length });
    expect(answer.chances.count).toBeGreaterThan(0.95);
    answer.topsS.forEach((topS, i) => expect(Math.abs(topS - repetitions[i].topS)).toBeLessThan(0.05));
  });

  test('is less sure of a set that is buried in sway', () => {
    const { set, quiet } = quietSet(simulation, 'trunk', 'hard', 1006);
    const answer = observe({ placement: 'trunk', set, quiet, seed: 1006, wayGone: simulation.wayGone });
    expect(answer.chances.count).toBeLessThan(0.999);
    expect(answer.chances.range).toBeGreaterThan(0.95);
    expect(answer.range.low).toBeLessThanOrEqual(set.truth.repetitions.length);
    expect(answer.range.high).toBeGreaterThanOrEqual(set.truth.repetitions.length);
  });
});

describe('an observer that lacks a part of it', () => {
  const heard = quietSet(simulation, 'platform', 'hard', 7065);
  const without = (...lacking: string[]) => takenInGeneral(heard, lacking, simulation.faultTable, 'hard');

  test('hears the same recording, and keeps all that it does not lack', () => {
    expect(without()).toEqual(heard);
    for (const name of lackable) {
      const { set, quiet } = without(name);
      expect(set.trace).toBe(heard.set.trace);
      expect(set.subject).toBe(heard.set.subject);
      expect({ set, quiet }).not.toEqual(heard);
      const { cycleS, topPitchRad, shares } = set.truth.person;
      expect([cycleS, topPitchRad]).toEqual([heard.set.truth.person.cycleS, heard.set.truth.person.topPitchRad]);
      expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(1e-12);
    }
  });

  test('the usual rest leaves rise, hold and fall as they are to each other, and usual moves leave the rest', () => {
    const own = heard.set.truth.person.shares;
    const [up, hold, down, low] = without('rest').set.truth.person.shares;
    expect(Math.abs(hold / up - own[1] / own[0])).toBeLessThan(1e-12);
    expect(Math.abs(down / up - own[2] / own[0])).toBeLessThan(1e-12);
    expect(Math.abs(low - own[3])).toBeGreaterThan(0.05);
    const moved = without('moves').set.truth.person.shares;
    expect(Math.abs(moved[3] - own[3])).toBeLessThan(1e-12);
    expect(Math.abs(moved[1] / moved[0] - 0.2)).toBeLessThan(1e-12);
  });

  test('faults lie in the middle of their ranges, and wobble grows with the tempo as it does for everybody', () => {
    expect(Math.abs(without('tempo').set.faults.tempoSpread - 0.085)).toBeLessThan(1e-12);
    expect(without('tempo').set.faults.heightSpread).toBe(heard.set.faults.heightSpread);
    const { platformWobble, wobbleCornerHz } = without('wobble').set.faults;
    expect(wobbleCornerHz).toBe(3.5);
    const growth = (2 / heard.set.truth.person.cycleS) ** 0.75;
    expect(Math.abs(platformWobble / growth - 0.143)).toBeLessThan(1e-12);
  });

  test('stillness may be anything from none to twice the usual, and parts add up', () => {
    const { quiet, set } = without('stillness', 'shapes');
    expect(quiet).toEqual({ quietBeforeS: [0, 5.5], quietAfterS: [0, 4] });
    expect(set.truth.person.upShape).toEqual(set.truth.person.downShape);
    expect(() => without('luck')).toThrow('no such part');
  });

  test('miscounts a set without its rest that it counts with it', () => {
    const grid = { stepS: 0.05, paceStep: 0.04 };
    const count = (taken: typeof heard): number =>
      observe({ placement: 'platform', ...taken, seed: 7065, wayGone: simulation.wayGone, grid }).count;
    expect(count(heard)).toBe(heard.set.truth.repetitions.length);
    expect(count(without('rest'))).not.toBe(heard.set.truth.repetitions.length);
  });
});
