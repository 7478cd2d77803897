import { READY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';

browserTest('nothing lies over the cautions before a set, wherever one has scrolled to', async (given) => {
  const { page, origin } = given;
  await openFirstSet(page, origin);
  await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
  for (const viewport of [
    { width: 360, height: 740 },
    { width: 740, height: 360 },
    { width: 768, height: 1024 },
    { width: 1280, height: 720 },
  ]) {
    await page.setViewportSize(viewport);
    const lines = page.locator('set-ready section li, set-ready section p');
    expect(await lines.count()).toBeGreaterThan(3);
    // at each place of the page: the lines in view of which some point in view is covered by something else
    const covered = await lines.evaluateAll((elements) => {
      const hidden = new Set<string>();
      const shown = new Set<Element>();
      const innermost = (x: number, y: number): Element | null => {
        let hit = document.elementFromPoint(x, y);
        while (hit?.shadowRoot) {
          const inner = hit.shadowRoot.elementFromPoint(x, y);
          if (inner === null || inner === hit) break;
          hit = inner;
        }
        return hit;
      };
      for (let top = 0; top < document.documentElement.scrollHeight; top += 60) {
        scrollTo(0, top);
        for (const element of elements) {
          const { left, width, top: above, bottom } = element.getBoundingClientRect();
          if (above < 0 || bottom > innerHeight) continue;
          shown.add(element);
          for (const y of [above + 2, (above + bottom) / 2, bottom - 2]) {
            const hit = innermost(left + width / 2, y);
            if (!element.contains(hit)) hidden.add(element.textContent.trim());
          }
        }
      }
      return { hidden: [...hidden], unseen: elements.filter((element) => !shown.has(element)).length };
    });
    expect(covered, JSON.stringify(viewport)).toEqual({ hidden: [], unseen: 0 });
  }
});
