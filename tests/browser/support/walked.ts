import type { Page } from 'playwright-core';
import { isLong } from '../../support/runs.ts';
import { tooWide } from './fits-page.ts';
import { violations } from './violations.ts';

const narrow = { width: 360, height: 740 };
const wide = { width: 1280, height: 900 };

type Walk = (page: Page, origin: string, look: (name: string) => Promise<void>) => Promise<void>;

/** Everything that breaks a rule in any state of a walk, and the states; on the dark paper too where that is asked, and in the long run. */
export async function walked(
  page: Page,
  origin: string,
  walk: Walk,
  dark = isLong,
): Promise<{ found: string[]; states: string[] }> {
  const found: string[] = [];
  const states: string[] = [];
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await walk(page, origin, async (name) => {
    states.push(name);
    const add = (where: string, what: string[]): number =>
      found.push(...what.map((one) => `${name} (${where}): ${one}`));
    add('light', await violations(page));
    if (dark) {
      await page.emulateMedia({ colorScheme: 'dark' });
      // the other paper changes colours and nothing else
      add('dark', await violations(page, ['color-contrast', 'link-in-text-block']));
      await page.emulateMedia({ colorScheme: 'light' });
    }
    await page.setViewportSize(narrow);
    for (const size of ['100%', '200%']) {
      await page.evaluate((wanted) => (document.documentElement.style.fontSize = wanted), size);
      add(`360 px at ${size}`, await tooWide(page));
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await page.setViewportSize(wide);
  });
  return { found, states };
}
