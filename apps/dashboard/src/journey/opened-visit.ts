import { type OwnErrorsInUse, ownErrorsInUse, type Person, type Visit } from '@surae/casebook';
import type { AuditTrail } from '../clinic/audit-trail.ts';
import type { VisitBook } from './visit-book.ts';

/** A visit as it is read when its page is opened, with what is read once beside it. */
export interface OpenedVisit {
  readonly visit: Visit;
  readonly person: Person | undefined;
  /** visits of this person before it, the oldest first */
  readonly earlier: readonly Visit[];
  readonly own: OwnErrorsInUse;
}

/** Opens a visit, and writes that its person was opened; undefined where there is none of this id. */
export async function openedVisit(
  book: Pick<VisitBook, 'visitAndPast' | 'ownErrors'>,
  audit: Pick<AuditTrail, 'personOpened'> | undefined,
  id: string,
): Promise<OpenedVisit | undefined> {
  const [read, own] = await Promise.all([book.visitAndPast(id), book.ownErrors()]);
  if (read === undefined) return undefined;
  // written when all is read: what reads meanwhile would wait for it
  void audit?.personOpened(read.visit.personId);
  return { ...read, own: ownErrorsInUse(own) };
}
