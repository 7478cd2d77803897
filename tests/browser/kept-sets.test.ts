import { readFileSync } from 'node:fs';
import { readRecordingJson } from '@surae/records';
import { KEEP_WORDS, SENSOR_WORDS, STORE_ERRORS } from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { isLong } from '../support/runs.ts';
import { killBrowser } from './support/browser.mjs';
import { browserTest, profileTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import {
  endRest,
  keptOfCutOff,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
} from './support/journey.mjs';
import { reads } from './support/read-fault.ts';
import { storedSet } from './support/sensors.ts';
import { storedBodies } from './support/stored.ts';

// every run kills a browser during a set and one while a store writes
if (isLong)
  profileTest('a browser that is killed after a visit still has the whole visit', async (given) => {
    const { page, context, origin, profile, reopen } = given;
    await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
    for (const side of ['left', 'right'] as const) {
      await startSet(page, side, { placement: 'heel' });
      await sayEnd(page, side);
      if (side === 'left') await endRest(page);
    }
    await waitForResult(page);
    const address = page.url();
    const results = await storedBodies(page, 'set-result');
    await killBrowser(profile, context);
    const again = await reopen();
    await again.goto(address);
    await waitForResult(again);
    expect(await storedBodies(again, 'set-result')).toEqual(results);
  });

browserTest('a set that is cut off can be done again, and is kept', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 2);
  await page.reload();
  await keptOfCutOff(page, 'left');
  await page.getByRole('button', { name: KEEP_WORDS.redo.text }).click();
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  expect(await storedBodies(page, 'set-begun')).toHaveLength(2);
  expect(await storedBodies(page, 'set-aside')).toHaveLength(1);
});

browserTest('a set that cannot be stored is held, said, tried again and stored', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  // the browser goes by the room that it saw up to half a minute ago, so its refusal is told in its place
  await page.evaluate(() => {
    const add = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'add')!.value as IDBObjectStore['add'];
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...given: Parameters<typeof add>) {
      if (this.name === 'pieces') throw new DOMException('no room', 'QuotaExceededError');
      return add.apply(this, given);
    };
    Object.assign(globalThis, { roomAgain: () => (IDBObjectStore.prototype.add = add) });
  });
  await reads(page, 'store-full');
  await page.keyboard.press(' ');
  await page.getByRole('heading', { name: KEEP_WORDS['unsaved-title'].text }).waitFor();
  await page.getByText(fill(KEEP_WORDS['not-written'], { reason: STORE_ERRORS.full.text })).waitFor();
  await page.getByRole('button', { name: KEEP_WORDS.again.text }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: KEEP_WORDS.save.text }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('set-left.json');
  await page.evaluate(() => (globalThis as unknown as { roomAgain: () => void }).roomAgain());
  await page.getByRole('button', { name: KEEP_WORDS.again.text }).click();
  await sayEnd(page, 'left');
  // what was stored when there was room again is what was held and saved meanwhile
  const [held] = readRecordingJson(readFileSync(await download.path())).groups;
  const { stored } = await storedSet(page);
  expect(stored.channels).toEqual(held.channels.map(({ samples }) => [...samples]));
  expect(stored.timesS).toEqual([...held.timesS]);
});

browserTest('a page that was hidden during a set says so, and keeps it with the set', async ({ page, origin }) => {
  await page.route(
    ({ pathname }) => pathname === '/',
    async (route) => {
      const response = await route.fetch();
      await route.fulfill({
        response,
        headers: { ...response.headers(), 'permissions-policy': 'screen-wake-lock=()' },
      });
    },
  );
  await openFirstSet(page, origin, { pace: 4 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  await reads(page, 'wake-refused');
  // nothing brings a browser without a window to hide a page
  await page.evaluate(() => {
    for (const hidden of [true, false]) {
      Object.defineProperty(document, 'hidden', { configurable: true, value: hidden });
      document.dispatchEvent(new Event('visibilitychange'));
    }
  });
  await reads(page, 'tab-hidden');
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  const notes = await storedBodies<{ note: { what: string } }>(page, 'set-note');
  expect(notes.map(({ note }) => note.what)).toEqual(['hidden']);
  await page.evaluate(() => (location.hash = '#/sensors'));
  const others = [SENSOR_WORDS.serial, SENSOR_WORDS.motion, SENSOR_WORDS.file].map(({ text }) => text);
  await reads(page, 'no-interface', { names: others.join('; ') });
});
