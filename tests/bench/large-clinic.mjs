// How soon the list of people and one person are there in an encrypted clinic of many trials with traces, in the dashboard itself.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { DOOR_WORDS, RESULT_WORDS, START_WORDS } from '@surae/shared';
import { newProfile, openBrowser } from '../browser/support/browser.mjs';
import { bundled } from '../browser/support/bundled.mjs';
import { findChromium } from '../browser/support/chromium.mjs';
import { words } from '../browser/support/journey.mjs';
import { serveSite, siteFolder } from '../browser/support/site.mjs';

const passphrase = 'seven lamps in the old mill';

/** Waits, frame by frame, until the page shows what is looked for; gives the time since it was asked [ms]. */
function untilShown([what, wanted]) {
  return new Promise((resolve) => {
    const start = globalThis.askedAt ?? performance.now();
    const root = (one) => one?.shadowRoot ?? undefined;
    const shell = () => root(document.querySelector('app-shell'));
    const found = {
      people: () => root(shell()?.querySelector('start-page'))?.querySelectorAll('.people > li').length === wanted,
      result: () =>
        root(root(shell()?.querySelector('visit-page'))?.querySelector('result-step'))?.querySelector(
          'two-legs-axis',
        ) != null,
    };
    const look = () => (found[what]() ? resolve(performance.now() - start) : requestAnimationFrame(look));
    look();
  });
}

/**
 * The dashboard over clinics of growing size; undefined where there is no browser.
 *
 * @param {readonly number[]} sizes - trials, growing
 */
export async function benchLargeClinic(sizes = [50, 500, 5000]) {
  if (findChromium() === undefined || !existsSync(join(siteFolder, 'index.html'))) return undefined;
  const script = await bundled(new URL('pages/large-clinic-page.ts', import.meta.url));
  const page = '<!doctype html><title>filling</title><script type="module" src="/filling.js"></script>';
  const site = await serveSite({ beside: { '/filling.js': script, '/filling.html': page } });
  const rows = [];
  for (const trials of sizes) {
    const profile = newProfile();
    try {
      // filled and looked at by two browsers, as on two days; the worker of the dashboard would answer for the page that fills
      const filling = await openBrowser(profile.folder);
      const filler = filling.pages()[0];
      await filler.goto(`${site.origin}/filling.html`);
      await filler.waitForFunction('"largeClinic" in globalThis');
      const size = await filler.evaluate((number) => globalThis.largeClinic.fill(number), trials);
      await filler.evaluate(() => localStorage.setItem('surae.author', 'bench'));
      await filling.close();
      const context = await openBrowser(profile.folder);
      try {
        const view = context.pages()[0];
        await view.goto(site.origin);
        await view.getByLabel(DOOR_WORDS.secret.text).fill(passphrase);
        await view.evaluate(() => {
          addEventListener('click', () => (globalThis.askedAt = performance.now()), { capture: true });
        });
        await view.getByRole('button', { name: words(DOOR_WORDS.open) }).click();
        const openMs = await view.evaluate(untilShown, ['people', size.people]);
        await view.evaluate(() => (location.hash = '#/clinic'));
        await view.locator('clinic-page').waitFor();
        await view.evaluate(() => {
          globalThis.askedAt = performance.now();
          location.hash = '#/';
        });
        const listMs = await view.evaluate(untilShown, ['people', size.people]);
        const visit = view.getByRole('link', { name: words(START_WORDS['past-visit']) });
        await visit.nth(Math.floor((await visit.count()) / 2)).click();
        const personMs = await view.evaluate(untilShown, ['result', 1]);
        await view.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
        rows.push({ trials, ...size, openMs, listMs, personMs });
      } finally {
        await context.close();
      }
    } finally {
      profile.dispose();
    }
  }
  await site.close();
  return rows;
}
