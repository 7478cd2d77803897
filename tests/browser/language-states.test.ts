import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isLong } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { cutOff, tooWide } from './support/fits-page.ts';
import { inLanguage } from './support/in-language.mjs';
import { resized } from './support/resized.ts';
import { allStates } from './support/states/all-states.ts';
import { isLookedAt } from './support/states/stand-ins.ts';
import { neededFor, type State, walkList } from './support/states/state.ts';

const phone = { width: 360, height: 740 };
const desk = { width: 1280, height: 900 };

/** Longer words and the other direction at once: every state is come to one time. The long run looks at each by itself besides. */
const languages = isLong ? (['long-mirrored', 'long', 'mirrored'] as const) : (['long-mirrored'] as const);

for (const language of languages) {
  browserTest(
    `in the ${language} language states fit a phone, nothing of them is cut off, and left stays left`,
    async ({ page, origin }) => {
      const found: string[] = [];
      let looked = 0;
      const isWanted = (place: number): boolean => isLookedAt(allStates[place]);
      const look = async ({ name }: State): Promise<void> => {
        looked += 1;
        await resized(page, phone);
        found.push(...[...(await tooWide(page)), ...(await cutOff(page))].map((one) => `${name}: ${one}`));
        found.push(...(await crossedLegs(page)).map((one) => `${name}: ${one}`));
        await resized(page, desk);
        found.push(...(await crossedLegs(page)).map((one) => `${name} (desk): ${one}`));
      };
      await inLanguage(page, language, () => walkList(page, origin, allStates, look, isWanted));
      expect(found).toEqual([]);
      expect(looked).toBe(allStates.filter(isLookedAt).length);
    },
    600_000,
  );
}

test('of states that are not looked at those are come to that one which is looked at rests on, and no others', () => {
  const state = (name: string, anew = false): State => ({
    name,
    area: 'start',
    reach: () => Promise.resolve(),
    ...(anew && { anew }),
  });
  const states = [state('a', true), state('b'), state('c'), state('d', true), state('e', true), state('f')];
  const namesFor = (wanted: string): string =>
    neededFor(states, (place) => wanted.includes(states[place].name))
      .map(({ name }) => name)
      .join('');
  expect(['c', 'bd', 'e', 'f', 'abcdef', ''].map(namesFor)).toEqual(['abc', 'abd', 'e', 'ef', 'abcdef', '']);
});

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
