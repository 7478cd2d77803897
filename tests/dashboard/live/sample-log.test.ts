import type { SampleBlock } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SampleLog } from '../../../apps/dashboard/src/live/sample-log.ts';
import { runs } from '../../support/runs.ts';

function block(from: number, count: number): SampleBlock {
  const samples = (factor: number): Float64Array => Float64Array.from({ length: count }, (_, i) => factor * (from + i));
  return {
    firstIndex: from,
    deviceTimesS: samples(0.01),
    hostTimeMs: 10 * from,
    channels: [
      { quantity: 'heel-height', axis: null, unit: 'm', samples: samples(2) },
      { quantity: 'acceleration', axis: 'z', unit: 'm/s2', samples: samples(-1) },
    ],
  };
}

test('blocks of any size give one group with all samples in order', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 3000 }), { maxLength: 8 }), (sizes) => {
      const log = new SampleLog();
      let from = 0;
      for (const size of sizes) {
        log.add(block(from, size));
        from += size;
      }
      const { timesS, channels } = log.group();
      const whole = block(0, from);
      expect(log).toHaveLength(from);
      expect(timesS).toEqual(whole.deviceTimesS);
      if (sizes.length > 0)
        expect(channels.map(({ samples }) => samples)).toEqual(whole.channels.map(({ samples }) => samples));
    }),
    runs(40, 300),
  );
});

test('a group that was taken stays as it is while more samples come', () => {
  const log = new SampleLog();
  log.add(block(0, 4000));
  const taken = log.group();
  log.add(block(4000, 4000));
  expect(taken.timesS).toEqual(block(0, 4000).deviceTimesS);
  expect(taken.channels[0].samples).toEqual(block(0, 4000).channels[0].samples);
});

test('a block is given back as the group that the counter takes', () => {
  const one = block(0, 3);
  expect(new SampleLog().add(one)).toEqual({ timesS: one.deviceTimesS, channels: one.channels });
});

test('the time of the newest sample is known, and is zero before there is one', () => {
  const log = new SampleLog();
  expect(log.lastS).toBe(0);
  log.add(block(0, 51));
  expect(log.lastS).toBe(0.5);
});

test('as one block it has its units, and before any sample it is not there', () => {
  const log = new SampleLog();
  expect(log.whole()).toBeUndefined();
  log.add(block(0, 2));
  log.add(block(2, 3));
  const whole = log.whole();
  expect(whole?.deviceTimesS).toEqual(block(0, 5).deviceTimesS);
  expect(whole?.channels).toEqual(block(0, 5).channels);
});

test('a block without times of the device is refused', () => {
  expect(() => new SampleLog().add({ ...block(0, 2), deviceTimesS: null })).toThrow(RangeError);
});

test('a block that came too late lies where it belongs, and views from before stay as they are', () => {
  const log = new SampleLog();
  log.add(block(0, 10));
  log.add(block(14, 6));
  const before = log.group();
  log.add({ ...block(10, 4), isLate: true });
  log.add(block(20, 4000));
  expect(log.group().timesS).toEqual(block(0, 4020).deviceTimesS);
  expect(log.whole()?.channels).toEqual(block(0, 4020).channels);
  expect(before.timesS).toHaveLength(16);
  expect(before.channels[0].samples[10]).toBe(28);
});
