// Goes to every state and writes down which elements of the dashboard it shows, for the convention on what every run looks at.
// Needs a build of the packages and of the dashboard (npm run build).
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { openContext, startBrowser } from './browser.mjs';
import { serveSite } from './site.mjs';

const place = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The states are TypeScript, which Node alone does not read. */
const read = async (path) => (await runnerImport(place(path), { configFile: false })).module;
const { walkList } = await read('./states/state.ts');
const { allStates } = await read('./states/all-states.ts');
const { untilStill } = await read('./states/listed-elements.ts');
const { shownElements } = await read('./shown-elements.ts');

const site = await serveSite();
const browser = await startBrowser();
const listed = {};
try {
  const page = await (await openContext(browser)).newPage();
  const look = async ({ name }) => {
    listed[name] = await shownElements(page);
  };
  // what was listed before is no measure of what is there now
  await walkList(
    page,
    site.origin,
    allStates,
    look,
    () => true,
    (there) => untilStill(there),
  );
} finally {
  await browser.close();
  await site.close();
}
const file = place('./states/shown-elements.json');
writeFileSync(file, JSON.stringify(listed));
spawnSync('node_modules/.bin/biome', ['check', '--write', file], { cwd: place('../../..'), stdio: 'inherit' });
console.log(`${Object.keys(listed).length} states.`);
