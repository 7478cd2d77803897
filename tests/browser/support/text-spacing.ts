import type { Page } from 'playwright-core';

/** Spacing that a reader may set: WCAG 2.2, criterion 1.4.12. */
const rule =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }';

/** Looks at the page while its text has the widest spacing that a reader may set, in every part of it. */
export async function withTextSpacing<Seen>(page: Page, look: () => Promise<Seen>): Promise<Seen> {
  await page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    const roots: (Document | ShadowRoot)[] = [];
    const walk = (root: Document | ShadowRoot): void => {
      roots.push(root);
      for (const { shadowRoot } of root.querySelectorAll('*')) if (shadowRoot !== null) walk(shadowRoot);
    };
    walk(document);
    for (const root of roots) root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
    const kept = window as unknown as { tightAgain: () => void };
    kept.tightAgain = () => {
      for (const root of roots) root.adoptedStyleSheets = root.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, rule);
  const seen = await look();
  await page.evaluate(() => (window as unknown as { tightAgain: () => void }).tightAgain());
  return seen;
}
