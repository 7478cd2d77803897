import { expect, test } from 'vitest';
import type { PacketNumbering } from '../../../packages/sensors/src/loss/packet.ts';
import { measureRateHz } from '../../../packages/sensors/src/loss/rate-measure.ts';
import { completeMs, type SentStream, sentPacket } from '../../support/sent-stream.ts';

const bare: PacketNumbering = { counter: null, ticks: null, samplesPerPacket: 2, nominalRateHz: null };

function measured(
  numbering: PacketNumbering,
  numbers: readonly number[],
  lateMs: (number: number) => number = () => 0,
): number | undefined {
  const sent: SentStream = { numbering, samplesPerPacket: 2, rateHz: 50, firstPacket: 14, firstTicks: 65_000 };
  let nowMs = 0;
  const packets = numbers.map((number) => {
    nowMs = Math.max(nowMs, completeMs(sent, number) + lateMs(number));
    return sentPacket(sent, number, nowMs);
  });
  return measureRateHz(packets, numbering);
}

const all = Array.from({ length: 60 }, (_, i) => i);
const gappy = all.filter((i) => i % 7 !== 3);

test('from arrivals alone, late ones do not count', () => {
  expect(measured(bare, all)).toBeCloseTo(50, 9);
  expect(measured(bare, all, (i) => [0, 9, 31][i % 3])).toBeCloseTo(50, 9);
});

test('with a counter, what is lost does not count as slow, whatever it counts', () => {
  expect(measured({ ...bare, counter: { counts: 'packets', modulus: 16 } }, gappy)).toBeCloseTo(50, 9);
  expect(measured({ ...bare, counter: { counts: 'samples', modulus: 64 } }, gappy)).toBeCloseTo(50, 9);
  expect(
    measured({ ...bare, counter: { counts: 'packets', modulus: 16 } }, [0, 1, 3, 2, 2, ...all.slice(4)]),
  ).toBeCloseTo(50, 9);
});

test('a clock of the device comes before the arrivals', () => {
  const ticks = { modulus: 65_536, tickS: 1e-4 };
  expect(measured({ ...bare, ticks }, gappy, (i) => 2 * i)).toBeCloseTo(50, 6);
});

test('what spans no time tells no rate', () => {
  expect(measured(bare, [])).toBeUndefined();
  expect(measured(bare, [3])).toBeUndefined();
});
