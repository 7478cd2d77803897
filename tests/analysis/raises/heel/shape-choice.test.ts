import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { fitMove } from '../../../../packages/analysis/src/raises/heel/move-fit.ts';
import { moveLevels } from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import {
  type MoveShape,
  minimumJerk,
  moveShape,
  readShape,
} from '../../../../packages/analysis/src/raises/heel/move-shape.ts';
import { chooseShapes } from '../../../../packages/analysis/src/raises/heel/shape-choice.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

const usual = moveShape(minimumJerk);
const timesS = Float64Array.from({ length: 70 }, (_, i) => i * 0.05);
const white = whitening({ swaySdM: 1e-6, swayTimeS: 0.3, whiteSdM: 0.0005 }, 0.05, new Float64Array(70).fill(1));
function levelsOf(p: Float64Array, up: MoveShape, down: MoveShape): Float64Array {
  const levels = new Float64Array(timesS.length);
  moveLevels(p, timesS, up, down, levels);
  return levels;
}
const guess = { startS: 0.7, highFromS: 1.2, highToS: 1.7, endS: 2.4, before: 0, top: 0.1, after: 0 };

test.each([
  ['minimum jerk', minimumJerk, minimumJerk],
  ['a soft start', { start: 3, end: 1.5, spread: 0, tilt: 0 }, { start: 1.5, end: 3, spread: 0, tilt: 0 }],
  ['two strokes', { start: 2.7, end: 2.7, spread: 7, tilt: 0 }, { start: 2.7, end: 2.7, spread: 7, tilt: 0 }],
])('the shape that moves were made with is found: %s', (_, up, down) => {
  const [upShape, downShape] = [moveShape(up), moveShape(down)];
  const data = Array.from({ length: 8 }, (_unused, k) => {
    const p = Float64Array.of(0.5 + 0.02 * k, 1.2 + 0.03 * k, 1.55 + 0.03 * k, 2.5 + 0.05 * k, 0, 0.1, 0);
    return {
      timesS,
      level: levelsOf(p, upShape, downShape),
      whitening: white,
    };
  });
  const chosen = chooseShapes(
    data,
    data.map(() => guess),
    heelDefaults,
  );
  for (const u of [0.15, 0.3, 0.5, 0.7, 0.85]) {
    expect(Math.abs(readShape(chosen.up.way, u) - readShape(upShape.way, u))).toBeLessThan(0.03);
  }
  const top = (shapes: { up: typeof usual; down: typeof usual }): number => {
    const fit = fitMove(data[3], guess, shapes.up, shapes.down)!;
    return (fit.highFromS + fit.highToS) / 2;
  };
  expect(Math.abs(top(chosen) - (1.29 + 1.64) / 2)).toBeLessThan(0.012);
});

test('without any repetition minimum jerk stands', () => {
  const { up } = chooseShapes([], [], heelDefaults);
  expect(Math.abs(readShape(up.way, 0.3) - readShape(usual.way, 0.3))).toBeLessThan(1e-9);
});

test('the usual length of the parts is found with the shapes, under noise that hides it in a single move', () => {
  const random = createRandom(3);
  const data = Array.from({ length: 24 }, (_unused, k) => {
    const pace = 1 + 0.08 * Math.sin(k);
    const p = Float64Array.of(0.6, 0.6 + 0.7 * pace, 0.6 + 0.82 * pace, 0.6 + 1.7 * pace, 0, 0.1, 0);
    const level = levelsOf(p, usual, usual).map((value) => value + 0.001 * gaussian(random));
    const noise = { swaySdM: 1e-6, swayTimeS: 0.3, whiteSdM: 0.001 };
    return { timesS, level, whitening: whitening(noise, 0.05, new Float64Array(70).fill(1)) };
  });
  const { parts, moves } = chooseShapes(
    data,
    data.map(() => guess),
    heelDefaults,
  );
  expect(moves.length).toBe(24);
  [0.7, 0.12, 0.88].forEach((lengthS, k) => expect(Math.abs(parts!.usualS[k] - lengthS)).toBeLessThan(0.05));
});

test('three repetitions show no habit', () => {
  const level = levelsOf(Float64Array.of(0.5, 1.2, 1.6, 2.5, 0, 0.1, 0), usual, usual);
  const data = [0, 1, 2].map(() => ({ timesS, level, whitening: white }));
  expect(
    chooseShapes(
      data,
      data.map(() => guess),
      heelDefaults,
    ).parts,
  ).toBeUndefined();
});
