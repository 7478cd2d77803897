/**
 * Standard uncertainty of a height apart from an error that all heights of a set share in proportion, such as that of the
 * lever: in a ratio of two heights the shared part cancels.
 *
 * @param heightUM - standard uncertainty with everything in it, >= 0 [m]
 * @param heightM - the height [m]
 * @param commonRelativeU - relative standard uncertainty of the shared part, >= 0 [-]
 * @returns what is left; 0 when the shared part is all of it [m]
 *
 * Source: JCGM 100:2008 (GUM), clause 5.2 (correlated input quantities)
 */
export function ownUncertainty(heightUM: number, heightM: number, commonRelativeU: number): number {
  return Math.sqrt(Math.max(0, heightUM ** 2 - (commonRelativeU * heightM) ** 2));
}
