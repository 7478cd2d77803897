import type { Page } from 'playwright-core';

/**
 * Controls of a page that Tab does not come to, and those that it would come to out of their order. Of a group of radios, or of
 * chips or a row of tools that the arrows go through, one is enough. What takes the focus by itself, such as a heading, is no control.
 */
export function tabStops(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const pressed =
      'a[href], button:not([disabled]), input:not([disabled]):not([type="hidden"]), select:not([disabled]), textarea:not([disabled]), summary, [role="radio"]';
    const nameOf = (element: Element): string =>
      `${element.localName} "${(element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 40)}"`;
    const isReached = (element: Element): boolean => (element as HTMLElement).tabIndex >= 0;
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        // a number above 0 would come before everything that stands ahead of it
        if (element instanceof HTMLElement && element.tabIndex > 0) faults.push(`out of order: ${nameOf(element)}`);
        if (!element.matches(pressed) || !element.checkVisibility({ visibilityProperty: true })) continue;
        const group = element.closest('[role="radiogroup"], [role="group"], [role="toolbar"], fieldset');
        const like = element.matches('[role="radio"]')
          ? '[role="radio"]'
          : group?.matches('[role="toolbar"]')
            ? 'button'
            : undefined;
        const others = like === undefined ? [] : [...(group?.querySelectorAll(like) ?? [])];
        if (!isReached(element) && !others.some(isReached)) faults.push(`not reached: ${nameOf(element)}`);
      }
      // what is moved by the style alone is read in another order than it is seen
      for (const element of root.querySelectorAll('*')) {
        if (!element.checkVisibility()) continue;
        const { order, flexDirection } = getComputedStyle(element);
        if (order !== '0' || flexDirection.endsWith('reverse')) faults.push(`moved by its style: ${nameOf(element)}`);
      }
    };
    walk(document);
    return faults;
  });
}
