import type { Page } from 'playwright-core';

/** Words that begin on one line and end on another without a hyphen: the column is too narrow for what it holds. Fingerprints may. */
export function brokenWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const range = document.createRange();
    const rows = (node: Text, from: number, to: number): number => {
      range.setStart(node, from);
      range.setEnd(node, to);
      return new Set([...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top)))
        .size;
    };
    const look = (node: Text): void => {
      if (rows(node, 0, node.length) < 2) return;
      for (const { 0: word, index } of node.data.matchAll(/(?<![\p{L}\p{N}])\p{L}+(?![\p{L}\p{N}])/gu)) {
        const lines = rows(node, index, index + word.length);
        if (lines > 1) found.add(`${word} (${lines} lines): ${node.data.trim().replaceAll(/\s+/g, ' ').slice(0, 60)}`);
      }
    };
    const walk = (root: Node): void => {
      for (const child of root.childNodes) {
        if (child instanceof Text) look(child);
        if (!(child instanceof Element) || !child.checkVisibility()) continue;
        walk(child);
        if (child.shadowRoot !== null) walk(child.shadowRoot);
      }
    };
    walk(document.body);
    return [...found];
  });
}
