import { isJudgedByHand, type Visit } from '@surae/casebook';
import type { VisitAndPast } from './person-visits.ts';

/** Visits as they were accepted; what counts again by hand comes when a person has judged anything, and not with the first page. */
export async function acceptedVisits(visits: readonly Visit[]): Promise<readonly Visit[]> {
  if (!visits.some(isJudgedByHand)) return visits;
  const { acceptedVisit } = await import('./accepting.ts');
  return visits.map(acceptedVisit);
}

/** The same of a visit with the visits before it. */
export async function acceptedPast(read: VisitAndPast | undefined): Promise<VisitAndPast | undefined> {
  if (read === undefined) return undefined;
  const [visit, ...earlier] = await acceptedVisits([read.visit, ...read.earlier]);
  return { ...read, visit: visit!, earlier };
}
