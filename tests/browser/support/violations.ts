import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/**
 * What breaks a rule of WCAG 2.2 A and AA or a good practice, of all rules or of those named, as rule: place. The rules are read
 * into a page once, and only what breaks one comes back: most of the time went to reading them again and to telling what is well.
 */
export async function violations(page: Page, rules?: string[]): Promise<string[]> {
  const isRead = await page.evaluate(() => 'axe' in globalThis);
  // there are no frames: all of it runs in the page, and no second page is opened for the sum of it
  const axe = new AxeBuilder(isRead ? { page, axeSource: 'void 0' } : { page }).setLegacyMode();
  axe.options({ resultTypes: ['violations'] });
  const { violations: found } = await (rules === undefined ? axe : axe.withRules(rules)).analyze();
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.flat().join(' ')}`));
}
