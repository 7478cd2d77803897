import { RELIABILITY_TABLES, type ReliabilityEntry } from '@surae/shared';

/** Published repeatability of the greatest force by protocol and placement; another set-up has none. */
const TABLE_OF: Readonly<Record<string, string>> = {
  'isometric.seated on platform': 'reliability.peak-force.seated',
};

/**
 * Published repeatability of the greatest force by the same protocol on the same kind of sensor: a plate also reads the leg
 * that rests on it, so that its error is no error of a cell.
 *
 * @param protocolId - id of the protocol that the force was taken with [-]
 * @param placement - where the sensor was; undefined is not known [-]
 * @returns the entry of the table; undefined where nothing was published for it [-]
 *
 * Source: Glaied & Whiteley (2025), Int J Sports Phys Ther 20:253
 */
export function publishedForceEntry(protocolId: string, placement: string | undefined): ReliabilityEntry | undefined {
  const id = TABLE_OF[`${protocolId} on ${placement ?? ''}`];
  return RELIABILITY_TABLES.find((entry) => entry.id === id);
}
