import { expect, test } from 'vitest';
import { isLong } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { crossedLegs } from './support/crossed-legs.ts';
import { cutOff, tooWide } from './support/fits-page.ts';
import { inLanguage } from './support/in-language.mjs';
import { resized } from './support/resized.ts';
import { allStates } from './support/states/all-states.ts';
import { isLookedAt } from './support/states/stand-ins.ts';
import { neededFor, type State, walkList } from './support/states/state.ts';

const phone = { width: 360, height: 740 };
const desk = { width: 1280, height: 900 };

/**
 * The long run goes to every state in each language. The ordinary one makes the words of each state longer and turns its direction where
 * it stands (`tests/browser/support/in-other-words.ts`), and opens pages in the languages in `tests/browser/languages.test.ts`.
 */
const languages = isLong ? (['long-mirrored', 'long', 'mirrored'] as const) : [];

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
