import type { Page } from 'playwright-core';
import { lengthened } from '../../../apps/dashboard/src/language/pseudo.ts';

/** What a page keeps while its words are longer, so that they come back as they were. */
interface Kept {
  readonly texts: Text[];
  readonly words: string[];
  backToOwnWords?: () => void;
}

/**
 * Looks at a page while all its words are about 40 % longer and it is read from the right, as in the language of nobody that
 * `tests/browser/language-states.test.ts` goes through: nothing is opened anew for it. What comes from the store is longer here as well.
 */
export async function inOtherWords<Seen>(page: Page, look: () => Promise<Seen>): Promise<Seen> {
  const words = await page.evaluate(() => {
    const texts: Text[] = [];
    const walk = (root: Node): void => {
      for (const child of root.childNodes) {
        if (child instanceof Text && child.data.trim() !== '') texts.push(child);
        if (!(child instanceof Element) || child.localName === 'style') continue;
        walk(child);
        if (child.shadowRoot !== null) walk(child.shadowRoot);
      }
    };
    walk(document.body);
    const kept: Kept = { texts, words: texts.map(({ data }) => data) };
    Object.assign(window, { kept });
    return kept.words;
  });
  await page.evaluate((longer) => {
    const { kept } = window as unknown as { kept: Kept };
    const { dir } = document.documentElement;
    document.documentElement.dir = 'rtl';
    // what the page has written since is left as it is
    const put = (from: readonly string[], to: readonly string[]): void =>
      kept.texts.forEach((text, at) => {
        if (text.data === from[at]) text.data = to[at];
      });
    put(kept.words, longer);
    kept.backToOwnWords = () => {
      put(longer, kept.words);
      document.documentElement.dir = dir;
    };
  }, words.map(lengthened));
  const seen = await look();
  await page.evaluate(() => (window as unknown as { kept: Kept }).kept.backToOwnWords?.());
  return seen;
}
