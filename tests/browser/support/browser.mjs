// Starts Chromium with a profile of its own and ends it; a profile can be opened again after the browser was killed.
import { mkdtempSync, readlinkSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  // a page that nobody looks at must run as one that somebody looks at
  '--disable-background-timer-throttling',
  '--disable-renderer-backgrounding',
  '--autoplay-policy=no-user-gesture-required',
];

/** How large the window of a page is [px]. */
export const viewport = { width: 1280, height: 900 };
const patienceMs = 60_000;

/** A new empty profile; `dispose` takes it away. */
export function newProfile() {
  const folder = mkdtempSync(join(tmpdir(), 'surae-profile-'));
  return { folder, dispose: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }) };
}

/** Where Chromium is. */
function program() {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('There is no Chromium: install one, or name it in CHROMIUM.');
  return executablePath;
}

/** Starts the browser without a profile; every context that is opened in it has a store of its own. */
export function startBrowser() {
  return chromium.launch({ executablePath: program(), args: flags });
}

/**
 * A new context with an empty store in a browser that runs. It registers no service worker, which would fetch every file of the page
 * once more for each test: a third of what opening the page costs.
 *
 * @param {import('playwright-core').Browser} browser
 */
export async function openContext(browser) {
  const context = await browser.newContext({ viewport, serviceWorkers: 'block', reducedMotion: 'reduce' });
  context.setDefaultTimeout(patienceMs);
  return context;
}

/**
 * Opens the browser on a profile.
 *
 * @param {string} folder
 * @param {Omit<NonNullable<Parameters<typeof chromium.launchPersistentContext>[1]>, 'args'> & { readonly moreFlags?: readonly string[] }} [options]
 */
export async function openBrowser(folder, { moreFlags = [], ...options } = {}) {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: program(),
    args: [...flags, ...moreFlags],
    viewport,
    ...options,
  });
  context.setDefaultTimeout(patienceMs);
  return context;
}

/**
 * Ends the browser of a profile at once, as a crash or a power cut would, and waits until it is gone.
 *
 * @param {string} folder
 * @param {import('playwright-core').BrowserContext} context
 */
export async function killBrowser(folder, context) {
  // the lock of a profile names the process that holds it: HOST-PID
  const pid = Number(readlinkSync(join(folder, 'SingletonLock')).split('-').at(-1));
  const gone = new Promise((resolve) => context.on('close', resolve));
  process.kill(pid, 'SIGKILL');
  await gone;
}
