import { blockCounterDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { type ProvisionalRaise, RaiseMachine } from '../../../packages/analysis/src/raises/block-machine.ts';
import '../../support/close.ts';

const cellS = 0.01;
const { movement } = blockCounterDefaults;

/** Corners of a height in time, joined by half cosines. */
function heightAt(corners: readonly (readonly [timeS: number, heightM: number])[], timeS: number): number {
  for (let i = 1; i < corners.length; i++) {
    const [fromS, from] = corners[i - 1];
    const [toS, to] = corners[i];
    if (timeS <= toS) return from + ((to - from) * (1 - Math.cos((Math.PI * (timeS - fromS)) / (toS - fromS)))) / 2;
  }
  return corners[corners.length - 1][1];
}

function run(
  corners: readonly (readonly [timeS: number, heightM: number])[],
  kind: 'position' | 'band-passed' = 'position',
): { raises: ProvisionalRaise[]; machine: RaiseMachine; phases: string[] } {
  const machine = new RaiseMachine(movement, kind);
  const raises: ProvisionalRaise[] = [];
  const phases: string[] = [];
  const lastS = corners[corners.length - 1][0];
  for (let k = 0; k * cellS <= lastS + 1e-9; k++) {
    const raise = machine.step(k * cellS, heightAt(corners, k * cellS), cellS);
    if (raise !== undefined) raises.push(raise);
    if (phases.at(-1) !== machine.phase) phases.push(machine.phase);
  }
  const last = machine.finish();
  if (last !== undefined) raises.push(last);
  return { raises, machine, phases };
}

/** A rise and a return of one second each from a time on. */
function raise(fromS: number, heightM: number, bottomM = 0): [number, number][] {
  return [
    [fromS, bottomM],
    [fromS + 1, heightM],
    [fromS + 2, bottomM],
  ];
}

describe('the phases of a repetition', () => {
  test('one raise goes through all of them and is given once, with its times and its height', () => {
    const { raises, phases } = run([[0, 0], ...raise(2, 0.1), [6, 0]]);
    expect(phases).toEqual(['settled-low', 'rising', 'high', 'lowering', 'settled-low']);
    expect(raises.length).toBe(1);
    const [{ startS, topS, endS, heightM }] = raises;
    // the shares of 5 and 15 % are crossed up to a quarter of a second after the start and before the end
    expect([startS, topS, endS]).toBeCloseToEach([2.15, 3, 3.75], { rtol: 0, atol: 0.1 });
    expect([heightM]).toBeCloseToEach([0.1], { rtol: 0, atol: 0.001 });
  });

  test('nothing has happened before the first height', () => {
    expect(new RaiseMachine(movement, 'position').phase).toBe('waiting');
  });

  test('a hold with a sinking top keeps its top in the middle of the hold', () => {
    const { raises } = run([
      [0, 0],
      [2, 0],
      [3, 0.1],
      [6, 0.096],
      [7, 0],
      [9, 0],
    ]);
    expect(raises.length).toBe(1);
    expect([raises[0].topS]).toBeCloseToEach([4.5], { rtol: 0, atol: 0.05 });
  });
});

describe('what is one repetition and what is none', () => {
  test('a dip of 40 % at the top belongs to the repetition', () => {
    const { raises } = run([
      [0, 0],
      [2, 0],
      [3, 0.1],
      [3.5, 0.06],
      [4, 0.1],
      [5, 0],
      [7, 0],
    ]);
    expect(raises.length).toBe(1);
  });

  test('a fall of 60 % and a new rise makes two', () => {
    const { raises } = run([
      [0, 0],
      [2, 0],
      [3, 0.1],
      [4, 0.04],
      [5, 0.1],
      [6, 0],
      [8, 0],
    ]);
    expect(raises.length).toBe(2);
    expect([raises[0].endS, raises[1].startS]).toBeCloseToEach([4, 4], { rtol: 0, atol: 0.02 });
  });

  test('bounces of 10 mm in a pause count for nothing', () => {
    const corners: [number, number][] = [[0, 0], ...raise(2, 0.1)];
    for (let k = 0; k < 6; k++) corners.push([4.5 + k, 0], [5 + k, 0.01]);
    corners.push(...raise(12, 0.1), [16, 0]);
    expect(run(corners).raises.length).toBe(2);
  });

  test('a movement below the least rise counts only in a set where it is not small', () => {
    expect(run([[0, 0], ...raise(2, 0.018), [6, 0]]).raises.length).toBe(0);
    expect(run([[0, 0], ...raise(2, 0.025), ...raise(5, 0.025), [9, 0]]).raises.length).toBe(2);
    const small = run([[0, 0], ...raise(2, 0.1), ...raise(5, 0.1), ...raise(8, 0.025), ...raise(11, 0.1), [15, 0]]);
    expect(small.raises.map(({ topS }) => Math.round(topS))).toEqual([3, 6, 12]);
  });

  test('a jerk of a fifth of a second counts for nothing', () => {
    expect(
      run([
        [0, 0],
        [2, 0],
        [2.1, 0.1],
        [2.2, 0],
        [4, 0],
      ]).raises.length,
    ).toBe(0);
  });

  test('a raise that is spoiled on its way is not given, and the next one is', () => {
    const machine = new RaiseMachine(movement, 'position');
    const corners: [number, number][] = [[0, 0], ...raise(2, 0.1), ...raise(5, 0.1), [9, 0]];
    const raises: ProvisionalRaise[] = [];
    for (let k = 0; k < 900; k++) {
      const given = machine.step(k * cellS, heightAt(corners, k * cellS), cellS);
      if (given !== undefined) raises.push(given);
      if (k === 300) machine.spoil();
    }
    expect(raises.map(({ topS }) => Math.round(topS))).toEqual([6]);
  });

  test('a sensor that slips by 3 cm loses no repetition and adds none', () => {
    const slipped = [...raise(10, 0.13, 0.03), ...raise(13, 0.13, 0.03)];
    const { raises } = run([[0, 0], ...raise(2, 0.1), ...raise(5, 0.1), [8, 0], [8.2, 0.03], ...slipped, [18, 0.03]]);
    expect(raises.map(({ topS }) => Math.round(topS))).toEqual([3, 6, 11, 14]);
    expect(raises.map(({ heightM }) => heightM)).toBeCloseToEach([0.1, 0.1, 0.1, 0.1], { rtol: 0, atol: 0.004 });
  });

  test('a raise that is nearly over at the end of the recording is given by finish', () => {
    expect(
      run([
        [0, 0],
        [2, 0],
        [3, 0.1],
        [3.7, 0.03],
      ]).raises.length,
    ).toBe(1);
    expect(
      run([
        [0, 0],
        [2, 0],
        [3, 0.1],
        [3.1, 0.098],
      ]).raises.length,
    ).toBe(0);
  });

  test('a band-passed rise has no floor but the bottom before it', () => {
    const swings: [number, number][] = [[0, 0]];
    for (let k = 0; k < 5; k++) swings.push([1 + 2 * k, 0.02], [2 + 2 * k, -0.03]);
    swings.push([12, 0]);
    const { raises } = run(swings, 'band-passed');
    expect(raises.length).toBe(5);
    expect(raises[3].heightM).toBeGreaterThan(0.045);
  });
});

test('the floor follows a slow drift and the height is counted from it', () => {
  const corners: [number, number][] = [[0, 0]];
  // one millimetre a repetition
  for (let k = 0; k < 12; k++)
    corners.push([2 + 3 * k, 0.001 * k], [3 + 3 * k, 0.1 + 0.001 * k], [4 + 3 * k, 0.001 * k]);
  corners.push([40, 0.011]);
  const { raises } = run(corners);
  expect(raises.length).toBe(12);
  expect(raises.map(({ heightM }) => heightM)).toBeCloseToEach(new Array<number>(12).fill(0.1), {
    rtol: 0,
    atol: 0.0015,
  });
});

test('a bottom that jumps up without a rest moves the floor by 2 mm a repetition, so that the jump is seen', () => {
  const corners: [number, number][] = [[0, 0], ...raise(2, 0.1), [4.0001, 0]];
  // from here on the heel returns to 12 mm only, at once on its way up again
  for (let k = 0; k < 4; k++) corners.push([5 + 2 * k, 0.1], [6 + 2 * k, 0.012]);
  corners.push([13, 0.1], [14, 0], [16, 0]);
  const { raises } = run(corners);
  expect(raises.length).toBe(6);
  expect(raises.map(({ heightM }) => heightM)).toBeCloseToEach([0.1, 0.1, 0.098, 0.096, 0.094, 0.092], {
    rtol: 0,
    atol: 0.0015,
  });
});
