import type { PlacedBy } from './packet-locator.ts';

/** How what was lost is known. */
export type LossKnowledge =
  /** counted by the device itself */
  | 'known'
  /** told from times, or from packets whose number of samples differs */
  | 'estimated'
  /** too little came, or nothing that a loss would show in */
  | 'cannot-tell';

/** What became of the samples of a recording on their way. */
export interface StreamSummary {
  readonly placedBy: PlacedBy;
  readonly lossKnowledge: LossKnowledge;
  /** whether times are those of the device, follow from the number of the sample and a rate, or are when each sample arrived */
  readonly timesFrom: 'device-clock' | 'sample-number' | 'arrival';
  /** samples that came, each counted once */
  readonly receivedCount: number;
  /** samples that are missing; null when nobody can tell */
  readonly lostCount: number | null;
  /** samples that the sensor sent without a value; they are missing too, and not among the lost */
  readonly withoutValueCount: number;
  /** samples that came again and were left out */
  readonly duplicateCount: number;
  /** packets that were overtaken and put in their place */
  readonly reorderedCount: number;
  /** of these, packets that came when their place had been passed over */
  readonly lateCount: number;
  /** samples that came and belong nowhere: of a device that began anew, or too late */
  readonly unplacedCount: number;
  /** how often the device began to count anew */
  readonly restartCount: number;
  readonly reconnectCount: number;
  /** how often the clock of the device left the course of its samples */
  readonly clockLeapCount: number;
  /** longest stretch without samples, by the clock of the device [s] */
  readonly longestGapS: number;
  /** samples a second by the word of the maker [Hz]; null when nobody says */
  readonly nominalRateHz: number | null;
  /** samples a second by the clock of the host, lost ones among them [Hz]; null when too little came */
  readonly effectiveRateHz: number | null;
  /** its standard uncertainty [Hz] */
  readonly effectiveRateUncertaintyHz: number | null;
  /** how much faster the clock of the device runs than that of the host, or its samples come than told; null when too little came [ppm] */
  readonly driftPpm: number | null;
  /** its standard uncertainty [ppm] */
  readonly driftUncertaintyPpm: number | null;
}

/** The same of a device behind a link. */
export interface DeviceSummary extends StreamSummary {
  /** packets that came and could not be read */
  readonly refusedPacketCount: number;
  /** how often bytes were damaged or lost before they were packets */
  readonly disturbanceCount: number;
  /** time without a connection, until samples came again [s] */
  readonly absentS: number;
}
