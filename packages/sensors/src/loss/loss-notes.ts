import type { DeviceSummary } from './stream-summary.ts';

/** Names by which the summary stands among the notes of a recording. */
const names = {
  placedBy: 'placed by',
  lossKnowledge: 'loss is',
  timesFrom: 'times from',
  receivedCount: 'samples received',
  lostCount: 'samples lost',
  withoutValueCount: 'samples without a value',
  duplicateCount: 'samples that came twice',
  reorderedCount: 'packets out of order',
  lateCount: 'packets that came too late and were put in place',
  unplacedCount: 'samples without a place',
  refusedPacketCount: 'packets that could not be read',
  disturbanceCount: 'disturbances of the connection',
  restartCount: 'restarts of the device',
  reconnectCount: 'new connections',
  absentS: 'time without connection [s]',
  clockLeapCount: 'leaps of the clock of the device',
  longestGapS: 'longest gap [s]',
  nominalRateHz: 'rate told [Hz]',
  effectiveRateHz: 'rate measured [Hz]',
  effectiveRateUncertaintyHz: 'standard uncertainty of the rate [Hz]',
  driftPpm: 'drift against the host [ppm]',
  driftUncertaintyPpm: 'standard uncertainty of the drift [ppm]',
} as const satisfies Record<keyof DeviceSummary, string>;

/** What became of the samples on their way, as lines "name: value"; what is not known is said to be so. */
export function lossNotes(summary: DeviceSummary): string[] {
  return (Object.keys(names) as (keyof DeviceSummary)[]).map((key) => {
    const value = summary[key];
    const text = typeof value === 'number' ? String(Number(value.toPrecision(9))) : (value ?? 'not known');
    return `${names[key]}: ${text}`;
  });
}
