import { type OpenSensor, openLayout, openSampleCount, openSamples, openService, packetEncoder } from '@surae/sensors';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import type { PeripheralOptions } from './peripheral.ts';

/** An invented load cell that sends the open packet. */
export const openCell: OpenSensor = {
  nominalRateHz: 500,
  channels: [{ quantity: 'force', axis: null, form: 'i16', mantissa: 1, exponent: -1 }],
};

export const openCellLayout = openLayout(openCell);

/** As many as fit through any Bluetooth link. */
export const samplesPerPacket = openSampleCount(openCell, 20);

export const openPlan: BluetoothPlan = {
  advertised: [openService],
  namePrefix: null,
  streams: [{ service: openService, characteristic: openSamples }],
  targets: [],
};

export function openDevice(): PeripheralOptions {
  return {
    address: 'C0:FF:EE:00:00:03',
    name: 'Invented open cell',
    services: [{ uuid: openService, characteristics: [{ uuid: openSamples, flags: ['notify'] }] }],
  };
}

/** Force of a sample, by its number: no two neighbours are alike [N]. */
export function forceOf(n: number): number {
  return (((n * 37) % 20_000) - 10_000) / 10;
}

export interface OpenRun {
  readonly packetCount: number;
  /** number of the first sample, as the device counts */
  readonly fromCounter: number;
  /** time of the first sample, by the clock of the device [s] */
  readonly fromS: number;
  /** by how much that clock is fast [ppm] */
  readonly fastPpm: number;
}

/** Time between the samples that a device sends, by its own clock [s]. */
export function sampleStepS({ fastPpm }: Pick<OpenRun, 'fastPpm'>): number {
  return (1 + fastPpm / 1e6) / openCell.nominalRateHz!;
}

/** Packets of samples 0, 1, 2 and on. */
export function openPackets(run: OpenRun): Uint8Array[] {
  const encode = packetEncoder(openCellLayout);
  return Array.from({ length: run.packetCount }, (_, i) => {
    const first = i * samplesPerPacket;
    const forces = Array.from({ length: samplesPerPacket }, (_none, k) => forceOf(first + k));
    return encode({
      counter: run.fromCounter + first,
      timeS: run.fromS + first * sampleStepS(run),
      channels: [forces],
    });
  });
}
