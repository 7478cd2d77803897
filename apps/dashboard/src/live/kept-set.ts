import { BlockCounter, blockCounterDefaults, type Placement, TapList, takeTaps } from '@surae/analysis';
import { decodeBlocks } from '@surae/records';
import { channelsReadAs, type ReadAs } from './read-as.ts';

/** What is left of a set during which the program was closed. */
export interface KeptSet {
  readonly keptS: number;
  readonly count: number;
}

/** Counts a set again from the bytes that were kept, read as they were while it ran. */
export function keptSet(
  pieces: readonly Uint8Array[],
  placement: Placement,
  heelLeverM: number | null,
  readAs?: ReadAs,
): KeptSet {
  const taps = new TapList();
  const counter =
    placement === 'hand'
      ? undefined
      : new BlockCounter(placement, {
          settings: blockCounterDefaults,
          ...(heelLeverM === null ? {} : { heelLeverM }),
        });
  let firstS: number | undefined;
  let lastS = 0;
  for (const { deviceTimesS, channels, isLate } of decodeBlocks(pieces)) {
    // the count passes over what came too late, as it did while the set ran
    if (deviceTimesS === null || deviceTimesS.length === 0 || isLate === true) continue;
    if (counter === undefined) takeTaps(taps, { timesS: deviceTimesS, channels });
    else counter.push({ timesS: deviceTimesS, channels: channelsReadAs(channels, readAs) });
    firstS ??= deviceTimesS[0];
    lastS = deviceTimesS[deviceTimesS.length - 1] ?? lastS;
  }
  counter?.finish();
  return { keptS: firstS === undefined ? 0 : lastS - firstS, count: counter?.state.count ?? taps.count };
}
