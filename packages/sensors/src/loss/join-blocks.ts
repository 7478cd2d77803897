import type { SampleBlock } from '../block.ts';

function follows(before: SampleBlock, block: SampleBlock): boolean {
  const count = before.channels[0]?.samples.length ?? 0;
  if (before.isLate === true || block.isLate === true || block.firstIndex !== before.firstIndex + count) return false;
  return (before.deviceTimesS === null) === (block.deviceTimesS === null);
}

function concatenated(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function joined(blocks: readonly SampleBlock[]): SampleBlock {
  const first = blocks[0]!;
  if (blocks.length === 1) return first;
  return {
    firstIndex: first.firstIndex,
    deviceTimesS:
      first.deviceTimesS === null
        ? null
        : concatenated(blocks.map(({ deviceTimesS }) => deviceTimesS ?? new Float64Array(0))),
    hostTimeMs: blocks.at(-1)!.hostTimeMs,
    channels: first.channels.map((channel, k) => ({
      ...channel,
      samples: concatenated(blocks.map(({ channels }) => channels[k]!.samples)),
    })),
  };
}

/** The same samples in fewer blocks: those that follow one another without a hole become one. */
export function joinBlocks(blocks: readonly SampleBlock[]): SampleBlock[] {
  const runs: SampleBlock[][] = [];
  for (const block of blocks) {
    const run = runs.at(-1);
    if (run !== undefined && follows(run.at(-1)!, block)) run.push(block);
    else runs.push([block]);
  }
  return runs.map(joined);
}
