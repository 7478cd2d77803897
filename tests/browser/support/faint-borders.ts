import type { Page } from 'playwright-core';

/**
 * Controls whose edge cannot be told from the paper: a ratio below 3 to 1 between the border, or the ground of what has none, and what
 * lies around it (WCAG 2.2, criterion 1.4.11; relative luminance as it defines it). What cannot be pressed is free of it.
 */
export function faintBorders(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const channels = (colour: string): readonly number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const isClear = (colour: string): boolean => channels(colour)[3] === 0;
    const luminance = (colour: string): number => {
      const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const ratio = (one: string, other: string): number => {
      const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
      return (high + 0.05) / (low + 0.05);
    };
    const around = (element: Element): string => {
      const root = element.getRootNode();
      const parent = element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
      if (parent === null) return getComputedStyle(document.documentElement).backgroundColor;
      const { backgroundColor } = getComputedStyle(parent);
      return isClear(backgroundColor) ? around(parent) : backgroundColor;
    };
    const found = new Set<string>();
    const walk = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) walk(element.shadowRoot);
        if (!element.matches('button, .button, input, select, textarea') || element.matches(':disabled')) continue;
        if (!element.checkVisibility() || element.matches('.plain, [type="file"], [type="checkbox"], [type="radio"]'))
          continue;
        const style = getComputedStyle(element);
        const { backgroundColor } = style;
        const paper = around(element);
        const edges = [
          ...(['top', 'bottom'] as const)
            .filter((edge) => Number.parseFloat(style.getPropertyValue(`border-${edge}-width`)) > 0)
            .map((edge) => style.getPropertyValue(`border-${edge}-color`)),
          ...(isClear(backgroundColor) ? [] : [backgroundColor]),
        ];
        const best = Math.max(1, ...edges.map((edge) => ratio(edge, paper)));
        if (best < 3)
          found.add(`${element.localName} ${(element.textContent ?? '').trim().slice(0, 40)}: ${best.toFixed(2)} to 1`);
      }
    };
    walk(document);
    return [...found];
  });
}
