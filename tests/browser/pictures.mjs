// npm run pictures: a picture of every page and state, three widths on light paper, one on dark and one in the mirrored language,
// and contact sheets of them, into an ignored folder; -- result pushes takes those areas alone, -- long adds the long language.
// Needs a build of the packages (npm run build).
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { openContext, startBrowser } from './support/browser.mjs';
import { serveSite } from './support/site.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

if (process.env.SURAE_SITE === undefined) {
  const { status } = spawnSync('npx', ['vite', 'build', 'apps/dashboard', '--logLevel', 'warn'], { stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}

/** The states are TypeScript, which Node alone does not read. */
const read = async (path) =>
  (await runnerImport(fileURLToPath(new URL(path, import.meta.url)), { configFile: false })).module;
const { takePictures, takeInLanguage } = await read('./support/take-pictures.ts');
const { contactSheets } = await read('./support/contact-sheet.ts');

const folder = 'tests/dist/pictures';
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

const given = process.argv.slice(2);
const wanted = given.filter((one) => one !== 'long');
const languages = given.includes('long') ? ['mirrored', 'long'] : ['mirrored'];

const site = await serveSite();
const browser = await startBrowser();
const pictures = [];
try {
  for (const language of [undefined, ...languages]) {
    const context = await openContext(browser);
    const page = await context.newPage();
    pictures.push(
      ...(language === undefined
        ? await takePictures(page, site.origin, folder, wanted)
        : await takeInLanguage(page, site.origin, folder, wanted, language)),
    );
    await context.close();
  }
} finally {
  await browser.close();
  await site.close();
}
for (const { name, text } of contactSheets(pictures)) writeFileSync(`${folder}/${name}`, text);
console.log(`${pictures.length} pictures are in ${folder}; begin with index.html`);
