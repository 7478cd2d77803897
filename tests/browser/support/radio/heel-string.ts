import {
  batteryLevel,
  batteryService,
  type OpenSensor,
  openAbout,
  openLayout,
  openSamples,
  openService,
  packetEncoder,
  writeOpenAbout,
} from '@surae/sensors';
import type { PeripheralOptions } from './peripheral.ts';

/** An invented string at the heel that sends the open packet: 100 samples a second in steps of 0.1 mm, 6 in a packet. */
export const heelString: OpenSensor = {
  nominalRateHz: 100,
  channels: [{ quantity: 'heel-height', axis: null, form: 'i16', mantissa: 1, exponent: -4 }],
};
export const heelSamplesPerPacket = 6;

/** The string, with a battery where its charge is given [%]. */
export function heelDevice(batteryPercent?: number): PeripheralOptions {
  return {
    address: 'C0:FF:EE:00:00:05',
    name: 'Invented string',
    services: [
      {
        uuid: openService,
        characteristics: [
          { uuid: openSamples, flags: ['notify'] },
          { uuid: openAbout, flags: ['read'], value: writeOpenAbout(heelString) },
        ],
      },
      ...(batteryPercent === undefined ? [] : [batteryOf(batteryPercent)]),
    ],
  };
}

function batteryOf(percent: number): PeripheralOptions['services'][number] {
  const level = { uuid: batteryLevel, flags: ['read', 'notify'], value: Uint8Array.of(percent) } as const;
  return { uuid: batteryService, characteristics: [level] };
}

/** Height of the heel by the number of the sample, in steps of 0.1 mm: raises of 8 cm each 2 s, and a tremble that marks the place. */
export function heelStepsOf(n: number): number {
  const inCycleS = (n / 100) % 2;
  const rise = inCycleS >= 1.6 ? 0 : 800 * Math.sin((Math.PI * inCycleS) / 1.6) ** 2;
  return Math.round(rise) + (Math.imul(n ^ (n >>> 5), 0x9e3779b1) >>> 29) - 4;
}

export interface HeelRun {
  /** number of the first sample, as the device counts */
  readonly fromCounter?: number;
  /** time of the first sample, by the clock of the device [s] */
  readonly fromS?: number;
  /** by how much that clock is fast [ppm] */
  readonly fastPpm?: number;
}

/** Packets of samples 0, 1, 2 and on; unless told otherwise the counter begins again on the way. */
export function heelPackets(
  count: number,
  { fromCounter = 65_000, fromS = 100, fastPpm = 0 }: HeelRun = {},
): Uint8Array[] {
  const encode = packetEncoder(openLayout(heelString));
  return Array.from({ length: count }, (_, i) => {
    const first = i * heelSamplesPerPacket;
    const heights = Array.from({ length: heelSamplesPerPacket }, (_none, k) => heelStepsOf(first + k) / 1e4);
    return encode({
      counter: fromCounter + first,
      timeS: fromS + (first / 100) * (1 + fastPpm / 1e6),
      channels: [heights],
    });
  });
}
