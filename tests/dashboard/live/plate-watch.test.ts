import { expect, test } from 'vitest';
import { PlateWatch } from '../../../apps/dashboard/src/live/plate-watch.ts';

/** Samples at 100 Hz. */
function push(watch: PlateWatch, fromS: number, forS: number, forceN: number): void {
  const count = Math.round(100 * forS);
  const deviceTimesS = Float64Array.from({ length: count }, (_, i) => fromS + i / 100);
  const samples = new Float64Array(count).fill(forceN);
  watch.add({ deviceTimesS, channels: [{ quantity: 'force', axis: null, unit: 'N', samples }] } as never);
}

function standing(levelN?: number, factor?: number): PlateWatch {
  const watch = new PlateWatch(levelN, factor);
  push(watch, 0, 2, (levelN ?? 0) + 700 / (factor ?? 1));
  return watch;
}

test('below a fifth of the weight that stood there nobody stands there, and at more somebody does', () => {
  for (const [forceN, isOff] of [
    [0, true],
    [139, true],
    [141, false],
    [420, false],
    [900, false],
  ] as const) {
    const watch = standing();
    push(watch, 2, 1, forceN);
    expect(watch.off !== null, `${forceN} N`).toBe(isOff);
  }
});

test('a bounce is none: it takes a quarter of a second', () => {
  const watch = standing();
  push(watch, 2, 0.2, 0);
  expect(watch.off).toBeNull();
  push(watch, 2.2, 0.1, 0);
  expect(watch.off?.fromS).toBe(2);
  const bounced = standing();
  push(bounced, 2, 0.2, 0);
  push(bounced, 2.2, 1, 700);
  expect([bounced.off, bounced.takeOver()]).toEqual([null, []]);
});

test('an empty plate that nobody stood on yet, and one that shows a level or a turned sign, are read as they are', () => {
  const empty = new PlateWatch();
  push(empty, 0, 5, 4);
  expect(empty.off).toBeNull();
  const level = standing(300);
  push(level, 2, 1, 305);
  expect(level.off).not.toBeNull();
  const turned = standing(0, -1);
  push(turned, 2, 1, -690);
  expect(turned.off).toBeNull();
  push(turned, 3, 1, -3);
  expect(turned.off).not.toBeNull();
});

test('who steps on afterwards has a weight of their own', () => {
  const watch = standing();
  push(watch, 2, 1, 0);
  push(watch, 3, 2, 300);
  expect(watch.off).toBeNull();
  push(watch, 5, 1, 70);
  expect(watch.off).toBeNull();
  push(watch, 6, 1, 50);
  expect(watch.off?.fromS).toBeCloseTo(6, 6);
  expect(watch.takeOver().map(({ fromS, forS }) => [fromS, Math.round(10 * forS) / 10])).toEqual([[2, 1]]);
});

test('missing samples and other quantities say nothing', () => {
  const watch = standing();
  push(watch, 2, 1, Number.NaN);
  watch.add({ deviceTimesS: Float64Array.of(4), channels: [] });
  watch.add({ deviceTimesS: null, channels: [] });
  expect(watch.off).toBeNull();
});
