// The dashboard in a browser: how long a count takes to the screen, frames a second while a set runs, size of the start.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { READY_WORDS } from '@surae/shared';
import { newProfile, openBrowser } from '../browser/support/browser.mjs';
import { findChromium } from '../browser/support/chromium.mjs';
import { goToFirstSet, waitForCount, words } from '../browser/support/journey.mjs';
import { serveSite, siteFolder } from '../browser/support/site.mjs';
import { startBundleKib } from '../browser/support/start-weight.mjs';
import { makeFootSet } from './foot-set.mjs';

/** Two minutes of six channels at 1000 Hz as comma-separated text. */
function footCsv() {
  const [{ timesS, channels }] = makeFootSet().trace.groups;
  const names = { acceleration: 'acc_# [m/s2]', 'angular-velocity': 'gyro_# [rad/s]' };
  const head = ['time [s]', ...channels.map(({ quantity, axis }) => names[quantity].replace('#', axis))].join(',');
  const rows = Array.from(timesS, (timeS, i) =>
    [timeS, ...channels.map(({ samples }) => samples[i].toFixed(5))].join(','),
  );
  return `${[head, ...rows].join('\n')}\n`;
}

function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
}

/** Plays the recording at its own pace and looks at the page while it runs; undefined where there is no browser. */
export async function benchDashboard({ counts = 20 } = {}) {
  if (findChromium() === undefined || !existsSync(join(siteFolder, 'index.html'))) return undefined;
  const site = await serveSite();
  const profile = newProfile();
  const context = await openBrowser(profile.folder, { deviceScaleFactor: 1 });
  try {
    context.setDefaultTimeout(180_000);
    const page = context.pages()[0];
    await goToFirstSet(page, site.origin, { pace: 1 });
    await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
    const file = { name: 'foot.csv', mimeType: 'text/csv', buffer: Buffer.from(footCsv()) };
    await page.getByLabel(READY_WORDS['choose-file'].text).setInputFiles(file);
    await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
    await page.getByRole('radio', { name: READY_WORDS.foot.text }).check();
    await page.getByRole('button', { name: READY_WORDS.begin.text }).click();
    await waitForCount(page, 1);
    await page.evaluate(() => {
      globalThis.frames = [];
      const look = (atMs) => {
        globalThis.frames.push(atMs);
        requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
    await waitForCount(page, counts);
    const { latencies, frames } = await page.evaluate(() => ({
      latencies: performance.getEntriesByName('surae-count').map(({ duration }) => duration),
      frames: globalThis.frames,
    }));
    const gaps = frames.slice(1).map((atMs, i) => atMs - frames[i]);
    return {
      counts: latencies.length,
      latencyP95Ms: quantile(latencies, 0.95),
      latencyMedianMs: quantile(latencies, 0.5),
      framesPerS: (1000 * gaps.length) / (frames.at(-1) - frames[0]),
      longestGapMs: quantile(gaps, 1),
    };
  } finally {
    await context.close();
    await site.close();
    profile.dispose();
  }
}

if (import.meta.url === `file://${process.argv[1]}`) console.log(startBundleKib(), await benchDashboard());
