import { CLINIC_PLACE, CLINIC_WORDS, DOOR_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { addPerson, at, keepCode, makeClinic, passphrase, press, saved } from '../support/clinic-walk.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart, words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { violations } from './support/violations.ts';

browserTest(
  'a clinic that the browser has thrown away is missed at the door, and a backup leads back',
  async ({ page, origin }) => {
    await openStart(page, origin);
    await makeClinic(page);
    await addPerson(page, 'Oda Brenn');
    await at(page, '#/clinic', CLINIC_PLACE.title);
    const backup = await saved(page, CLINIC_WORDS['backup-save']);
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

    // the way that it names leads back
    await press(page, DOOR_WORDS.create);
    await page.getByLabel(DOOR_WORDS.passphrase.text).fill('nine blue kettles');
    await page.getByLabel(DOOR_WORDS.again.text).fill('nine blue kettles');
    await press(page, DOOR_WORDS['make-it']);
    await keepCode(page);
    await page.getByRole('link', { name: CLINIC_PLACE.link.text }).click();
    await page.getByLabel(CLINIC_WORDS['restore-file'].text).setInputFiles(backup.path);
    await page.getByLabel(CLINIC_WORDS['restore-secret'].text).fill(passphrase);
    await press(page, CLINIC_WORDS['restore-look']);
    await page.getByText(words(CLINIC_WORDS['restore-holds'])).waitFor();
    await press(page, CLINIC_WORDS['restore-write']);
    await page.getByText(words(CLINIC_WORDS['restore-receipt'])).waitFor();
    await page.evaluate(() => (location.hash = '#/'));
    await page.getByRole('heading', { name: 'Oda Brenn' }).waitFor();
  },
);
