import { HAND_SWITCH_WORDS, HAND_WORDS, READY_WORDS, STEP_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { waitForEnding } from './support/journey.mjs';
import { beginTrial } from './support/pulls.mjs';
import { fitsAt } from './support/result-page.ts';
import { Stand } from './support/states/state.ts';
import { violations } from './support/violations.ts';

/** Where the middle of a thing stands across the page, from 0 at the left to 1 at the right. */
async function across(page: Page, selector: string): Promise<number> {
  const box = await page.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`There is no ${selector}.`);
  return (box.x + box.width / 2) / page.viewportSize()!.width;
}

browserTest(
  'one press puts what is pressed on the side of the other thumb, and it stays so',
  async ({ page, origin }) => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await openFirstSet(page, origin, { pace: 40 });
    expect(await across(page, 'set-ready button.main')).toBeGreaterThan(0.5);
    await page.getByRole('button', { name: HAND_SWITCH_WORDS['for-right'].text }).click();
    expect(await across(page, 'set-ready button.main')).toBeLessThan(0.5);
    await page.getByRole('button', { name: HAND_SWITCH_WORDS['for-left'].text }).waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'before a set, left thumb', 360, 768, 1280);
    await page.reload();
    await page.getByRole('radio', { name: HAND_WORDS.source.text }).check();
    await page.getByRole('button', { name: READY_WORDS.begin.text }).click();
    await page.getByRole('button', { name: HAND_WORDS['tap-label'].text }).waitFor();
    expect(await across(page, 'fault-marks')).toBeLessThan(0.5);
    expect(await across(page, 'tap-target')).toBeGreaterThan(0.5);
    await fitsAt(page, 'counting by hand, left thumb', 360, 768, 1280);
    await page.keyboard.press(' ');
    await waitForEnding(page, 'left');
  },
);

browserTest(
  'pushes stand on the side of the thumb, too, and the ways back are one press away on a phone',
  async ({ page, origin }) => {
    const at = new Stand(page, origin);
    await at.open();
    await at.visit('push-ready', 'pull-ready');
    await page.setViewportSize({ width: 360, height: 740 });
    const back = page.getByRole('button', { name: STEP_WORDS.back.text });
    const soreness = page.getByRole('button', {
      name: STEP_WORDS.change.text.replace('{step}', STEP_WORDS.soreness.text),
    });
    await expect.poll(() => soreness.isVisible()).toBe(false);
    // the first question of the page begins on the first screen
    const title = page.locator('pull-ready h1');
    await expect.poll(async () => (await title.boundingBox())?.y).toBeLessThan(370);
    await back.click();
    expect(await soreness.isVisible()).toBe(true);
    expect(await violations(page)).toEqual([]);
    await back.click();
    await page.setViewportSize({ width: 1280, height: 800 });
    await at.visit('push-first', 'pull-between');
    expect(await across(page, 'pull-between button.main')).toBeGreaterThan(0.5);
    await page.getByRole('button', { name: HAND_SWITCH_WORDS['for-right'].text }).click();
    expect(await across(page, 'pull-between button.main')).toBeLessThan(0.5);
    await beginTrial(page, 1);
    expect(await across(page, 'pull-running .notes')).toBeLessThan(0.5);
    await page.evaluate(() => (document.documentElement.dataset['hand'] = 'right'));
    expect(await across(page, 'pull-running .notes')).toBeGreaterThan(0.5);
  },
);
