import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { Stand } from './support/states/state.ts';

/** What is reached of the page of a visit. */
interface Shown extends HTMLElement {
  visitId: string;
  readonly updateComplete: Promise<boolean>;
  readonly book: Record<'personOfVisit' | 'visitAndPast', (of: unknown) => Promise<unknown>>;
}

/** The page of one visit, and the id of another. */
async function twoVisits(page: Page, origin: string): Promise<{ readonly from: string; readonly to: string }> {
  const stand = new Stand(page, origin);
  await stand.open();
  await stand.visit('plan-locked', 'plan-step');
  const { 'plan-locked': from, plan: to } = await stand.seeded();
  return { from, to };
}

browserTest(
  'nothing of a visit stands on the page of another one, where an answer to it would be kept',
  async ({ page, origin }) => {
    const { to } = await twoVisits(page, origin);
    const left = await page.locator('visit-page').evaluate(async (element, visitId) => {
      const shown = element as Shown;
      const parts = (): number => shown.shadowRoot!.querySelectorAll('.step, .who').length;
      const before = parts();
      shown.visitId = visitId;
      // the store has not answered by then
      await shown.updateComplete;
      return { before, after: parts() };
    }, to);
    expect(left).toEqual({ before: 2, after: 0 });
    await page.locator('plan-step').waitFor();
  },
);

browserTest(
  'a visit that is still being read when one goes to another does not come back',
  async ({ page, origin }) => {
    const { from, to } = await twoVisits(page, origin);
    const seen = await page.locator('visit-page').evaluate(async (element, visitId) => {
      const shown = element as Shown;
      const ids: string[] = [];
      const look = (): void => {
        const line = shown.shadowRoot!.querySelector<Element & { visit: { id: string } }>('step-line');
        const id = line?.visit.id ?? 'none';
        if (ids.at(-1) !== id) ids.push(id);
      };
      look();
      // the other visit is there only some pictures after the one that was being read
      const { book } = shown;
      const [read, opened] = [book.personOfVisit.bind(book), book.visitAndPast.bind(book)];
      let isRead: (value?: unknown) => void = () => undefined;
      const wasRead = new Promise((done) => (isRead = done));
      const picture = (): Promise<number> => new Promise((done) => requestAnimationFrame(done));
      book.personOfVisit = (visit) => read(visit).finally(isRead);
      book.visitAndPast = async (id) => {
        const found = await opened(id);
        await wasRead.then(picture).then(picture);
        return found;
      };
      shown.shadowRoot!.querySelector('.step')!.dispatchEvent(new CustomEvent('visit-moved', { bubbles: true }));
      shown.visitId = visitId;
      return new Promise<string[]>((done) => {
        const each = (): void => {
          look();
          if (ids.at(-1) === visitId) done(ids);
          else void Promise.resolve(shown.updateComplete).then(() => requestAnimationFrame(each));
        };
        new MutationObserver(look).observe(shown.shadowRoot!, { childList: true, subtree: true, attributes: true });
        each();
      });
    }, to);
    expect(seen).toEqual([from, 'none', to]);
  },
);
