// The page alone: how soon the first screen can be used, what has to arrive for it, frames a second while a set runs.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { START_WORDS } from '@surae/shared';
import { openContext, startBrowser } from '../browser/support/browser.mjs';
import { findChromium } from '../browser/support/chromium.mjs';
import { serveSite, siteFolder } from '../browser/support/site.mjs';
import { startBundleKib } from '../browser/support/start-weight.mjs';
import { benchDashboard } from './dashboard.mjs';

/** Opens the page in empty browsers, until its first button can be pressed; the middle of the times, and the longest [s]. */
async function firstScreen(times) {
  const site = await serveSite();
  const browser = await startBrowser();
  const took = [];
  try {
    for (let i = 0; i < times; i += 1) {
      const context = await openContext(browser);
      const page = await context.newPage();
      const from = performance.now();
      await page.goto(site.origin, { waitUntil: 'commit' });
      await page.getByRole('button', { name: START_WORDS.begin.text, disabled: false }).first().waitFor();
      took.push((performance.now() - from) / 1000);
      await context.close();
    }
  } finally {
    await browser.close();
    await site.close();
  }
  took.sort((a, b) => a - b);
  return { medianS: took[Math.floor(took.length / 2)], longestS: took.at(-1) };
}

/** Prints the three figures; says so where there is no browser or no build. */
export async function benchPage({ times = 5, counts = 5 } = {}) {
  if (findChromium() === undefined || !existsSync(join(siteFolder, 'index.html'))) {
    console.log('Nothing is measured in a browser: Chromium is missing, or the dashboard is not built.');
    return;
  }
  const { medianS, longestS } = await firstScreen(times);
  const { kib, files } = startBundleKib();
  const { framesPerS, longestGapMs } = await benchDashboard({ counts });
  console.log(`first screen usable: ${medianS.toFixed(2)} s, the longest of ${times} ${longestS.toFixed(2)} s`);
  console.log(`start bundle: ${kib.toFixed(1)} KiB gzipped, ${files} files`);
  console.log(`frames of a live test: ${framesPerS.toFixed(1)} a second, longest wait ${longestGapMs.toFixed(0)} ms`);
}
