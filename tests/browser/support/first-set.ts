import { noHistory, type SoreSides } from '@surae/casebook';
import { FLOOR, SAFETY_LIST_VERSION } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { browserClock } from '../../../apps/dashboard/src/browser-clock.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { documentsOf } from '../../support/told-visit.ts';
import { openStart } from './journey.mjs';
import { putDocuments } from './stored.ts';

/** Faster than any eye: for a set that runs to its own end while nobody looks. The count is the same for any split of the samples. */
export const UNWATCHED_PACE = 80;

/**
 * Opens a visit whose questions were answered a moment ago at the page from which its first set is started: the documents are
 * those that `goToFirstSet` writes by walking there.
 */
export async function openFirstSet(
  page: Page,
  origin: string,
  {
    sore = { left: 'no', right: 'mid-portion' },
    heelLeverM = 0.05,
    ...choices
  }: { seed?: number; pace?: number; sore?: SoreSides; heelLeverM?: number } = {},
): Promise<void> {
  const store = new MemoryStore();
  const book = new VisitBook(store, browserClock, 'test');
  const person = {
    name: 'Case',
    bodyMassKg: 68,
    heelLeverM,
    sex: 'women',
    birthYear: 1988,
    demo: false,
  } as const;
  const { id: personId } = await book.addPerson(person);
  const id = await book.beginVisit(personId);
  await book.record(id, { kind: 'visit-sore', sore });
  await book.record(id, { kind: 'visit-history', history: noHistory });
  const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
  await book.record(id, { kind: 'visit-safety', safety });
  const choice = { test: 'heel-raise', protocolId: FLOOR.id, from: 'proposed' } as const;
  await book.record(id, { kind: 'visit-choice', choice });
  await openStart(page, origin, choices);
  await putDocuments(page, await documentsOf(store));
  await page.evaluate((hash) => (location.hash = hash), `#/visit/${id}`);
  await page.locator('set-ready').waitFor();
}
