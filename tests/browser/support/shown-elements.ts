import type { Page } from 'playwright-core';

/** Names of the elements of the dashboard that a page shows, wherever they stand, each once and in the order of the alphabet. */
export function shownElements(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        if (element.localName.includes('-') && element.checkVisibility()) found.add(element.localName);
      }
    };
    walk(document);
    return [...found].sort();
  });
}
