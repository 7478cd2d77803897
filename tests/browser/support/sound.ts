import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fitsAt } from './result-page.ts';
import { violations } from './violations.ts';

/** Nothing sticks out at three widths, and no rule is broken on light and dark paper. */
export async function isSound(page: Page, name: string): Promise<void> {
  await fitsAt(page, name, 360, 768, 1280);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect([name, colorScheme, await violations(page)]).toEqual([name, colorScheme, []]);
  }
  await page.emulateMedia({ colorScheme: 'light' });
}
