const blocks = 'h1, h2, h3, p, li, figcaption, legend, label, [role="img"][aria-label]';

function isShown(element: Element): boolean {
  return element.checkVisibility({ visibilityProperty: true }) && element.closest('[aria-hidden="true"], nav') === null;
}

function textOf(element: Element): string {
  const said = element.getAttribute('role') === 'img' ? element.getAttribute('aria-label') : element.textContent;
  return (said ?? '').replace(/\s+/g, ' ').trim();
}

/**
 * What a page says, block by block in its order, with the parts inside its parts; pictures by their words. Ways to other pages and what
 * is not shown are left out.
 */
export function readableTexts(root: ParentNode): readonly string[] {
  const texts: string[] = [];
  for (const element of root.querySelectorAll('*')) {
    if (!isShown(element)) continue;
    if (element.matches(blocks) && element.parentElement?.closest(blocks) == null) texts.push(textOf(element));
    if (element.shadowRoot !== null) texts.push(...readableTexts(element.shadowRoot));
  }
  return texts.filter((text) => text !== '');
}
