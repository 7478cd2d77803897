import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly (string | readonly string[])[] }[];
}

/** What of the rules is called in a page that has read them. */
interface Rules {
  readonly run: (context: Document, options: object) => Promise<{ readonly violations: Violation[] }>;
}

/** Only what breaks a rule is told: most of the time went to telling what is well. */
const asked = { resultTypes: ['violations' as const] };

/** Reads the rules into a page and asks them; there are no frames, and no second page is opened for the sum of it. */
async function readRules(page: Page, rules?: string[]): Promise<readonly Violation[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options(asked);
  return (await (rules === undefined ? axe : axe.withRules(rules)).analyze()).violations;
}

/** Asks the rules that a page has read, and nothing beside: a quarter of the time went to making ready for frames. */
function askRules(page: Page, rules?: string[]): Promise<readonly Violation[]> {
  const options = rules === undefined ? asked : { ...asked, runOnly: rules };
  return page.evaluate(
    async (given) => (await (globalThis as unknown as { axe: Rules }).axe.run(document, given)).violations,
    options,
  );
}

/** What breaks a rule of WCAG 2.2 A and AA or a good practice, of all rules or of those named, as rule: place. */
export async function violations(page: Page, rules?: string[]): Promise<string[]> {
  const isRead = await page.evaluate(() => 'axe' in globalThis);
  const found = await (isRead ? askRules : readRules)(page, rules);
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.flat().join(' ')}`));
}
