// How soon the list of people and one person are there in an encrypted clinic of many trials with traces, in the dashboard itself.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DOOR_WORDS, RESULT_WORDS, START_WORDS } from '@surae/shared';
import { newProfile, openBrowser } from '../browser/support/browser.mjs';
import { bundled } from '../browser/support/bundled.mjs';
import { findChromium } from '../browser/support/chromium.mjs';
import { words } from '../browser/support/journey.mjs';
import { serveSite, siteFolder } from '../browser/support/site.mjs';

const passphrase = 'seven lamps in the old mill';

/** How often a clinic is opened after the first time; of these the median is told. */
const openings = 5;

/** Notes when the button was pressed, and when the key of the passphrase was there: the first that is imported after Argon2id. */
function notesTimes() {
  addEventListener('click', () => (globalThis.askedAt ??= performance.now()), { capture: true });
  const real = SubtleCrypto.prototype.importKey;
  SubtleCrypto.prototype.importKey = function (...given) {
    if (given[2] === 'AES-GCM') globalThis.keyAt ??= performance.now();
    return Reflect.apply(real, this, given);
  };
}

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

/** Opens the clinic in a page that is loaded anew, asks for the list once more, and for a result that nobody looked at [ms]. */
async function opened(view, origin, people, turn) {
  await view.goto('about:blank');
  await view.goto(origin);
  await view.getByLabel(DOOR_WORDS.secret.text).fill(passphrase);
  await view.evaluate(notesTimes);
  await view.getByRole('button', { name: words(DOOR_WORDS.open) }).click();
  const openMs = await view.evaluate(untilShown, ['people', people]);
  const keyMs = await view.evaluate(() => globalThis.keyAt - globalThis.askedAt);
  await view.evaluate(() => (location.hash = '#/clinic'));
  await view.locator('clinic-page').waitFor();
  await view.evaluate(() => {
    globalThis.askedAt = performance.now();
    location.hash = '#/';
  });
  const listMs = await view.evaluate(untilShown, ['people', people]);
  const visit = view.getByRole('link', { name: words(START_WORDS['past-visit']) });
  const nth = Math.floor(((await visit.count()) * (turn + 1)) / (openings + 2));
  const address = await visit.nth(nth).getAttribute('href');
  await view.evaluate((hash) => {
    globalThis.askedAt = performance.now();
    location.hash = hash;
  }, address);
  const personMs = await view.evaluate(untilShown, ['result', 1]);
  await view.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
  return { openMs, keyMs, listMs, personMs };
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

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
        // the first time nothing is kept of the list, as after a backup was restored
        const first = await opened(view, site.origin, size.people, 0);
        const times = [];
        for (let turn = 1; turn <= openings; turn += 1) {
          times.push(await opened(view, site.origin, size.people, turn));
        }
        const medianOf = (name) => median(times.map((one) => one[name]));
        rows.push({
          trials,
          ...size,
          firstMs: first.openMs,
          openMs: medianOf('openMs'),
          keyMs: medianOf('keyMs'),
          listMs: medianOf('listMs'),
          personMs: medianOf('personMs'),
        });
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

// by itself: sizes may be named, such as `node tests/bench/large-clinic.mjs 50 500`
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const sizes = process.argv.slice(2).map(Number);
  const rows = await benchLargeClinic(sizes.length > 0 ? sizes : undefined);
  const whole = (row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, Math.round(value)]));
  if (rows === undefined) console.log('Nothing is measured: Chromium is missing, or the dashboard is not built.');
  else console.table(rows.map(whole));
}
