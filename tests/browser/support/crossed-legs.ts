import type { Page } from 'playwright-core';

/** Pairs of legs that stand beside each other with the right one on the left: a left one and the right one that follows it. */
export function crossedLegs(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const crossed: string[] = [];
    const walk = (root: ParentNode): void => {
      for (const { shadowRoot } of root.querySelectorAll('*')) if (shadowRoot !== null) walk(shadowRoot);
      const marks = [...root.querySelectorAll('.side[data-side]')].filter((one) => one.checkVisibility());
      marks.forEach((right, at) => {
        const left = marks[at - 1];
        if (left?.getAttribute('data-side') !== 'left' || right.getAttribute('data-side') !== 'right') return;
        const [a, b] = [left.getBoundingClientRect(), right.getBoundingClientRect()];
        if (Math.abs(a.top - b.top) < b.height / 2 && a.left > b.left)
          crossed.push(`the right leg stands left of the left one: ${(right.textContent ?? '').trim()}`);
      });
    };
    walk(document);
    return crossed;
  });
}
