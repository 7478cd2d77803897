import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { isLong } from '../../support/runs.ts';
import { textColours } from './text-colours.ts';

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly (string | readonly string[])[] }[];
}

/** What of the rules is called in a page that has read them. */
interface Reader {
  readonly run: (context: Document, options: object) => Promise<{ readonly violations: Violation[] }>;
}

/** Only what breaks a rule is told: most of the time went to telling what is well. */
const asked = { resultTypes: ['violations' as const] };

/** Rules that go by the colours of a page; they take more than half of the time of all. */
const colourRules = ['color-contrast', 'link-in-text-block'];

const options = {
  all: asked,
  colours: { ...asked, runOnly: colourRules },
  'all but colours': { ...asked, rules: Object.fromEntries(colourRules.map((rule) => [rule, { enabled: false }])) },
};
type Rules = keyof typeof options;

/** Reads the rules into a page and asks them; there are no frames, and no second page is opened for the sum of it. */
async function readRules(page: Page, rules: Rules): Promise<readonly Violation[]> {
  return (await new AxeBuilder({ page }).setLegacyMode().options(options[rules]).analyze()).violations;
}

/** Asks the rules that a page has read, and nothing beside: a quarter of the time went to making ready for frames. */
function askRules(page: Page, rules: Rules): Promise<readonly Violation[]> {
  return page.evaluate(
    async (given) => (await (globalThis as unknown as { axe: Reader }).axe.run(document, given)).violations,
    options[rules],
  );
}

/** Ways to write an element, and to colour a text, that were asked about in this worker on a page that broke no rule. */
const clean = { ways: new Set<string>(), colours: new Set<string>() };

/**
 * How the elements of a page are written, each way once: what it stands in, its classes, the names of its attributes and the values that
 * rules go by, whether it holds text and is shown; and the paper. What most rules rest on, whatever the text says.
 */
function waysOfWriting(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const paper = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
    const ways = new Set<string>();
    const telling =
      /^(?:role|type|tabindex|lang|aria-(?:hidden|live|expanded|pressed|checked|selected|current|disabled|invalid|haspopup|orientation))$/;
    const walk = (root: ParentNode, under: string): void => {
      for (const element of root.children) {
        const { localName, shadowRoot } = element;
        const attributes = [...element.attributes]
          .map(({ name, value }) => (telling.test(name) || value === '' ? `${name}=${value}` : name))
          .sort();
        const holds = [...element.childNodes].some(
          (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
        );
        const seen = element.checkVisibility() ? '' : 'hidden';
        ways.add(
          [under, localName, element.getAttribute('class') ?? '', ...attributes, holds ? 'text' : '', seen].join(' '),
        );
        if (shadowRoot !== null) walk(shadowRoot, `${paper} ${localName}`);
        walk(element, `${paper} ${localName}`);
      }
    };
    walk(document, paper);
    return [...ways];
  });
}

/**
 * What breaks a rule of WCAG 2.2 A and AA or a good practice, of all rules or of those of colours, as rule: place. The ordinary run asks
 * the rules of colours only where a text is coloured, and the others only where something is written, in a way that this worker has not
 * met on a page that broke none; the long run asks each time.
 */
export async function violations(page: Page, wanted: 'all' | 'colours' = 'all'): Promise<string[]> {
  const ways = wanted === 'all' ? await waysOfWriting(page) : [];
  const colours = await textColours(page);
  const isWrittenAnew = wanted === 'all' && (isLong || ways.some((way) => !clean.ways.has(way)));
  const isColouredAnew = isLong || colours.some((one) => !clean.colours.has(one));
  if (!isWrittenAnew && !isColouredAnew) return [];
  const rules = !isWrittenAnew ? 'colours' : isColouredAnew ? 'all' : 'all but colours';
  const isRead = await page.evaluate(() => 'axe' in globalThis);
  const found = await (isRead ? askRules : readRules)(page, rules);
  if (found.length === 0) {
    if (isWrittenAnew) for (const way of ways) clean.ways.add(way);
    if (isColouredAnew) for (const one of colours) clean.colours.add(one);
  }
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.flat().join(' ')}`));
}
