import { expect, test } from 'vitest';
import { SampleHoles } from '../../../packages/sensors/src/loss/sample-holes.ts';

/** Three packets of four samples are missing after sample 7, at 100 Hz. */
function holes(): SampleHoles {
  const made = new SampleHoles();
  made.add({ position: 2, toPosition: 5, index: 8, count: 12, fromS: 0.07, toS: 0.2 }, 0.01);
  return made;
}

test('what is missing is counted, and the longest stretch is told', () => {
  const made = holes();
  expect([made.missingCount, made.longestS]).toEqual([12, expect.closeTo(0.13, 9)]);
  made.add({ position: 9, toPosition: 9, index: 40, count: 0, fromS: 0.3, toS: 0.31 }, 0.01);
  expect([made.missingCount, made.longestS]).toEqual([12, expect.closeTo(0.13, 9)]);
  // a device that paused without losing anything
  made.add({ position: 20, toPosition: 20, index: 80, count: 0, fromS: 1, toS: 1.5 }, 0.01);
  expect([made.missingCount, made.longestS]).toEqual([12, 0.5]);
  expect([new SampleHoles().missingCount, new SampleHoles().longestS]).toEqual([0, 0]);
});

test('a packet in the middle of a hole leaves two, and its samples lie evenly in between', () => {
  const made = holes();
  const middle = made.fill(3, 4, 4)!;
  expect(middle.index).toBe(12);
  expect([...middle.timesS].map((timeS) => Math.round(1000 * timeS))).toEqual([120, 130, 140, 150]);
  expect(made.missingCount).toBe(8);
  expect(made.fill(3, 4, 4)).toBeUndefined();
  const last = made.fill(4, 4, 4)!;
  expect([last.index, Math.round(1000 * last.timesS[0])]).toEqual([16, 160]);
  const first = made.fill(2, 4, 4)!;
  expect([first.index, Math.round(1000 * first.timesS[3])]).toEqual([8, 110]);
  expect(made.missingCount).toBe(0);
});

test('where there is no hole, or none so long, nothing is filled', () => {
  const made = holes();
  expect(made.fill(1, 4, 4)).toBeUndefined();
  expect(made.fill(5, 4, 4)).toBeUndefined();
  expect(made.fill(4, 5, 4)).toBeUndefined();
  expect(made.missingCount).toBe(12);
});
