import { type OpenSensor, openLayout, openSampleCount } from '@surae/sensors';
import { openDevice } from './open-device.ts';
import type { PeripheralOptions } from './peripheral.ts';

export const sixRateHz = 1000;

/** An invented sensor on the foot: specific force and turning rate along three axes. */
const six: OpenSensor = {
  nominalRateHz: sixRateHz,
  channels: (['acceleration', 'angular-velocity'] as const).flatMap((quantity) =>
    (['x', 'y', 'z'] as const).map((axis) => ({ quantity, axis, form: 'i16', mantissa: 1, exponent: -3 }) as const),
  ),
};

export const sixLayout = openLayout(six);

/** As many as fit into the packets of a link that agreed on 247 bytes. */
export const sixPerPacket = openSampleCount(six, 244);

export const sixDevice = (): PeripheralOptions => ({ ...openDevice(), name: 'Invented foot sensor' });

/** A raise every two seconds, the pitch of a foot up to 0.6 rad and back [s, rad]. */
const raiseS = 2;
const pitchRad = 0.3;

/** What a channel reads at a sample, by its number: as the sensor writes it, in thousandths of the SI unit. */
export function sixValue(channel: number, n: number): number {
  const angle = (2 * Math.PI * ((n / sixRateHz) % raiseS)) / raiseS;
  const pitch = pitchRad * (1 - Math.cos(angle));
  const turning = (pitchRad * Math.sin(angle) * 2 * Math.PI) / raiseS;
  const values = [-9.81 * Math.sin(pitch), 0, 9.81 * Math.cos(pitch), 0, turning, 0];
  // a few thousandths that differ from sample to sample, so that none can stand for another
  const own = ((n * 37 + channel * 11) % 41) - 20;
  return Number(`${Math.round(1000 * values[channel]) + own}e-3`);
}
