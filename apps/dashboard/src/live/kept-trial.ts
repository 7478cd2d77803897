import { decodeBlocks } from '@surae/records';

/** Time of the last whole sample that was written of a stream, in its own times; undefined when there is none [s]. */
export function lastKeptS(pieces: readonly Uint8Array[]): number | undefined {
  return (
    decodeBlocks(pieces)
      .map(({ deviceTimesS }) => deviceTimesS?.at(-1))
      .filter((timeS) => timeS !== undefined)
      // a block that came too late is not the last
      .reduce<number | undefined>((last, timeS) => Math.max(last ?? timeS, timeS), undefined)
  );
}
