import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { Stand } from './support/states/state.ts';

browserTest(
  'nothing of a visit stands on the page of another one, where an answer to it would be kept',
  async ({ page, origin }) => {
    const stand = new Stand(page, origin);
    await stand.open();
    await stand.visit('plan-locked', 'plan-step');
    const { plan } = await stand.seeded();
    const left = await page.locator('visit-page').evaluate(async (element, visitId) => {
      const shown = element as HTMLElement & { visitId: string; updateComplete: Promise<boolean> };
      const before = shown.shadowRoot!.querySelectorAll('.step, .who').length;
      shown.visitId = visitId;
      // the store has not answered by then
      await shown.updateComplete;
      return { before, after: shown.shadowRoot!.querySelectorAll('.step, .who').length };
    }, plan);
    expect(left).toEqual({ before: 2, after: 0 });
    await page.locator('plan-step').waitFor();
  },
);
