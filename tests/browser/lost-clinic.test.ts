import { DOOR_WORDS, START_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { enter, makeClinic, passphrase, press } from '../support/clinic-walk.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart, words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { violations } from './support/violations.ts';

browserTest('a clinic that the browser has thrown away is missed at the door', async ({ page, origin }) => {
  await openStart(page, origin);
  await makeClinic(page);
  // from a page beside the dashboard, which keeps no database open
  await page.goto(`${origin}/licences.txt`);
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase('surae-own');
        deleting.onsuccess = resolve;
        deleting.onerror = deleting.onblocked = () => reject(new Error('It is in use.'));
      }),
  );
  await page.goto(origin);
  await page.getByText(words(DOOR_WORDS['own-gone'])).waitFor();
  await page.getByText(words(DOOR_WORDS['own-gone-next'])).waitFor();
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'door-gone', 360, 768, 1280);
  const shots = process.env['SHOTS'];
  if (shots) await page.screenshot({ path: `${shots}/door-gone.png`, fullPage: true });

  // another one can be made, and is missed no more
  await press(page, DOOR_WORDS.create);
  await page.getByLabel(DOOR_WORDS.passphrase.text).fill(passphrase);
  await page.getByLabel(DOOR_WORDS.again.text).fill(passphrase);
  await press(page, DOOR_WORDS['make-it']);
  await page.getByRole('heading', { name: DOOR_WORDS['code-title'].text }).waitFor();
  await page.goto(`${origin}/licences.txt`);
  await page.goto(origin);
  await enter(page, passphrase);
  await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
});
