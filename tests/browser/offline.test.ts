import { FRAME_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { profileTest } from './support/browser-test.ts';
import { UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, goToFirstSet, openStart, sayEnd, startSet, waitForResult } from './support/journey.mjs';

profileTest(
  'after the first visit everything works without the server',
  async ({ page, context, origin, endServer }) => {
    await openStart(page, origin);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await endServer();
    await expect(fetch(origin)).rejects.toThrow();
    // pages that were not opened before, the worker among them, come from what was kept at the first visit
    await goToFirstSet(page, origin, { pace: UNWATCHED_PACE });
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await endRest(page);
    await startSet(page, 'right', { placement: 'heel' });
    await sayEnd(page, 'right');
    await waitForResult(page);
    await context.setOffline(true);
    await page.getByText(FRAME_WORDS.offline.text).waitFor();
    await page.reload();
    await waitForResult(page);
  },
);
