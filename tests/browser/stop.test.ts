import { REDO_REASONS, TEST_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { startSet, waitForCount, waitForEnding } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

/** A field of another page part that has the focus; it is gone when the set is over. */
function focusForeign(page: Page, tag: 'input' | 'select' | 'textarea'): Promise<void> {
  return page.evaluate((name) => {
    const field = document.createElement(name);
    field.id = 'foreign';
    document.body.append(field);
    field.focus();
  }, tag);
}

const places: Record<string, (page: Page) => Promise<void>> = {
  'the page itself': (page) => page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur()),
  'the stop button': (page) => page.getByRole('button', { name: TEST_WORDS.stop.text }).focus(),
  'a fault button': (page) => page.getByRole('button', { name: TEST_WORDS.hands.text, exact: true }).focus(),
  'a pain button': (page) => page.getByRole('button', { name: 'Pain 7' }).focus(),
  'an input': (page) => focusForeign(page, 'input'),
  'a select': (page) => focusForeign(page, 'select'),
  'a text area': (page) => focusForeign(page, 'textarea'),
};

browserTest('the space bar stops the set whatever has the focus, and does nothing else', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  let stops = 0;
  for (const [place, focus] of Object.entries(places)) {
    await startSet(page, 'left', { placement: 'heel' });
    await waitForCount(page, 1);
    await focus(page);
    await page.keyboard.press(' ');
    await waitForEnding(page, 'left');
    stops += 1;
    expect([place, (await storedBodies(page, 'set-stopped')).length]).toEqual([place, stops]);
    // the key pressed no button, wrote no space and asked nothing
    expect([place, await storedBodies(page, 'set-mark')]).toEqual([place, []]);
    const written = await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('#foreign');
      field?.remove();
      return field?.value ?? '';
    });
    expect([place, written]).toEqual([place, '']);
    await page.getByRole('button', { name: REDO_REASONS.interrupted.text }).click();
  }
  expect(stops).toBe(7);
});

browserTest('the stop button stops with one press, and a double press is one', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 4 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  const button = page.getByRole('button', { name: TEST_WORDS.stop.text });
  const box = (await button.boundingBox())!;
  expect(box.height).toBeGreaterThanOrEqual(72);
  expect(box.width).toBeGreaterThan(1000);
  await button.dblclick();
  await waitForEnding(page, 'left');
  expect(await storedBodies(page, 'set-stopped')).toHaveLength(1);
});

browserTest('faults are kept at once, with their time', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 4 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 2);
  await page.getByRole('button', { name: TEST_WORDS.lean.text, exact: true }).click();
  await page.getByText(/Kept at/).waitFor();
  const [{ mark }] = await storedBodies<{ mark: { criterion: string; atS: number } }>(page, 'set-mark');
  expect(mark.criterion).toBe('lean');
  expect(mark.atS).toBeGreaterThan(1);
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
});
