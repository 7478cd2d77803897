import { RELIABILITY_TABLES, type ReliabilityEntry } from '@surae/shared';

/** Published repeatability of the count by the protocol that it was taken with. */
const TABLE_OF: Readonly<Record<string, string>> = {
  'single-leg.incline10': 'reliability.repetitions.incline10',
  'single-leg.floor': 'reliability.repetitions.standing',
};

const CAUTIOUS = 'reliability.default.repetitions';

function entryOf(id: string): ReliabilityEntry | undefined {
  return RELIABILITY_TABLES.find((entry) => entry.id === id);
}

/**
 * Published repeatability of a count of repetitions by the same protocol.
 *
 * @param protocolId - id of the protocol that the count was taken with [-]
 * @returns the entry of the table; undefined where nothing was published for it [-]
 *
 * Source: Hébert-Losier (2017), Physiotherapy 103:446; Ross & Fontenot (2000), J Sport Rehabil 9:117
 */
export function publishedCountEntry(protocolId: string): ReliabilityEntry | undefined {
  return entryOf(TABLE_OF[protocolId] ?? '');
}

/**
 * Standard error of measurement of a count of repetitions: the published one of the same protocol, or the one that follows
 * from the cautious detectable change where nothing was published.
 *
 * @param protocolId - id of the protocol that the count was taken with [-]
 * @returns standard error of measurement [repetitions]
 *
 * Source: Hébert-Losier (2017), Physiotherapy 103:446; Ross & Fontenot (2000), J Sport Rehabil 9:117; the change of
 * 1.96 sqrt 2 standard errors: Weir (2005), J Strength Cond Res 19:231
 */
export function countStandardError(protocolId: string): number {
  const published = publishedCountEntry(protocolId)?.standardError;
  return published ?? entryOf(CAUTIOUS)!.detectableChange![0] / (1.96 * Math.SQRT2);
}
