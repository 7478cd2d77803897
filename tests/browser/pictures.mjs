// npm run pictures: a picture of every page and state, three widths on light paper and one on dark, into an ignored
// folder. Needs a build of the packages (npm run build).
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { newProfile, openBrowser } from './support/browser.mjs';
import { walkPushStates } from './support/push-states.mjs';
import { serveSite } from './support/site.mjs';
import { walkComparisons, walkStates } from './support/states.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

if (process.env.SURAE_SITE === undefined) {
  const { status } = spawnSync('npx', ['vite', 'build', 'apps/dashboard', '--logLevel', 'warn'], { stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}

const folder = 'tests/dist/pictures';
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const sheets = [
  { width: 360, height: 740, colorScheme: 'light' },
  { width: 768, height: 1024, colorScheme: 'light' },
  { width: 1280, height: 900, colorScheme: 'light' },
  { width: 768, height: 1024, colorScheme: 'dark' },
];

const site = await serveSite();
const profile = newProfile();
const context = await openBrowser(profile.folder);
const page = context.pages()[0];
let number = 0;
try {
  const look = async (state) => {
    number += 1;
    for (const { width, height, colorScheme } of sheets) {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height });
      const name = `${String(number).padStart(2, '0')}-${state}-${width}-${colorScheme}.png`;
      await page.screenshot({ path: `${folder}/${name}`, fullPage: true });
    }
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize({ width: 1280, height: 900 });
    console.log(`${String(number).padStart(2, '0')} ${state}`);
  };
  await walkStates(page, site.origin, look);
  await walkComparisons(page, site.origin, look);
  await walkPushStates(page, site.origin, look);
} finally {
  await context.close();
  await site.close();
  profile.dispose();
}
console.log(`${number * sheets.length} pictures are in ${folder}`);
