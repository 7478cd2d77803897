/** A beat begins this long after it was asked for: clicks are put on the audio clock ahead, so that a busy screen delays none [ms]; common practice, no source. */
export const beatAheadMs = 100;

/** How long to wait before asking for the sound again, so that its first click, an up, falls on an up of the beat under way [ms]. */
export function untilUpBeatMs(sinceBeganMs: number, beatsPerMinute: number): number {
  const cycleMs = (2 * 60_000) / beatsPerMinute;
  return (cycleMs - (sinceBeganMs % cycleMs)) % cycleMs;
}
