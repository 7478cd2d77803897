import { HAND_WORDS, READY_WORDS, REST_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { sayEnd, startSet, waitForCount, waitForEnding } from './support/journey.mjs';

browserTest(
  'a presenter starts a set, counts it by hand and stops it, and nothing of it reloads the page',
  async ({ page, origin }) => {
    await openFirstSet(page, origin, { pace: 40 });
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.getByRole('radio', { name: HAND_WORDS.source.text }).check();
    // arrows belong to the choice that has the focus, the page keys do not
    const target = page.getByRole('button', { name: HAND_WORDS['tap-label'].text });
    for (let press = 0; press < 30 && !(await target.isVisible()); press += 1) {
      await page.keyboard.press('PageDown');
      // as a hand does it: the page has moved before the next press
      await page.waitForTimeout(400);
    }
    await target.waitFor();
    for (const key of ['PageDown', 'ArrowRight', 'PageDown', 'PageDown']) await page.keyboard.press(key);
    expect(await waitForCount(page, 4)).toBe(4);
    await page.keyboard.press('PageUp');
    expect(await page.locator('count-display output').textContent()).toBe('3');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('F5');
    await page.keyboard.press('Escape');
    expect(await page.locator('count-display output').textContent()).toBe('2');
    // wherever the focus is
    await page.getByRole('button', { name: 'Pain 3', exact: true }).click();
    await page.keyboard.press('PageDown');
    expect(await page.locator('count-display output').textContent()).toBe('3');
    await page.keyboard.press('b');
    await waitForEnding(page, 'left');
    await page.getByText(HAND_WORDS['ended-with'].text.replace('{count}', '3')).waitFor();
    // the main button cannot be pressed before why it ended was said, and a rest is not cut short
    for (let press = 0; press < 3; press += 1) await page.keyboard.press('PageDown');
    await waitForEnding(page, 'left');
    await sayEnd(page, 'left');
    await page.getByRole('button', { name: REST_WORDS['end-early'].text }).waitFor();
    for (let press = 0; press < 3; press += 1) await page.keyboard.press('PageDown');
    expect(await page.getByRole('button', { name: REST_WORDS['end-early'].text }).isVisible()).toBe(true);
  },
);

browserTest(
  'with a sensor the forward key of a presenter does nothing, and its dark screen stops the set',
  async ({ page, origin }) => {
    await openFirstSet(page, origin, { pace: 8 });
    await page.getByRole('radio', { name: READY_WORDS.simulated.text }).check();
    await startSet(page, 'left');
    await waitForCount(page, 2);
    for (const key of ['PageDown', 'ArrowRight', 'PageUp', 'F5', 'Escape']) await page.keyboard.press(key);
    const before = await waitForCount(page, 2);
    expect(await waitForCount(page, before + 1)).toBeGreaterThan(before);
    await page.keyboard.press('.');
    await waitForEnding(page, 'left');
  },
);
