import type { Page } from 'playwright-core';

/**
 * How the texts of a page are coloured, each way once: the colour of the letters, what they stand on, whether they are large, and for a
 * link what tells it from the text around it. What a contrast rests on, whatever the text says and wherever it stands.
 */
export function textColours(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const parentOf = (element: Element): Element | null => {
      const root = element.getRootNode();
      return element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
    };
    /** Every ground and every veil from here to the paper: whatever of them shows through. */
    const grounds = new Map<Element, string>();
    const groundOf = (element: Element): string => {
      const known = grounds.get(element);
      if (known !== undefined) return known;
      const { backgroundColor, backgroundImage, opacity, filter, mixBlendMode } = getComputedStyle(element);
      const parent = parentOf(element);
      const under = parent === null ? '' : groundOf(parent);
      const isBare = backgroundColor === 'rgba(0, 0, 0, 0)' && backgroundImage === 'none';
      const isSolid = backgroundColor.startsWith('rgb(') && backgroundImage === 'none';
      const isVeiled = opacity !== '1' || filter !== 'none' || mixBlendMode !== 'normal';
      const own = isBare ? '' : `${backgroundColor} ${backgroundImage}`;
      const veil = isVeiled ? `veil ${opacity} ${filter} ${mixBlendMode}` : '';
      // a solid ground hides what lies under it, but not where it is veiled itself or lies within a veil
      const hides = isSolid && !isVeiled && !under.includes('veil');
      const ground = hides ? own : [veil, own, under].filter((part) => part !== '').join(' on ');
      grounds.set(element, ground);
      return ground;
    };
    const isText = (node: Node): boolean => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '';
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        const isField = element.matches('input, textarea, select');
        if (!isField && ![...element.childNodes].some(isText)) continue;
        if (!element.checkVisibility({ visibilityProperty: true })) continue;
        const { color, fontSize, fontWeight, textShadow, textDecorationLine } = getComputedStyle(element);
        // large text may be fainter: from 18 pt, or from 14 pt where it is bold (WCAG 2.2, criterion 1.4.3)
        const size = Number.parseFloat(fontSize) / (4 / 3);
        const isLarge = size >= 18 || (size >= 14 && Number(fontWeight) >= 700);
        const parent = parentOf(element);
        const around =
          element.matches('a, [role="link"]') && parent !== null
            ? `${textDecorationLine} in ${getComputedStyle(parent).color}`
            : '';
        const off = element.matches(':disabled, [aria-disabled="true"]') ? 'off' : '';
        found.add([color, groundOf(element), isLarge ? 'large' : '', textShadow, around, off].join(' | '));
      }
    };
    walk(document);
    return [...found];
  });
}
