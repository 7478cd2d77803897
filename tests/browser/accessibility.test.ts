import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { walkStates } from './support/states.mjs';

/** What breaks a rule of WCAG 2.2 A and AA or a good practice, as rule: place. */
async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.flat().join(' ')}`));
}

/** Widest thing that does not fit into the page, where the page scrolls sideways. */
function tooWide(page: Page): Promise<string | null> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return null;
    const all = (root: ParentNode): Element[] =>
      [...root.querySelectorAll('*')].flatMap((element) => [
        element,
        ...(element.shadowRoot === null ? [] : all(element.shadowRoot)),
      ]);
    const out = all(document).filter((element) => element.getBoundingClientRect().right > clientWidth + 1);
    return `${scrollWidth} > ${clientWidth}: ${out.map((element) => element.localName + (element.className ? `.${element.className}` : '')).join(', ')}`;
  });
}

browserTest('no page or state breaks a rule of accessibility, on light and on dark paper', async ({ page, origin }) => {
  const found: string[] = [];
  let looks = 0;
  await walkStates(page, origin, async (name) => {
    looks += 1;
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      found.push(...(await violations(page)).map((what) => `${name} (${colorScheme}): ${what}`));
    }
    await page.emulateMedia({ colorScheme: 'light' });
  });
  expect(found).toEqual([]);
  expect(looks).toBeGreaterThan(20);
});

browserTest('text of twice the size fits a page of 360 pixels', async ({ page, origin }) => {
  const found: string[] = [];
  await walkStates(page, origin, async (name) => {
    await page.setViewportSize({ width: 360, height: 740 });
    for (const size of ['100%', '200%']) {
      await page.evaluate((wanted) => (document.documentElement.style.fontSize = wanted), size);
      const problem = await tooWide(page);
      if (problem !== null) found.push(`${name} at ${size}: ${problem}`);
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await page.setViewportSize({ width: 1280, height: 900 });
  });
  expect(found).toEqual([]);
});
