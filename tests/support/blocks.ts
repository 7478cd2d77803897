import type { ChannelGroup } from '@surae/analysis';

/** A recording cut into blocks of the given lengths, which are used again and again until it ends. */
export function cutIntoBlocks(group: ChannelGroup, sizes: readonly number[]): ChannelGroup[] {
  const blocks: ChannelGroup[] = [];
  let from = 0;
  for (let i = 0; from < group.timesS.length; i++) {
    const to = from + sizes[i % sizes.length];
    blocks.push({
      timesS: group.timesS.slice(from, to),
      channels: group.channels.map((channel) => ({ ...channel, samples: channel.samples.slice(from, to) })),
    });
    from = to;
  }
  return blocks;
}

/** One column of heights at a rate, as the heel placement has it. */
export function heelRecording(heightAt: (timeS: number) => number, lengthS: number, rateHz: number): ChannelGroup {
  const count = Math.round(lengthS * rateHz) + 1;
  const timesS = Float64Array.from({ length: count }, (_, i) => i / rateHz);
  return { timesS, channels: [{ quantity: 'heel-height', axis: null, samples: timesS.map(heightAt) }] };
}
