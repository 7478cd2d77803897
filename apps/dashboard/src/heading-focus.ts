import type { LitElement } from 'lit';

function headingOf(element: Element): HTMLElement | undefined {
  const inside = element.shadowRoot;
  const own = inside?.querySelector('h1');
  if (own) return own;
  for (const child of inside?.querySelectorAll('*') ?? []) {
    const found = child.localName.includes('-') ? headingOf(child) : undefined;
    if (found) return found;
  }
  return undefined;
}

/**
 * Takes whoever reads with the ear, or goes by the keyboard, to the heading of a page, however deep in the elements that it
 * is made of; to the page itself where it has none. Tells the frame (`page-arrived`) that says so: a screen reader that stood on what
 * was pressed, which is gone, moves along with the focus and says nothing of it.
 */
export async function focusHeading(page: Element): Promise<void> {
  if (page.localName.includes('-')) {
    await customElements.whenDefined(page.localName);
    await (page as LitElement).updateComplete;
  }
  const heading = headingOf(page) ?? (page as HTMLElement);
  heading.setAttribute('tabindex', '-1');
  heading.focus();
  heading.dispatchEvent(new Event('page-arrived', { bubbles: true, composed: true }));
}
