import { hopDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import type { Flight } from '../../../packages/analysis/src/hops/hop.ts';
import { hopList, largestGroup } from '../../../packages/analysis/src/hops/hop-list.ts';

const edge = (atS: number) => ({ atS, ownUS: 0.001, sharedUS: 0 });
const flight = (fromS: number, toS: number): Flight => ({
  takeOff: edge(fromS),
  landing: edge(toS),
  middleS: (fromS + toS) / 2,
});
const regular = (count: number, fromS = 1): Flight[] =>
  Array.from({ length: count }, (_, k) => flight(fromS + 0.45 * k, fromS + 0.45 * k + 0.2));
const inputs = {
  mass: { massKg: 70, massUKg: 0 },
  settings: hopDefaults,
  analysedFrom: 6,
  analysedTo: 20,
  timesWithheld: false,
};

test('the largest group is the series: a practice jump and a step off the platform part it', () => {
  const series = regular(8, 10);
  expect(largestGroup([flight(1, 1.3), ...series, flight(20, 22), flight(22.3, 22.5)], hopDefaults.series)).toEqual(
    series,
  );
  expect(largestGroup([], hopDefaults.series)).toEqual([]);
});

test('a flight seen in two parts is one; a twitch is none', () => {
  const parts = [flight(1, 1.1), flight(1.13, 1.2), flight(1.45, 1.65)];
  const [first, second] = largestGroup(parts, hopDefaults.series);
  expect([first.takeOff!.atS, first.landing!.atS, second.takeOff!.atS]).toEqual([1, 1.2, 1.45]);
  expect(largestGroup([flight(1, 1.02), ...regular(3, 1.3)], hopDefaults.series)).toHaveLength(3);
});

test('the first hop has no contact, the analysed ones are 6 to 20', () => {
  const hops = hopList(regular(25), inputs);
  expect(hops[0]).toMatchObject({ index: 1, contactS: null, reason: 'from-standing', landS: null });
  expect(hops[0].flightS!.value).toBeCloseTo(0.2, 9);
  expect(hops.filter((hop) => hop.analysed).map(({ index }) => index)).toEqual([...Array(15).keys()].map((k) => k + 6));
  expect(hops[7].contactS!.value).toBeCloseTo(0.25, 9);
  expect(hops[7].reason).toBeNull();
});

test('after a stop on the ground a hop has a flight and no contact, and is not analysed', () => {
  const hops = hopList([...regular(8), ...regular(8, 6)], inputs);
  expect(hops[8]).toMatchObject({ contactS: null, reason: 'from-standing', analysed: false });
  expect(hops[9].analysed).toBe(true);
});

test('a missing edge leaves its two hops without times and the others as they are', () => {
  const flights = regular(12);
  flights[7] = { ...flights[7], landing: null };
  const hops = hopList(flights, inputs);
  expect([hops[7].flightS, hops[8].contactS, hops[7].reason, hops[8].reason]).toEqual([null, null, 'gap', 'gap']);
  expect(hops[9].contactS).not.toBeNull();
});

test('withheld times are null in every hop, and none is analysed', () => {
  const hops = hopList(regular(12), { ...inputs, timesWithheld: true });
  expect(
    hops.every((hop) => hop.contactS === null && hop.flightS === null && !hop.analysed && hop.reason === 'not-seen'),
  ).toBe(true);
});
