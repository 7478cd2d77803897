import {
  END_CHOICES,
  ENDING_WORDS,
  HISTORY_WORDS,
  READY_WORDS,
  REST_WORDS,
  SAFETY_WORDS,
  SORENESS_WORDS,
  START_WORDS,
} from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { waitForCount } from './support/journey.mjs';

/** Presses Tab until something has the focus. */
async function tabTo(page: Page, place: Locator): Promise<void> {
  await place.waitFor();
  for (let presses = 0; presses < 120; presses += 1) {
    await page.keyboard.press('Tab');
    if (await place.evaluate((element) => (element.getRootNode() as Document).activeElement === element)) return;
  }
  throw new Error(`Tab never came to ${String(place)}.`);
}

/** The one of a group that Tab comes to. */
function stopOf(group: Locator): Locator {
  return group.locator('[role="radio"][tabindex="0"]');
}

async function press(page: Page, place: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, place);
  await page.keyboard.press(key);
}

browserTest(
  'a visit is gone through by the keyboard alone, from the first page to the rest',
  async ({ page, origin }) => {
    const button = (name: string): Locator => page.getByRole('button', { name, exact: true });
    await page.goto(`${origin}/?seed=4&pace=16`);
    await press(page, button(`${START_WORDS.begin.text}: Mirela Haddad`));
    // who does not see the page is told which one it is, and how far along
    const arrived = page.locator('app-shell p.unseen[role="status"]').first();
    await expect.poll(() => arrived.textContent()).toBe('Soreness, step 1 of 12');
    for (const side of ['left', 'right'] as const) {
      const leg = page.getByRole('group', { name: SORENESS_WORDS[side].text });
      await press(page, leg.getByRole('button', { name: SORENESS_WORDS.no.text, exact: true }), 'Space');
    }
    await press(page, button(SORENESS_WORDS['go-on'].text));
    await press(page, button(HISTORY_WORDS['go-on-open'].text));
    // each line comes into view as it is reached
    const boxes = page.getByRole('checkbox');
    await boxes.first().waitFor();
    for (const box of await boxes.all()) await tabTo(page, box);
    await page.getByText(SAFETY_WORDS['all-seen'].text).waitFor();
    await press(page, button(SAFETY_WORDS.none.text));
    await press(page, page.locator('choice-step button.take').first());
    await press(page, button(READY_WORDS.begin.text));
    await waitForCount(page, 3);
    await page.keyboard.press('Space');
    await page.getByRole('heading', { name: ENDING_WORDS['title-left'].text }).waitFor();
    await press(page, stopOf(page.getByRole('radiogroup').first()), 'Space');
    // within a group of chips the arrows go on
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    expect(await page.getByRole('radio', { name: END_CHOICES.fatigue.text, exact: true }).isVisible()).toBe(true);
    for (const legend of [ENDING_WORDS.pain.text, ENDING_WORDS.exertion.text]) {
      await press(page, stopOf(page.getByRole('radiogroup', { name: legend })), 'Space');
    }
    await press(page, button(ENDING_WORDS.accept.text));
    await expect.poll(() => arrived.textContent()).toBe('Rest, step 7 of 12');
    // its time is its name as well
    await page.getByRole('timer', { name: /^\d:\d\d$/ }).waitFor();
    await press(page, button(REST_WORDS['end-early'].text));
    await page.getByRole('heading', { name: READY_WORDS['title-right'].text }).waitFor();
  },
);
