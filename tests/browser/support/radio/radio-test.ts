import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newProfile, openBrowser } from '../browser.mjs';
import { findChromium } from '../chromium.mjs';
import { strangeName } from '../devices/device-page-test.ts';
import { type DevicePage, servePage } from '../devices/serve-page.ts';
import { serveSite } from '../site.mjs';
import { Chooser } from './chooser.ts';
import { whyNoRadio } from './dbus-daemon.mjs';
import { type MessageBus, startMessageBus } from './message-bus.ts';
import { MockRadio } from './mock-radio.ts';

export interface RadioTest {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly origin: string;
  readonly radio: MockRadio;
  readonly chooser: Chooser;
}

export interface RadioTestOptions {
  /** whether the system has a radio; it has when left out */
  readonly hasAdapter?: boolean;
  readonly of?: Served;
  /** file of the page among those of the devices */
  readonly entry?: string;
  readonly timeoutMs?: number;
}

/** Why nothing can be tried here; undefined when it can. */
const whySkipped = findChromium() === undefined ? 'there is no Chromium' : whyNoRadio();
// what is skipped runs nothing that could say it later
if (whySkipped !== undefined) process.stdout.write(`No tests over a mock radio: ${whySkipped}.\n`);

/** The small page on which devices are tried, or the built dashboard. */
type Served = 'device-page' | 'dashboard';

interface Rig {
  readonly bus: MessageBus;
  readonly radio: MockRadio;
  readonly site: DevicePage;
  readonly profile: ReturnType<typeof newProfile>;
  readonly context: BrowserContext;
}

async function startRig({ hasAdapter = true, of = 'device-page', entry }: RadioTestOptions): Promise<Rig> {
  const [bus, site] = await Promise.all([
    startMessageBus(),
    of === 'dashboard' ? serveSite({ keep: true }) : servePage(entry),
  ]);
  const radio = await MockRadio.start(bus.address, { hasAdapter });
  const profile = newProfile();
  const context = await openBrowser(profile.folder, {
    serviceWorkers: 'block',
    moreFlags: ['--enable-features=WebBluetooth', `--host-resolver-rules=MAP ${strangeName} localhost`],
    env: { ...process.env, DBUS_SYSTEM_BUS_ADDRESS: bus.address },
  });
  return { bus, radio, site, profile, context };
}

/**
 * Declares tests that share one browser over one mock radio, with a new page for each; one of the dashboard opens it itself. No
 * page may throw an error. Where there can be no radio they are counted as skipped, and the reason is printed.
 */
export function radioTests(
  title: string,
  tests: Record<string, (given: RadioTest) => Promise<void>>,
  options: RadioTestOptions = {},
): void {
  describe(title, () => {
    let rig: Rig | undefined;
    beforeAll(async () => {
      rig = await startRig(options);
    });
    afterAll(async () => {
      await rig?.context.close();
      rig?.radio.stop();
      await rig?.site.close();
      await rig?.bus.stop();
      rig?.profile.dispose();
    });
    for (const [name, work] of Object.entries(tests)) {
      const timeout = options.timeoutMs ?? (options.of === 'dashboard' ? 120_000 : 60_000);
      test.skipIf(whySkipped !== undefined)(name, { timeout }, async () => {
        const { context, site, radio } = rig!;
        const problems: string[] = [];
        const page = await context.newPage();
        page.on('pageerror', (error) => problems.push(error.message));
        page.setDefaultTimeout(25_000);
        if (options.of !== 'dashboard') {
          await page.goto(site.origin);
          await page.waitForFunction('"onPage" in globalThis');
        }
        try {
          await work({ page, context, origin: site.origin, radio, chooser: await Chooser.of(page) });
          expect(problems).toEqual([]);
        } finally {
          await page.close();
          radio.clear();
        }
      });
    }
  });
}
