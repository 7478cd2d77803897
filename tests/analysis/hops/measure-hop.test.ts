import { expect, test } from 'vitest';
import { measureHop } from '../../../packages/analysis/src/hops/measure-hop.ts';
import { standardDeviation } from '../../../packages/analysis/src/signal/moments.ts';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';

const constants = { gravityMps2: 9.80665, stiffnessModelU: 0 };
const edge = (atS: number, ownUS = 0.002, sharedUS = 0) => ({ atS, ownUS, sharedUS });
const mass = { massKg: 70, massUKg: 0 };

test('by hand: down at 1, up at 1.25, down at 1.5', () => {
  const hop = measureHop(edge(1), edge(1.25), edge(1.5), mass, constants);
  expect(hop.contactS!.value).toBe(0.25);
  expect(hop.contactS!.u).toBeCloseTo(0.002 * Math.SQRT2, 12);
  expect(hop.flightS!.value).toBe(0.25);
  expect(hop.periodS!.value).toBe(0.5);
  // 9.80665 / 8 / 16 = 0.0766 m
  expect(hop.heightM!.value).toBeCloseTo(0.076_614, 6);
  expect(hop.ratio!.value).toBe(1);
  expect(hop.stiffnessNpm!.value).toBeCloseTo(18_201.8, 0);
});

test('uncertainties are the scatter of hops whose edges err', () => {
  const random = createRandom(7);
  const u = 0.002;
  const drawn = Array.from({ length: 4000 }, () =>
    measureHop(
      edge(1 + u * gaussian(random)),
      edge(1.22 + u * gaussian(random)),
      edge(1.45 + u * gaussian(random)),
      mass,
      constants,
    ),
  );
  const exact = measureHop(edge(1), edge(1.22), edge(1.45), mass, constants);
  for (const name of ['contactS', 'flightS', 'periodS', 'heightM', 'ratio', 'stiffnessNpm'] as const) {
    const scatter = standardDeviation(Float64Array.from(drawn, (hop) => hop[name]!.value));
    expect(Math.abs(exact[name]!.u / scatter - 1)).toBeLessThan(0.05);
  }
});

test('what all landings share leaves the period alone and stays in contact and flight', () => {
  const hop = measureHop(edge(1, 0, 0.01), edge(1.25, 0, 0), edge(1.5, 0, 0.01), mass, constants);
  expect(hop.periodS!.u).toBe(0);
  expect(hop.contactS!.u).toBeCloseTo(0.01, 12);
  expect(hop.flightS!.u).toBeCloseTo(0.01, 12);
});

test('mass and model are in the stiffness', () => {
  const wide = measureHop(
    edge(1, 0),
    edge(1.25, 0),
    edge(1.5, 0),
    { massKg: 70, massUKg: 2.8 },
    { ...constants, stiffnessModelU: 0.03 },
  );
  expect(wide.stiffnessNpm!.u / wide.stiffnessNpm!.value).toBeCloseTo(0.05, 12);
});

test('a missing edge or mass leaves out what needs it, and nothing else', () => {
  const first = measureHop(null, edge(1.25), edge(1.5), mass, constants);
  expect([first.contactS, first.periodS, first.ratio, first.stiffnessNpm]).toEqual([null, null, null, null]);
  expect(first.heightM!.value).toBeGreaterThan(0);
  const unseen = measureHop(edge(1), null, edge(1.5), mass, constants);
  expect([unseen.contactS, unseen.flightS, unseen.heightM]).toEqual([null, null, null]);
  expect(unseen.periodS!.value).toBe(0.5);
  expect(measureHop(edge(1), edge(1.25), edge(1.5), undefined, constants)).toMatchObject({ stiffnessNpm: null });
});
