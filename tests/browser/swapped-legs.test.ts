import { REST_WORDS, SUMMARY_WORDS, SWAP_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, sayEnd, startSet, waitForResult, words } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

const named = (leg: 'left' | 'right', other: 'left' | 'right'): string =>
  fill(SWAP_WORDS.one, { leg: SUMMARY_WORDS[leg].text, other: SUMMARY_WORDS[other].text });

browserTest(
  'a set under the wrong leg gets the name of the other one, in the rest or with the result, and back',
  async (given) => {
    const { page, origin } = given;
    await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await page.getByText(REST_WORDS['next-right'].text).waitFor();
    await page.getByRole('button', { name: named('left', 'right') }).click();
    await page.getByText(words(SWAP_WORDS.done)).waitFor();
    // the leg that comes next is the one that was not tested
    await page.getByText(REST_WORDS['next-left'].text).waitFor();
    expect(await page.getByRole('region', { name: REST_WORDS['first-right'].text }).count()).toBe(1);
    await endRest(page);
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await waitForResult(page);
    const sentence = page.getByText(/^Left did .*, right did .*\.$/);
    const before = await sentence.innerText();
    await page.getByRole('button', { name: SWAP_WORDS.both.text }).click();
    const numbers = (text: string): string[] => text.split(', right').map((part) => part.match(/\d+/g)!.join(' '));
    await expect.poll(async () => numbers(await sentence.innerText())).toEqual(numbers(before).reverse());
    const begun = await storedBodies<{ choice: { side: string }; bytesId: string }>(page, 'set-begun');
    expect(begun.map(({ choice }) => choice.side)).toEqual(['left', 'left']);
    expect(new Set(begun.map(({ bytesId }) => bytesId)).size).toBe(2);
    expect(await storedBodies(page, 'legs-swapped')).toHaveLength(2);
  },
);
