import { describe, expect, test } from 'vitest';
import { fitMove, misfitOfMove } from '../../../../packages/analysis/src/raises/heel/move-fit.ts';
import type { Move } from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import { moveLevels } from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import { minimumJerk, moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

const shape = moveShape(minimumJerk);
const truth = Float64Array.of(0.62, 1.25, 1.6, 2.75, 0.004, 0.1, 0.012);
const timesS = Float64Array.from({ length: 85 }, (_, i) => i * 0.04);
const guess: Move = { startS: 0.8, highFromS: 1.15, highToS: 1.8, endS: 2.5, before: 0, top: 0.09, after: 0 };
const clean = new Float64Array(timesS.length);
moveLevels(truth, timesS, shape, shape, clean);
const white = whitening({ swaySdM: 1e-6, swayTimeS: 0.3, whiteSdM: 0.001 }, 0.04, new Float64Array(85).fill(1));

describe('fit of a repetition', () => {
  test('gives the times and levels of a clean move back', () => {
    const fit = fitMove({ timesS, level: clean, whitening: white }, guess, shape, shape)!;
    const found = [fit.startS, fit.highFromS, fit.highToS, fit.endS];
    found.forEach((value, i) => {
      expect(Math.abs(value - truth[i])).toBeLessThan(0.005);
    });
    expect(Math.abs(fit.top - 0.1)).toBeLessThan(1e-4);
  });

  test('is hardly moved by a wild sample', () => {
    const spiked = Float64Array.from(clean);
    spiked[33] = 0.3;
    const fit = fitMove({ timesS, level: spiked, whitening: white }, guess, shape, shape)!;
    expect(Math.abs(fit.highFromS - truth[1])).toBeLessThan(0.02);
    expect(Math.abs(fit.top - 0.1)).toBeLessThan(0.001);
  });

  test('closes a hold that would last less than no time, and settles where no other way fits better', () => {
    // ways that near the top sharply, fitted with soft ones
    const [sharp, sharpDown] = [
      moveShape({ start: 2, end: 1, spread: 0, tilt: 0 }),
      moveShape({ start: 1, end: 2, spread: 0, tilt: 0 }),
    ];
    const [soft, softDown] = [
      moveShape({ start: 2, end: 4, spread: 0, tilt: 0 }),
      moveShape({ start: 4, end: 2, spread: 0, tilt: 0 }),
    ];
    const peaked = new Float64Array(timesS.length);
    moveLevels(Float64Array.of(0.6, 1.4, 1.4, 2.7, 0, 0.1, 0), timesS, sharp, sharpDown, peaked);
    const data = { timesS, level: peaked, whitening: white };
    const fit = fitMove(data, guess, soft, softDown)!;
    const misfit = fit.upMisfit + fit.downMisfit;
    expect(Math.abs(fit.highToS - fit.highFromS)).toBeLessThan(1e-6);
    for (const by of [-0.1, -0.05, 0.05, 0.1]) {
      const near = { ...fit, highFromS: fit.highFromS + by, highToS: fit.highToS + by };
      const other = fitMove(data, near, soft, softDown)!;
      expect(other.upMisfit + other.downMisfit).toBeGreaterThan(0.99 * misfit);
    }
  });

  test('states uncertainties that noise bears out', () => {
    const random = createRandom(9);
    const [starts, tops]: [number[], number[]] = [[], []];
    let stated = { startU: 0, topU: 0 };
    for (let k = 0; k < 200; k++) {
      const level = clean.map((value) => value + 0.001 * gaussian(random));
      const fit = fitMove({ timesS, level, whitening: white }, guess, shape, shape)!;
      starts.push(fit.startS - truth[0]);
      tops.push((fit.highFromS + fit.highToS) / 2 - (truth[1] + truth[2]) / 2);
      stated = { startU: stated.startU + fit.startU / 200, topU: stated.topU + fit.topU / 200 };
    }
    const rms = (values: number[]): number => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
    expect(Math.abs(stated.startU / rms(starts) - 1)).toBeLessThan(0.3);
    expect(Math.abs(stated.topU / rms(tops) - 1)).toBeLessThan(0.3);
  });

  test('says nearly the same of its misfit alone, and one fit leaves nothing behind for the next', () => {
    const spiked = Float64Array.from(clean);
    spiked[33] = 0.3;
    const of = (level: Float64Array): Parameters<typeof misfitOfMove> => [
      { timesS, level, whitening: white },
      guess,
      shape,
      shape,
    ];
    const [first, other] = [fitMove(...of(clean))!, fitMove(...of(spiked))!];
    expect(fitMove(...of(clean))).toEqual(first);
    const rough = misfitOfMove(...of(spiked))!;
    const whole = other.upMisfit + other.downMisfit;
    // a misfit alone may stop where a round gains less than 0.3 and a third of a percent
    expect(Math.abs(rough.upMisfit + rough.downMisfit - whole)).toBeLessThan(0.3 + 0.003 * whole);
    expect(other.upMisfit + other.downMisfit).toBeGreaterThan(first.upMisfit + first.downMisfit + 10);
  });

  test('of fewer samples than unknowns is none', () => {
    const few = { timesS: timesS.slice(0, 8), level: clean.slice(0, 8), whitening: white };
    expect(fitMove(few, guess, shape, shape)).toBeUndefined();
    expect(misfitOfMove(few, guess, shape, shape)).toBeUndefined();
  });
});
