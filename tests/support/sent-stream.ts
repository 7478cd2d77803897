import type { SampleBlock } from '@surae/sensors';
import type { PacketNumbering, StreamPacket } from '../../packages/sensors/src/loss/packet.ts';

/** A device that sends samples whose value is their number, and what the radio makes of it. */
export interface SentStream {
  readonly numbering: PacketNumbering;
  readonly samplesPerPacket: number;
  /** true rate by the clock of the host [Hz] */
  readonly rateHz: number;
  /** what its counter and its clock stood at when it began [packets, ticks] */
  readonly firstPacket?: number;
  readonly firstTicks?: number;
}

/** The value of a sample in the first channel; the second holds its negative. */
export function valueOf(index: number): number {
  return index + 0.25;
}

/** A packet as the device numbers it, by its place among all that it sent. */
export function sentPacket(sent: SentStream, number: number, arrivedMs: number): StreamPacket {
  const { numbering, samplesPerPacket: n, rateHz, firstPacket = 0, firstTicks = 0 } = sent;
  const { counter, ticks } = numbering;
  const samples = Float64Array.from({ length: n }, (_, i) => valueOf(number * n + i));
  const counted = (firstPacket + number) * (counter?.counts === 'samples' ? n : 1);
  const ticked = ticks === null ? 0 : firstTicks + Math.round((number * n) / rateHz / ticks.tickS);
  return {
    counter: counter === null ? null : counted % counter.modulus,
    deviceTicks: ticks === null ? null : ticked % ticks.modulus,
    hostTimeMs: arrivedMs,
    channels: [
      { quantity: 'force', axis: null, unit: 'N', samples },
      { quantity: 'angle', axis: null, unit: 'rad', samples: samples.map((value) => -value) },
    ],
  };
}

/** When a packet is complete and could arrive at once [ms]. */
export function completeMs({ samplesPerPacket, rateHz }: SentStream, number: number): number {
  return (1000 * (number + 1) * samplesPerPacket) / rateHz;
}

/** What blocks hold: for each place in the stream the number of the sample that was put there, and its time. */
export function placesOf(blocks: readonly SampleBlock[]): { place: number; sample: number; timeS: number }[] {
  return blocks.flatMap(({ firstIndex, deviceTimesS, channels }) =>
    [...channels[0].samples].map((value, i) => {
      const sample = value - 0.25;
      if (channels[1].samples[i] !== -value) throw new Error('The channels of a block are out of step.');
      return { place: firstIndex + i, sample, timeS: deviceTimesS![i] };
    }),
  );
}
