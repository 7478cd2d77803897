import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../packages/analysis/src/assess/defaults/heel.ts';
import { stringReading } from '../../../packages/analysis/src/movement/foot-lever.ts';
import { heelHeightOf, smoothLevel } from '../../../packages/analysis/src/movement/heel-height.ts';

const timesS = Float64Array.from({ length: 500 }, (_, i) => 7 + i * 0.02);
const tilt = timesS.map((time) => 0.25 * (1 - Math.cos(3 * (time - 7))));
const heel = (samples: Float64Array) =>
  ({ groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] }) as const;

describe('height from a string', () => {
  const reading = tilt.map((angle) => stringReading(angle, 0.18, 0.1));

  test.each([{}, { stringRestLengthM: 0.1 }])(
    'is the reading itself, whatever is known of the string: %j',
    (string) => {
      const found = heelHeightOf(heel(reading), 'heel', { heelLeverM: 0.18, ...string }, heelDefaults);
      expect(found.grid).toMatchObject({ startS: 7, sampleRateHz: 100 });
      expect(Math.abs(found.levelM[100] - reading[50])).toBeLessThan(1e-9);
    },
  );

  test('loses a single spike, and says so', () => {
    const spiked = Float64Array.from(reading);
    spiked[50] = 0.4;
    const found = heelHeightOf(heel(spiked), 'heel', {}, heelDefaults);
    expect(Math.abs(found.levelM[100] - reading[50])).toBeLessThan(0.001);
    expect(found.issues).toMatchObject([{ code: 'spikes', fromS: 8, details: { count: 1 } }]);
  });
});

test('a gap is marked, and listed when it is long', () => {
  const broken = { timesS: Float64Array.of(0, 0.02, 0.04, 0.06, 0.5, 0.52, 0.54, 0.56), parts: new Float64Array(8) };
  const found = heelHeightOf(
    { groups: [{ timesS: broken.timesS, channels: [{ quantity: 'heel-height', axis: null, samples: broken.parts }] }] },
    'heel',
    {},
    heelDefaults,
  );
  expect(found.longGaps).toEqual([{ fromS: 0.06, toS: 0.5 }]);
  expect(found.known[30]).toBe(0);
  expect(found.known[4]).toBe(1);
});

test('a trace without the channel is refused by name', () => {
  expect(() => heelHeightOf({ groups: [] }, 'heel', {}, heelDefaults)).toThrow(/heel-height/);
  expect(() => heelHeightOf(heel(tilt), 'foot', {}, heelDefaults)).toThrow(/acceleration/);
});

test('a level too short for the filter stays as it is', () => {
  expect([...smoothLevel(Float64Array.of(1, 2, 3), 100, 6)]).toEqual([1, 2, 3]);
});
