// The counter that runs while samples arrive: microseconds for one instant with all its channels.
import { BlockCounter, counterInput, blockCounterDefaults as settings } from '@surae/analysis';
import { simulateSet } from '@surae/simulation';
import { medianMs } from './final-pass.mjs';
import { makeFootSet } from './foot-set.mjs';

function cut({ timesS, channels }, size) {
  const blocks = [];
  for (let from = 0; from < timesS.length; from += size) {
    blocks.push({
      timesS: timesS.subarray(from, from + size),
      channels: channels.map((channel) => ({ ...channel, samples: channel.samples.subarray(from, from + size) })),
    });
  }
  return blocks;
}

/** A signal at its own rate brought to 1000 Hz by straight lines, so that every placement is timed at the same rate. */
function atThousandHz({ timesS, channels }) {
  const startS = timesS[0];
  const count = Math.floor((timesS[timesS.length - 1] - startS) * 1000);
  const grid = Float64Array.from({ length: count }, (_, i) => startS + i / 1000);
  const moved = channels.map((channel) => {
    let next = 1;
    const samples = grid.map((timeS) => {
      while (timesS[next] < timeS) next += 1;
      const share = (timeS - timesS[next - 1]) / (timesS[next] - timesS[next - 1]);
      return channel.samples[next - 1] + share * (channel.samples[next] - channel.samples[next - 1]);
    });
    return { ...channel, samples };
  });
  return { timesS: grid, channels: moved };
}

function count(placement, blocks) {
  const counter = new BlockCounter(placement, { settings });
  const raises = blocks.flatMap((block) => counter.push(block));
  return [...raises, ...counter.finish()];
}

/** Times each placement in blocks of 50 samples after proving that blocks of 1 and of all give the same. */
export function benchBlockCore({ repeats = 9 } = {}) {
  return ['heel', 'foot', 'trunk', 'platform'].map((placement) => {
    const group =
      placement === 'foot'
        ? makeFootSet().trace.groups[0]
        : atThousandHz(counterInput(simulateSet({ placement, level: 'typical', seed: 5, count: 20 }).trace, placement));
    const whole = JSON.stringify(count(placement, [group]));
    for (const size of [1, 50]) {
      if (JSON.stringify(count(placement, cut(group, size))) !== whole)
        throw new Error(`${placement}: blocks of ${size} differ`);
    }
    const blocks = cut(group, 50);
    const spentMs = medianMs(() => count(placement, blocks), repeats);
    return {
      placement,
      channels: group.channels.length,
      microsecondsPerSample: (1000 * spentMs) / group.timesS.length,
    };
  });
}

if (import.meta.url === `file://${process.argv[1]}`) console.log(benchBlockCore());
