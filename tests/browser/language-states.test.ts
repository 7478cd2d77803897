import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { isLong } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { cutOff, tooWide } from './support/fits-page.ts';
import { inLanguage } from './support/in-language.mjs';
import { resized } from './support/resized.ts';
import { allStates } from './support/states/all-states.ts';
import { walkList } from './support/states/state.ts';

const phone = { width: 360, height: 740 };
const desk = { width: 1280, height: 900 };

const languages = ['long', 'mirrored'] as const;

/**
 * States that are looked at in a language: by turns one in the one and one in the other, and each in both in the long run. Every state
 * is come to all the same, because one may lead to the next.
 */
function isLookedAt(place: number, language: (typeof languages)[number]): boolean {
  return isLong || languages[place % languages.length] === language;
}

for (const language of languages) {
  browserTest(
    `in the ${language} language states fit a phone, nothing of them is cut off, and left stays left`,
    async ({ page, origin }) => {
      const found: string[] = [];
      let place = 0;
      await inLanguage(page, language, () =>
        walkList(page, origin, allStates, async ({ name }) => {
          place += 1;
          if (!isLookedAt(place, language)) return;
          await resized(page, phone);
          found.push(...[...(await tooWide(page)), ...(await cutOff(page))].map((one) => `${name}: ${one}`));
          found.push(...(await crossedLegs(page)).map((one) => `${name}: ${one}`));
          await resized(page, desk);
          found.push(...(await crossedLegs(page)).map((one) => `${name} (desk): ${one}`));
        }),
      );
      expect(found).toEqual([]);
      expect(place).toBe(allStates.length);
    },
    600_000,
  );
}

/** Pairs of legs that stand beside each other with the right one on the left: a left one and the right one that follows it. */
function crossedLegs(page: Page): Promise<string[]> {
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
