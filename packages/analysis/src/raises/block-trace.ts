import { requireSameLength } from '../check.ts';
import { InputError } from '../errors.ts';
import type { Channel, ChannelGroup, Placement, Quantity, Trace } from '../trace.ts';

/** What each placement counts from, the main quantity first. */
const quantities: Readonly<Record<Placement, readonly Quantity[]>> = {
  heel: ['heel-height'],
  foot: ['acceleration', 'angular-velocity'],
  trunk: ['acceleration'],
  platform: ['force'],
  hand: ['tap'],
};

/** The channel on other times, by straight lines between its samples; its ends are held. */
function onTimes(timesS: Float64Array, group: ChannelGroup, channel: Channel): Channel {
  if (group.timesS === timesS) return channel;
  const { samples } = channel;
  const last = group.timesS.length - 1;
  const moved = new Float64Array(timesS.length);
  let next = 0;
  for (let i = 0; i < timesS.length; i++) {
    while (next <= last && group.timesS[next] < timesS[i]) next++;
    if (next === 0) moved[i] = samples[0];
    else if (next > last) moved[i] = samples[last];
    else {
      const fromS = group.timesS[next - 1];
      const share = (timesS[i] - fromS) / (group.timesS[next] - fromS);
      moved[i] = samples[next - 1] + share * (samples[next] - samples[next - 1]);
    }
  }
  return { ...channel, samples: moved };
}

/**
 * What the block counter needs of a recording, as one group on the times of its main quantity: a gyroscope with its own
 * clock is brought onto the times of the accelerometer. Where there are several groups of a quantity the first counts.
 *
 * @param trace - the recording [SI]
 * @param placement - where the sensor sits [-]
 * @returns one group of channels, to be cut into blocks of any size [SI]
 * @throws {@link InputError} `missing-channel` when the main quantity is missing; `length-mismatch` when a channel and its times differ in length
 *
 * Source: ours
 */
export function counterInput(trace: Trace, placement: Placement): ChannelGroup {
  const [main, ...others] = quantities[placement];
  const holds = (quantity: Quantity) => (group: ChannelGroup) =>
    group.timesS.length > 0 && group.channels.some((channel) => channel.quantity === quantity);
  const mainGroup = trace.groups.find(holds(main));
  if (mainGroup === undefined) {
    throw new InputError('missing-channel', { argument: 'trace', expected: main, actual: 'no such channel' });
  }
  const channels = mainGroup.channels.filter((channel) => channel.quantity === main);
  for (const other of others) {
    const group = trace.groups.find(holds(other));
    if (group === undefined) continue;
    for (const channel of group.channels) {
      requireSameLength(group.timesS, channel.samples, 'trace.groups');
      if (channel.quantity === other) channels.push(onTimes(mainGroup.timesS, group, channel));
    }
  }
  for (const channel of channels) requireSameLength(mainGroup.timesS, channel.samples, 'trace.groups');
  return { timesS: mainGroup.timesS, channels };
}
