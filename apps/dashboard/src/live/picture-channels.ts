import type { BlockChannel, ChannelNature, SensorQuantity, SourceQuantity } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** A channel that is drawn: its place among those of the sensor, its name, and the least stretch of values that it is drawn in. */
export interface PictureChannel {
  readonly index: number;
  readonly label: string;
  readonly unit: string;
  /** in the unit; ours, so that a sensor at rest lies flat */
  readonly leastSpan: number;
}

/** Decimals that a value is shown with, in the SI unit of its quantity; ours: finer than it matters. */
export const shownDecimals: Readonly<Record<SourceQuantity, number>> = {
  force: 1,
  'heel-height': 3,
  acceleration: 2,
  'angular-velocity': 2,
  torque: 1,
  angle: 3,
  tap: 0,
};

const spans: Readonly<Record<SensorQuantity, number>> = {
  force: 20,
  'heel-height': 0.05,
  acceleration: 2,
  'angular-velocity': 0.5,
  torque: 5,
  angle: 0.2,
};

/** The order in which one is chosen to be drawn. */
const order: readonly SensorQuantity[] = [
  'force',
  'torque',
  'heel-height',
  'acceleration',
  'angular-velocity',
  'angle',
];

/** What a channel is called: its quantity, and its axis where it has one. */
export function channelName({ quantity, axis }: Pick<BlockChannel, 'quantity' | 'axis'>): string {
  const name = HELD_WORDS[quantity].text;
  return axis === null ? name : fill(HELD_WORDS.along, { quantity: name, axis });
}

/** All channels of the quantity that a picture shows: three at most. */
export function pictureChannels(channels: readonly ChannelNature[]): PictureChannel[] {
  const quantity = order.find((wanted) => channels.some((channel) => channel.quantity === wanted));
  return channels.flatMap((channel, index) =>
    channel.quantity === quantity
      ? [{ index, label: channelName(channel), unit: channel.unit, leastSpan: spans[channel.quantity] }]
      : [],
  );
}
