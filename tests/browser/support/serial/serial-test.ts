import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { newProfile, openBrowser } from '../browser.mjs';
import { findChromium } from '../chromium.mjs';
import { type DevicePage, servePage } from '../devices/serve-page.ts';
import { serveSite } from '../site.mjs';
import { openTerminal, type PseudoTerminal } from './pseudo-terminal.ts';
import { whyNoTerminal } from './why-no-terminal.ts';

/** The far end of the port that the page has. */
export interface FarEnd {
  send(bytes: Uint8Array): boolean | Promise<boolean>;
  received(): Promise<number[]>;
  unplug(): Promise<void>;
}

export interface SerialTest {
  readonly page: Page;
  readonly farEnd: FarEnd;
  /** whether the port is one of the system, or plays one in the page */
  readonly isReal: boolean;
}

interface Rig {
  readonly context: BrowserContext;
  readonly site: DevicePage;
  /** undefined where the port is played in the page */
  readonly terminal: PseudoTerminal | undefined;
  readonly end: () => Promise<void>;
}

/** A browser without a port of the system. */
async function startPlain(): Promise<Rig> {
  const site = await servePage();
  const profile = newProfile();
  const context = await openBrowser(profile.folder);
  const end = async (): Promise<void> => {
    await context.close();
    await site.close();
    profile.dispose();
  };
  return { context, site, terminal: undefined, end };
}

/** A browser whose first serial port is a pseudo-terminal that the page is allowed to open. */
async function startWithPort(serve: () => Promise<DevicePage> = servePage): Promise<Rig> {
  const site = await serve();
  const profile = newProfile();
  const terminal = await openTerminal();
  const policies = mkdtempSync(join(tmpdir(), 'surae-policies-'));
  cpSync('/etc/chromium', policies, { recursive: true });
  mkdirSync(join(policies, 'policies', 'managed'), { recursive: true });
  const allowed = JSON.stringify({ SerialAllowAllPortsForUrls: [site.origin] });
  writeFileSync(join(policies, 'policies', 'managed', 'surae-test.json'), allowed);
  const context = await openBrowser(profile.folder, {
    serviceWorkers: 'block',
    executablePath: fileURLToPath(new URL('chromium-with-port.sh', import.meta.url)),
    env: { ...process.env, SURAE_CHROMIUM: findChromium(), SURAE_PORT: terminal.path, SURAE_POLICIES: policies },
  });
  const end = async (): Promise<void> => {
    await context.close();
    await terminal.unplug();
    await site.close();
    profile.dispose();
    rmSync(policies, { recursive: true, force: true });
  };
  return { context, site, terminal, end };
}

/** The port of the system where there can be one, else a browser without; says which, and why. */
async function startRig(): Promise<Rig> {
  let why = whyNoTerminal();
  if (why === undefined) {
    const rig = await startWithPort();
    const page = await rig.context.newPage();
    await page.goto(rig.site.origin);
    const first = await page.evaluate(() => onPage.knownPort(921_600));
    await page.close();
    if (first === 'done') {
      process.stdout.write('Serial ports: tried over a pseudo-terminal, with the browser in a namespace.\n');
      return rig;
    }
    await rig.end();
    why = 'the browser does not list the first serial port of this machine';
  }
  process.stdout.write(`Serial ports: tried over a port that is played in the page, because ${why}.\n`);
  return startPlain();
}

function farEndOf(page: Page, terminal: PseudoTerminal | undefined): FarEnd {
  if (terminal === undefined) {
    return {
      send: (bytes) =>
        page.evaluate((values) => onPage.scripted.send(Uint8Array.from(values)), [...bytes]).then(() => true),
      received: () => page.evaluate(() => onPage.scripted.written),
      unplug: () => page.evaluate(() => onPage.scripted.unplug()),
    };
  }
  return {
    send: (bytes) => terminal.send(bytes),
    received: () => Promise.resolve([...terminal.received()]),
    unplug: () => terminal.unplug(),
  };
}

/**
 * Declares tests of a serial port that share one browser: over a port of the system where one can be put under the
 * browser, else over one that is played in the page. Which it was, and why, is printed.
 */
export function serialTests(tests: Record<string, (given: SerialTest) => Promise<void>>): void {
  const isThere = findChromium() !== undefined;
  if (!isThere) process.stdout.write('No tests of serial ports: there is no Chromium.\n');
  let rig: Rig | undefined;
  beforeAll(async () => {
    rig = await startRig();
  });
  afterAll(() => rig?.end());
  for (const [name, work] of Object.entries(tests)) {
    test.skipIf(!isThere)(name, { timeout: 60_000 }, async () => {
      const { context, site, terminal } = rig!;
      const problems: string[] = [];
      const page = await context.newPage();
      page.on('pageerror', (error) => problems.push(error.message));
      await page.goto(site.origin);
      await page.waitForFunction('"onPage" in globalThis');
      if (terminal === undefined) await page.evaluate(() => onPage.playPort());
      try {
        await work({ page, farEnd: farEndOf(page, terminal), isReal: terminal !== undefined });
        expect(problems).toEqual([]);
      } finally {
        await page.close();
      }
    });
  }
}

/**
 * Declares tests of the built dashboard over a port of the system that it is allowed to open; each opens its page itself. Where
 * no such port can be put under the browser they are counted as skipped, and the reason is printed.
 */
export function serialDashboardTests(
  tests: Record<string, (given: Omit<SerialTest, 'isReal'> & { readonly origin: string }) => Promise<void>>,
): void {
  const whySkipped = findChromium() === undefined ? 'there is no Chromium' : whyNoTerminal();
  if (whySkipped !== undefined) process.stdout.write(`No tests of the dashboard over a serial port: ${whySkipped}.\n`);
  let rig: Rig | undefined;
  beforeAll(async () => {
    if (whySkipped === undefined) rig = await startWithPort(() => serveSite({ keep: true }));
  });
  afterAll(() => rig?.end());
  for (const [name, work] of Object.entries(tests)) {
    test.skipIf(whySkipped !== undefined)(name, { timeout: 120_000 }, async () => {
      const { context, site, terminal } = rig!;
      const problems: string[] = [];
      const page = await context.newPage();
      page.setDefaultTimeout(25_000);
      page.on('pageerror', (error) => problems.push(error.message));
      try {
        await work({ page, origin: site.origin, farEnd: farEndOf(page, terminal) });
        expect(problems).toEqual([]);
      } finally {
        await page.close();
      }
    });
  }
}
