import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ankleLever,
  ankleRise,
  heelHeight,
  heelHeightU,
  heelTravel,
  heightFromString,
  stringReading,
  tiltOfHeight,
} from '../../../packages/analysis/src/movement/foot-lever.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
/** Foot of 26 cm: metatarsal heads to heel 18.6 cm, ankle axis 13 cm behind and 7 cm above the metatarsal heads. */
const heelLeverM = 0.186;
const ankle = { lengthM: Math.hypot(0.13, 0.07), angleRad: Math.atan2(0.07, 0.13) };

describe('heel height', () => {
  // Hand calculation: 180 mm times the sine.
  test.each([
    [10, 31.26],
    [20, 61.56],
    [30, 90.0],
    [35, 103.24],
    [40, 115.7],
    [45, 127.28],
  ])('is L sin tilt: %d degrees lift an 18 cm lever by %d mm', (degrees, mm) => {
    expect(Math.abs(heelHeight(rad(degrees), 0, 0.18) * 1000 - mm)).toBeLessThan(0.005);
  });

  test('is zero at rest, wherever rest is', () => {
    expect(heelHeight(rad(-10), rad(-10), 0.18)).toBe(0);
  });

  test('counts from the rest on a board with the toes up', () => {
    expect(Math.abs(heelHeight(rad(20), rad(-10), 0.2) - 0.2 * (0.3420201 + 0.1736482))).toBeLessThan(1e-7);
  });

  test('is undone by the tilt of a height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.5, max: 1.4, noNaN: true }),
        fc.double({ min: -0.3, max: 0, noNaN: true }),
        (tilt, rest) => {
          expect(Math.abs(tiltOfHeight(heelHeight(tilt, rest, 0.18), rest, 0.18) - tilt)).toBeLessThan(1e-9);
        },
      ),
      { seed: 11 },
    );
  });
});

describe('uncertainty of the heel height', () => {
  test('at 30 degrees 1.5 degrees of tilt are 4.08 mm on an 18 cm lever', () => {
    expect(Math.abs(heelHeightU(rad(30), 0, 0.18, rad(1.5), 0) * 1000 - 4.08)).toBeLessThan(0.005);
  });

  test('at 30 degrees 1 cm of lever is 5 mm', () => {
    expect(Math.abs(heelHeightU(rad(30), 0, 0.18, 0, 0.01) - 0.005)).toBeLessThan(1e-9);
  });

  test('at 35 degrees 1.5 degrees and 5 mm of an 18.5 cm lever make 4.9 mm', () => {
    expect(Math.abs(heelHeightU(rad(35), 0, 0.185, rad(1.5), 0.005) * 1000 - 4.9)).toBeLessThan(0.05);
  });

  test('agrees with 20 000 drawn tilts and levers', () => {
    // Slow oracle: propagation by sampling with a small congruential generator (Numerical Recipes constants).
    let state = 1;
    const uniform = (): number => {
      state = (Math.imul(1664525, state) + 1013904223) >>> 0;
      return (state + 0.5) / 4294967296;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let sum = 0;
    let squares = 0;
    for (let draw = 0; draw < 20000; draw++) {
      const height = heelHeight(rad(30) + rad(1.5) * normal(), rad(-10), 0.18 + 0.005 * normal());
      sum += height;
      squares += height * height;
    }
    const sd = Math.sqrt(squares / 20000 - (sum / 20000) ** 2);
    expect(Math.abs(heelHeightU(rad(30), rad(-10), 0.18, rad(1.5), 0.005) / sd - 1)).toBeLessThan(0.03);
  });
});

describe('foot of 26 cm', () => {
  // Rigid-lever arithmetic by hand, one decimal.
  test.each([
    [15, 4.8, 3.1, 10.7, 0.6, 0.65],
    [25, 7.9, 4.8, 8.8, 1.7, 0.62],
    [35, 10.7, 6.2, 6.6, 3.4, 0.58],
    [45, 13.1, 7.1, 4.2, 5.4, 0.54],
  ])(
    'at %d degrees: heel %d cm, ankle %d cm, ankle lever %d cm, heel forward %d cm, ratio %d',
    (degrees, heel, rise, lever, travel, ratio) => {
      const tilt = rad(degrees);
      // 13.15 cm rounds to 13.2 and is tabulated as 13.1, hence the half-digit plus a hair.
      expect(Math.abs(heelHeight(tilt, 0, heelLeverM) * 100 - heel)).toBeLessThan(0.0525);
      expect(Math.abs(ankleRise(tilt, 0, ankle) * 100 - rise)).toBeLessThan(0.0525);
      expect(Math.abs(ankleLever(tilt, ankle) * 100 - lever)).toBeLessThan(0.0525);
      expect(Math.abs(heelTravel(tilt, heelLeverM) * 100 - travel)).toBeLessThan(0.0525);
      expect(Math.abs(ankleRise(tilt, 0, ankle) / heelHeight(tilt, 0, heelLeverM) - ratio)).toBeLessThan(0.0055);
    },
  );
});

describe('string at the heel', () => {
  // Hand calculation with a lever of 18.6 cm.
  test.each([
    [25, 0.1, 1.1],
    [35, 0.1, 2.5],
    [45, 0.1, 4.8],
    [35, 0.3, 1.3],
    [45, 0.3, 2.6],
  ])('at %d degrees a string of %d m over-reads by %d percent', (degrees, restLengthM, percent) => {
    const tilt = rad(degrees);
    const over = stringReading(tilt, heelLeverM, restLengthM) / heelHeight(tilt, 0, heelLeverM) - 1;
    expect(Math.abs(over * 100 - percent)).toBeLessThan(0.055);
  });

  test('is undone by the correction at every tilt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 1.3, noNaN: true }),
        fc.double({ min: 0.14, max: 0.24, noNaN: true }),
        fc.double({ min: 0.08, max: 1.2, noNaN: true }),
        (tilt, lever, restLengthM) => {
          const height = heightFromString(stringReading(tilt, lever, restLengthM), lever, restLengthM);
          expect(Math.abs(height - heelHeight(tilt, 0, lever))).toBeLessThan(1e-9);
        },
      ),
      { seed: 12 },
    );
  });

  test('holds a reading that no tilt can give', () => {
    expect(heightFromString(5, 0.18, 0.1)).toBe(0.18);
  });
});
