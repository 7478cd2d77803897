import type { SampleBlock } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FlatWatch } from '../../../apps/dashboard/src/live/flat-watch.ts';
import { runs } from '../../support/runs.ts';

const rateHz = 10;

/** A block of heights of the heel, ten a second, that arrives with its last sample. */
function heights(values: readonly number[], firstIndex = 0): SampleBlock {
  return {
    firstIndex,
    deviceTimesS: Float64Array.from(values, (_, i) => (firstIndex + i) / rateHz),
    hostTimeMs: (1000 * (firstIndex + values.length - 1)) / rateHz,
    channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples: Float64Array.from(values) }],
  };
}

test('before any sample nothing is said', () => {
  expect(new FlatWatch(2).isFlat(60_000)).toBe(false);
});

test('two seconds of one value are flat, and a little less is not', () => {
  const watch = new FlatWatch(2);
  watch.add(heights(Array.from({ length: 20 }, () => 0.01)));
  expect(watch.isFlat(1900)).toBe(false);
  watch.add(heights([0.01], 20));
  expect(watch.isFlat(2000)).toBe(true);
});

test('a movement ends it at once', () => {
  const watch = new FlatWatch(2);
  watch.add(heights([...Array.from({ length: 30 }, () => 0), 0.02]));
  expect(watch.isFlat(3000)).toBe(false);
});

test('samples that stay away for two seconds are flat too', () => {
  const watch = new FlatWatch(2);
  watch.add(heights([0, 0.05]));
  expect(watch.isFlat(2099)).toBe(false);
  expect(watch.isFlat(2100)).toBe(true);
});

test('one channel that moves is movement', () => {
  const watch = new FlatWatch(2);
  const still = heights(Array.from({ length: 40 }, () => 0));
  const moving = {
    quantity: 'angle',
    axis: null,
    unit: 'rad',
    samples: Float64Array.from({ length: 40 }, (_, i) => i),
  } as const;
  watch.add({ ...still, channels: [...still.channels, moving] });
  expect(watch.isFlat(3900)).toBe(false);
});

test('whatever came before, two constant seconds are flat, and flat means that the last two seconds stayed within the band', () => {
  const height = fc.integer({ min: 0, max: 8 }).map((step) => step * 0.0001);
  fc.assert(
    fc.property(
      fc.array(height, { minLength: 1, maxLength: 80 }),
      height,
      fc.integer({ min: 1, max: 7 }),
      (before, last, size) => {
        const watch = new FlatWatch(2);
        const all = [...before, ...Array.from({ length: 22 }, () => last)];
        for (let from = 0; from < all.length; from += size) {
          const block = heights(all.slice(from, from + size), from);
          watch.add(block);
          const seen = all.slice(0, from + block.channels[0].samples.length);
          const recent = seen.slice(-21);
          if (watch.isFlat(block.hostTimeMs)) expect(Math.max(...recent) - Math.min(...recent)).toBeLessThan(0.00031);
        }
        expect(watch.isFlat((1000 * (all.length - 1)) / rateHz)).toBe(true);
      },
    ),
    runs(200, 2000),
  );
});
