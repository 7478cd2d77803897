import { SUMMARY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, sayEnd, startSet, waitForResult, words } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

interface StoppedBody {
  readonly setId: string;
  readonly liveCount: number;
}

interface ResultBody {
  readonly setId: string;
  readonly report: { readonly placement: string; readonly count: { readonly attempted: number } };
}

browserTest('the count on the screen is that of the final pass, or the result says the difference', async (given) => {
  const { page, origin } = given;
  // below the page the counts of every placement are held to the final pass
  for (const [left, right, seed] of inRun(
    [['foot', 'platform', 22]] as const,
    [
      ['foot', 'heel', 21],
      ['trunk', 'platform', 22],
    ] as const,
  )) {
    await openFirstSet(page, origin, { seed, pace: UNWATCHED_PACE });
    for (const [side, placement] of [
      ['left', left],
      ['right', right],
    ] as const) {
      await startSet(page, side, { placement });
      await sayEnd(page, side);
      if (side === 'left') await endRest(page);
    }
    await waitForResult(page);
    const stopped = (await storedBodies<StoppedBody>(page, 'set-stopped')).slice(-2);
    const results = (await storedBodies<ResultBody>(page, 'set-result')).slice(-2);
    for (const { setId, liveCount } of stopped) {
      const { placement, count } = results.find((one) => one.setId === setId)!.report;
      expect([placement, count.attempted]).toEqual([placement, expect.any(Number)]);
      expect(count.attempted).toBeGreaterThan(3);
      const side = setId === stopped[0].setId ? 'left' : 'right';
      const said = page.getByText(words(SUMMARY_WORDS['live-differs'])).filter({ hasText: new RegExp(side, 'i') });
      expect([placement, await said.count()]).toEqual([placement, liveCount === count.attempted ? 0 : 1]);
    }
  }
});
