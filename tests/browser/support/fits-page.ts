import type { Page } from 'playwright-core';

/** Widths that the page is held to [px]: a phone, a tablet, a desk. */
export const widths = [360, 768, 1280] as const;

/** Innermost things that stick out of the page, where the page scrolls sideways. */
export function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const sticksOut = (element: Element): boolean => {
      const { left, right } = element.getBoundingClientRect();
      return right > clientWidth + 1 || left < -1;
    };
    const innermost = (root: ParentNode): string[] =>
      [...root.children].flatMap((element) => {
        const inside = [...innermost(element), ...(element.shadowRoot === null ? [] : innermost(element.shadowRoot))];
        if (inside.length > 0 || !sticksOut(element)) return inside;
        const { width } = element.getBoundingClientRect();
        return [`${element.localName}.${element.getAttribute('class') ?? ''} (${Math.round(width)})`];
      });
    return [`${scrollWidth} > ${clientWidth}`, ...new Set(innermost(document))];
  });
}

/** Text that is not whole: hidden behind the edge of what holds it, or standing out of the button that it names. */
export function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const textOf = (element: Element): string =>
      (element.textContent ?? '').trim().replaceAll(/\s+/g, ' ').slice(0, 60);
    // what only a screen reader is to find is a pixel wide
    const isSeen = (element: HTMLElement): boolean => element.checkVisibility() && element.clientWidth > 2;
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll<HTMLElement>('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        if (!(element instanceof HTMLElement) || textOf(element) === '' || !isSeen(element)) continue;
        const { overflowX, overflowY } = getComputedStyle(element);
        const hides = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
        const { scrollWidth, clientWidth, scrollHeight, clientHeight } = element;
        if (hides(overflowX) && scrollWidth > clientWidth + 1) found.add(`${element.localName}: ${textOf(element)}`);
        if (hides(overflowY) && scrollHeight > clientHeight + 1) found.add(`${element.localName}: ${textOf(element)}`);
        if (element.matches('button, summary, a') && overflowX === 'visible' && scrollWidth > clientWidth + 1) {
          if (getComputedStyle(element).display !== 'inline')
            found.add(`${element.localName} (out): ${textOf(element)}`);
        }
      }
    };
    walk(document);
    return [...found];
  });
}
