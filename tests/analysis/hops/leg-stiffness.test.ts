import { expect, test } from 'vitest';
import { legStiffness } from '../../../packages/analysis/src/hops/leg-stiffness.ts';

const g = 9.80665;

/** Force of half a sine with the impulse of the weight, integrated twice step by step: nothing of the formula is in here. */
function byIntegration(massKg: number, contactS: number, flightS: number): number {
  const steps = 200_000;
  const dt = contactS / steps;
  const peakN = (massKg * g * (flightS + contactS) * Math.PI) / (2 * contactS);
  let speed = (-g * flightS) / 2;
  let height = 0;
  let deepest = 0;
  for (let i = 0; i < steps; i++) {
    const a = (peakN * Math.sin((Math.PI * (i + 0.5)) / steps)) / massKg - g;
    height += speed * dt + (a * dt * dt) / 2;
    speed += a * dt;
    deepest = Math.min(deepest, height);
  }
  // it leaves as it came
  expect(speed).toBeCloseTo((g * flightS) / 2, 6);
  return peakN / -deepest;
}

test('by hand: 70 kg, a quarter of a second down and a quarter up', () => {
  // 70 pi 0.5 / (0.0625 (0.5 / pi - 0.0625)) = 109.9557 / (0.0625 x 0.0966549) = 18202 N/m
  expect(legStiffness(70, 0.25, 0.25).stiffnessNpm).toBeCloseTo(18_201.8, 0);
});

test('is the peak of half a sine over the depth that it makes, integrated step by step', () => {
  for (const [mass, contact, flight] of [
    [70, 0.25, 0.25],
    [55, 0.18, 0.35],
    [95, 0.35, 0.1],
  ] as const) {
    const expected = byIntegration(mass, contact, flight);
    expect(Math.abs(legStiffness(mass, contact, flight).stiffnessNpm / expected - 1)).toBeLessThan(1e-6);
  }
});

test('of a true spring that carries weight it tells the stiffness to 3 %', () => {
  for (const perKg of [130, 200, 330]) {
    for (const speed of [0.7, 1.1, 1.6]) {
      // x'' = g - w^2 x with x(0) = 0 and x'(0) = v: back at 0 after (2 / w) (pi - atan(v w / g))
      const w = Math.sqrt(perKg);
      const contact = (2 / w) * (Math.PI - Math.atan((speed * w) / g));
      const found = legStiffness(1, contact, (2 * speed) / g).stiffnessNpm;
      expect(Math.abs(found / perKg - 1)).toBeLessThan(0.03);
    }
  }
});

test('its slopes are those of small changes', () => {
  const h = 1e-6;
  const k = (contact: number, flight: number) => Math.log(legStiffness(70, contact, flight).stiffnessNpm);
  const { perContact, perFlight } = legStiffness(70, 0.24, 0.2);
  expect(perContact).toBeCloseTo((k(0.24 + h, 0.2) - k(0.24 - h, 0.2)) / (2 * h), 4);
  expect(perFlight).toBeCloseTo((k(0.24, 0.2 + h) - k(0.24, 0.2 - h)) / (2 * h), 4);
});

test('refuses a mass or a contact of nothing', () => {
  expect(() => legStiffness(0, 0.2, 0.2)).toThrow('massKg');
  expect(() => legStiffness(70, 0, 0.2)).toThrow('contactS');
  expect(() => legStiffness(70, 0.2, -0.1)).toThrow('flightS');
});
