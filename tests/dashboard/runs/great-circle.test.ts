import fc from 'fast-check';
import { expect, test } from 'vitest';
import { greatCircleM } from '../../../apps/dashboard/src/runs/great-circle.ts';

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});

test('one degree of latitude is 2 pi 6371.0088 / 360 km, by the mean radius of the IUGG: 111.195 km', () => {
  const [here, north] = [
    { latitude: 46, longitude: 7 },
    { latitude: 47, longitude: 7 },
  ];
  expect(greatCircleM(here, north) / 1000).toBeCloseTo(111.195, 3);
});

test('a degree along the 60th parallel is about half of one along the equator, and a quarter of the way round is r pi / 2', () => {
  const along = (latitude: number): number => greatCircleM({ latitude, longitude: 0 }, { latitude, longitude: 1 });
  expect(along(60) / along(0)).toBeCloseTo(0.5, 4);
  const pole = greatCircleM({ latitude: 0, longitude: 33 }, { latitude: 90, longitude: -120 });
  expect(pole).toBeCloseTo((6_371_008.8 * Math.PI) / 2, 3);
});

test('over the line of 180 degrees the short way is taken', () => {
  const m = greatCircleM({ latitude: 0, longitude: 179.5 }, { latitude: 0, longitude: -179.5 });
  expect(m / 1000).toBeCloseTo(111.195, 3);
});

test('a length is the same there and back, never beyond half the way round, and no longer than a way over a third place', () => {
  fc.assert(
    fc.property(place, place, place, (a, b, c) => {
      const m = greatCircleM(a, b);
      expect(m).toBeGreaterThanOrEqual(0);
      expect(m).toBeLessThanOrEqual(6_371_008.8 * Math.PI + 1e-6);
      expect(greatCircleM(b, a)).toBeCloseTo(m, 6);
      expect(m).toBeLessThanOrEqual(greatCircleM(a, c) + greatCircleM(c, b) + 1);
    }),
  );
});
