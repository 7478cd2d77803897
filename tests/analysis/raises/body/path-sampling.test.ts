import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { forwardPass, type PathInput } from '../../../../packages/analysis/src/raises/body/forward.ts';
import { samplePaths } from '../../../../packages/analysis/src/raises/body/path-sampling.ts';
import { priorTables } from '../../../../packages/analysis/src/raises/body/prior-tables.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { createRandom } from '../../../../packages/analysis/src/signal/random.ts';

const settings = { ...bodyDefaults, modelRateHz: 4, setEntryCost: 0 };
// levels that drift, so that the two spans of time differ
const rhythm = { ...priorRhythm(settings, 1, 1), logDurationSlope: 0.3, logCycleSlope: 0.3 };
const bank = templateBank([{ fromS: 1, toS: 1.5, durationStep: 0.41, holdShares: [0, 0.4], fallRatios: [1] }], 4);

/** A recording of a few cells; `favoured` holds the log factors of template 0 by cell. */
function input(cells: number, favoured: Record<number, number>): PathInput {
  const count = bank.templates.length;
  const factors = new Float32Array(cells * count).fill(-Infinity);
  for (let i = 0; i < cells; i++) {
    for (let k = 0; k < count; k++) {
      if (i + bank.templates[k].cells <= cells) factors[i * count + k] = k === 0 ? (favoured[i] ?? -2) : -2;
    }
  }
  const bumps = { classCells: [3], weights: new Float64Array(cells).fill(-4) };
  const tables = priorTables(bank, rhythm, settings, [0.5, 2]);
  const spanOf = Uint8Array.from({ length: cells + 1 }, (_, b) => (b < 5 ? 0 : 1));
  const other = Float64Array.from({ length: cells }, (_, i) => (i === 2 ? 3 : -1));
  return { cells, bank, factors, other, bumps, tables, spanOf, rhythm, settings };
}

/** Weight of all segmentations by walking every one of them: slow and obvious. Keyed by number of repetitions. */
function enumerate(of: PathInput): Map<number, number> {
  const { moves } = forwardPass(of);
  const count = of.bank.templates.length;
  const byNumber = new Map<number, number>();
  const finish = (log: number, number: number): void => {
    byNumber.set(number, (byNumber.get(number) ?? 0) + Math.exp(log));
  };
  const repetition = (at: number, log: number, number: number): void => {
    for (let k = 0; k < count; k++) {
      const end = at + of.bank.templates[k].cells;
      if (end <= of.cells)
        ended(end, log + of.tables.templates[of.spanOf[at] * count + k] + of.factors[at * count + k], number + 1, k);
    }
  };
  const ended = (at: number, log: number, number: number, k: number): void => {
    stand('after', at, false, log + moves.end, number);
    stand('pause', at, false, log + moves.pause, number);
    const c = of.bank.classCells.indexOf(of.bank.templates[k].cells);
    for (let g = 0; g < of.tables.restCells; g++) {
      if (at + g > of.cells) continue;
      const row = of.spanOf[at + g] * of.bank.classCells.length + c;
      repetition(at + g, log + moves.follow + of.tables.rests[row * of.tables.restCells + g], number);
    }
    const late = of.cells - at;
    if (late < of.tables.restCells)
      finish(log + moves.follow + Math.log(1 - late / of.tables.restCells + 1e-9), number);
  };
  const stand = (state: string, at: number, moving: boolean, log: number, number: number): void => {
    if (state !== 'after') {
      const begin = moving ? moves.otherEndsInRepetition : state === 'before' ? moves.begin : moves.resume;
      repetition(at, log + begin, number);
    }
    if (at === of.cells) {
      if (state !== 'before') finish(log, number);
      return;
    }
    const ratio = of.other[at];
    if (moving) {
      stand(state, at + 1, true, log + moves.stayOther + ratio, number);
      stand(state, at + 1, false, log + moves.otherEnds, number);
      return;
    }
    stand(state, at + 1, false, log + (state === 'pause' ? moves.stayPaused : moves.stay), number);
    stand(state, at + 1, true, log + moves.otherBegins + ratio, number);
    if (at + 3 <= of.cells) stand(state, at + 3, false, log + of.bumps.weights[at], number);
  };
  for (const state of ['before', 'after']) {
    for (const moving of [false, true]) stand(state, 0, moving, Math.log(0.5), 0);
  }
  return byNumber;
}

const small = input(10, { 0: 3, 5: 4 });

test('the forward pass weighs as much as all segmentations walked one by one', () => {
  const total = [...enumerate(small).values()].reduce((sum, weight) => sum + weight, 0);
  expect(forwardPass(small).evidence).toBeCloseTo(Math.log(total), 6);
});

test('its weight without repetitions is that of the segmentations that hold none', () => {
  expect(forwardPass(small).evidenceOfNone).toBeCloseTo(Math.log(enumerate(small).get(0)!), 6);
});

test('sampled paths hold 0, 1 and 2 repetitions as often as their weights say', () => {
  const weights = enumerate(small);
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  const paths = samplePaths(small, forwardPass(small), 4000, createRandom(1));
  for (const number of [0, 1, 2]) {
    const expected = (weights.get(number) ?? 0) / total;
    const share = paths.filter((path) => path.repetitions.length === number).length / 4000;
    expect(Math.abs(share - expected)).toBeLessThan(4 * Math.sqrt((expected * (1 - expected)) / 4000) + 1e-4);
  }
});

test('two strong repetitions are where they are strong', () => {
  const strong = input(10, { 0: 40, 5: 40 });
  const [path] = samplePaths(strong, forwardPass(strong), 1, createRandom(2));
  expect(path.repetitions.map((one) => [one.cell, one.template])).toEqual([
    [0, 0],
    [5, 0],
  ]);
});

test('a stretch that only other movement explains is other movement on every path', () => {
  const plain = input(10, {});
  const moving = { ...plain, other: plain.other.map((_, i) => (i >= 3 && i < 6 ? 30 : -5)) };
  for (const path of samplePaths(moving, forwardPass(moving), 20, createRandom(3))) {
    expect(path.repetitions).toEqual([]);
    expect(path.other.some(([from, to]) => from <= 3 && to >= 6)).toBe(true);
  }
});
