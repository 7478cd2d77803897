import { describe, expect, test } from 'vitest';
import type { PacketNumbering, StreamPacket } from '../../../packages/sensors/src/loss/packet.ts';
import { PacketLocator } from '../../../packages/sensors/src/loss/packet-locator.ts';
import { streamSettings } from '../../../packages/sensors/src/loss/stream-settings.ts';

/** Ten packets a second of ten samples. */
const numbering: PacketNumbering = {
  counter: { counts: 'packets', modulus: 16 },
  ticks: null,
  samplesPerPacket: 10,
  nominalRateHz: 100,
};

function packet(counter: number | null, hostTimeMs: number, deviceTicks: number | null = null): StreamPacket {
  return { counter, deviceTicks, hostTimeMs, channels: [] };
}

/** Places of packets, each accepted at once. */
function located(of: PacketNumbering, packets: readonly StreamPacket[]) {
  const locator = new PacketLocator(of, 100, 10, streamSettings);
  const places = packets.map((one) => {
    const place = locator.locate(one, 10);
    if (place !== undefined) locator.accept(place, one.hostTimeMs);
    return place;
  });
  return { locator, places };
}

const steady = (count: number): StreamPacket[] => Array.from({ length: count }, (_, i) => packet(i % 16, 100 * i));

describe('by a counter', () => {
  test('its numbers go on when they begin again', () => {
    const { places, locator } = located(numbering, steady(40));
    expect(places.map((place) => place?.position)).toEqual(Array.from({ length: 40 }, (_, i) => i));
    expect(locator.spanS).toBeCloseTo(1.6, 9);
    expect([locator.placedBy, locator.unitsPerSample, locator.quantum]).toEqual(['counter', 0.1, 16]);
  });

  test('a number behind is an overtaken packet, up to a quarter of all numbers', () => {
    const after = (counter: number, hostTimeMs: number) =>
      located(numbering, [...steady(50), packet(counter, hostTimeMs)]).places.at(-1)?.position;
    // 49 = 1 modulo 16 was the newest
    expect(after(0, 4910)).toBe(48);
    expect(after(14, 4910)).toBe(46);
    expect(after(4, 5200)).toBe(52);
    // nine ahead within a moment: more than can have been sent
    expect(after(10, 4910)).toBeUndefined();
    expect(after(10, 5800)).toBe(58);
  });

  test('after a silence longer than half of its numbers it is not sure, and what comes next tells how many were lost', () => {
    const { places, locator } = located(numbering, [...steady(50), packet(4, 6900)]);
    expect(places.at(-1)).toMatchObject({ position: 52, isSure: false });
    expect(locator.missingQuanta(1.7)).toBe(1);
    expect(locator.missingQuanta(0.9)).toBe(0);
    expect(locator.missingQuanta(3.3)).toBe(2);
    locator.shift(16);
    expect(locator.locate(packet(5, 7000), 10)).toMatchObject({ position: 69, isSure: true });
  });
});

test('a longer clock tells how often a counter began again', () => {
  const both = { ...numbering, ticks: { modulus: 1_000_000, tickS: 1e-3 } };
  const { places, locator } = located(both, [
    ...Array.from({ length: 40 }, (_, i) => packet(i % 16, 100 * i, (999_000 + 100 * i) % 1_000_000)),
    packet(4, 10_000, 9000),
  ]);
  expect(places.at(-1)).toEqual({ position: 100, length: 1, ticks: 1_009_000, isSure: true });
  expect(locator.spanS).toBe(1000);
});

test('a clock that begins again sooner than the counter is counted on by it', () => {
  const both = {
    ...numbering,
    counter: { counts: 'samples', modulus: 65_536 },
    ticks: { modulus: 256, tickS: 1e-3 },
  } as const;
  const { places } = located(both, [packet(0, 0, 250), packet(10, 100, 94), packet(50, 500, 750 % 256)]);
  expect(places.map((place) => [place?.position, place?.ticks])).toEqual([
    [0, 250],
    [10, 350],
    [50, 750],
  ]);
});

test('by its clock alone, in ticks', () => {
  const timed = { ...numbering, counter: null, ticks: { modulus: 1000, tickS: 1e-3 } };
  const { places, locator } = located(timed, [packet(null, 0, 900), packet(null, 100, 0), packet(null, 300, 200)]);
  expect(places.map((place) => [place?.position, place?.length])).toEqual([
    [900, 100],
    [1000, 100],
    [1200, 100],
  ]);
  expect([locator.placedBy, locator.unitsPerSample]).toEqual(['device-time', 10]);
});

test('without numbers, one after the other, and not sure after a silence', () => {
  const bare = { ...numbering, counter: null };
  const { places, locator } = located(bare, [
    ...Array.from({ length: 30 }, (_, i) => packet(null, 100 * i)),
    packet(null, 3500),
  ]);
  expect(places.map((place) => place?.position)).toEqual(Array.from({ length: 31 }, (_, i) => 10 * i));
  expect(places.map((place) => place?.isSure)).toEqual([...new Array<boolean>(30).fill(true), false]);
  expect(locator.missingQuanta(0.5)).toBe(50);
  expect(locator.missingQuanta(0.004)).toBe(0);
  expect(locator.spanS).toBe(0);
});

test('a packet without the number that it should have belongs nowhere', () => {
  expect(located(numbering, [packet(null, 0)]).places).toEqual([undefined]);
});
