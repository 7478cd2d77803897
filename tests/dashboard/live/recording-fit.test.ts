import { expect, test } from 'vitest';
import { fits } from '../../../apps/dashboard/src/live/recording-fit.ts';
import { heelSet } from '../../support/heel-set.ts';

test('a recording of the heel fits the heel and nothing else', () => {
  const trace = { groups: [heelSet(1)] };
  const places = ['heel', 'foot', 'trunk', 'platform'] as const;
  expect(places.filter((placement) => fits(trace, placement))).toEqual(['heel']);
});

test('a recording whose columns differ in length fits nowhere', () => {
  const [channel] = heelSet(1).channels;
  const short = { timesS: heelSet(1).timesS, channels: [{ ...channel, samples: new Float64Array(3) }] };
  expect(fits({ groups: [short] }, 'heel')).toBe(false);
});
