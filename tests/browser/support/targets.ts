import type { Page } from 'playwright-core';

/** The least target of this product, and what WCAG 2.2 asks of every other (2.5.8) [px]. */
const sizes = { ours: 56, least: 24 };

/**
 * Controls that are too small to be hit: buttons below 56 px, whatever else can be pressed below 24 px. A link in the text of a
 * sentence is as tall as its line; what lies in a label is as large as the label.
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(({ ours, least }) => {
    const found = new Set<string>();
    const pressed =
      'a[href], button, input:not([type="hidden"]), select, textarea, summary, [role="button"], [role="radio"]';
    const boxOf = (control: Element): DOMRect => {
      const label = control.closest('label') ?? (control as HTMLInputElement).labels?.[0];
      return (
        control.matches('[type="checkbox"], [type="radio"]') && label != null ? label : control
      ).getBoundingClientRect();
    };
    const isInText = (control: Element): boolean =>
      control.localName === 'a' &&
      getComputedStyle(control).display === 'inline' &&
      control.parentElement?.localName === 'p';
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        if (!element.matches(pressed) || !element.checkVisibility({ visibilityProperty: true })) continue;
        const { width, height } = boxOf(element);
        if (width <= 1 || isInText(element)) continue;
        const needed = element.localName === 'button' ? ours : least;
        // half a pixel is the rounding of a layout
        if (width < least - 0.5 || height < needed - 0.5) {
          const name = (element.getAttribute('aria-label') ?? element.textContent ?? '').trim().replaceAll(/\s+/g, ' ');
          found.add(`${element.localName} "${name.slice(0, 30)}" ${Math.round(width)} x ${Math.round(height)}`);
        }
      }
    };
    walk(document);
    return [...found];
  }, sizes);
}

/** Whatever moves by itself, or would take time to change, on a page that was asked for less movement. */
export function moving(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const lasts = (durations: string): boolean => durations.split(',').some((one) => Number.parseFloat(one) > 0);
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        if (!element.checkVisibility()) continue;
        const { transitionDuration, animationDuration, animationName, animationTimingFunction } =
          getComputedStyle(element);
        if (lasts(transitionDuration)) found.add(`${element.localName}: a transition of ${transitionDuration}`);
        // marks that take turns change at once, and nothing moves
        const jumps = animationTimingFunction.startsWith('steps');
        if (animationName !== 'none' && lasts(animationDuration) && !jumps)
          found.add(`${element.localName}: ${animationName}`);
      }
    };
    walk(document);
    return [...found];
  });
}
