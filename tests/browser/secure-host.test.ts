import { SENSOR_WORDS, START_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { newProfile, openBrowser } from './support/browser.mjs';
import { findChromium } from './support/chromium.mjs';
import { strangeName } from './support/devices/device-page-test.ts';
import { reads } from './support/read-fault.ts';
import { selfSigned, whyNoCertificate } from './support/self-signed.mjs';
import { serveSite } from './support/site.mjs';

const why = findChromium() === undefined ? 'there is no Chromium' : whyNoCertificate();
if (why !== undefined) process.stdout.write(`No test of the built folder over TLS: ${why}.\n`);

/** What a page of this address has of all that a sensor needs. */
const offered = `({
  secure: isSecureContext,
  bluetooth: 'bluetooth' in navigator,
  serial: 'serial' in navigator,
  motion: 'DeviceMotionEvent' in globalThis,
  worker: 'serviceWorker' in navigator,
})`;

test.skipIf(why !== undefined)(
  'the built folder on a host with TLS has Bluetooth, serial ports, motion and a page that stays; without TLS none of it',
  { timeout: 120_000 },
  async () => {
    const { publicKeyHash, ...tls } = selfSigned(strangeName);
    const [safe, plain] = await Promise.all([serveSite({ tls }), serveSite()]);
    const profile = newProfile();
    const context = await openBrowser(profile.folder, {
      moreFlags: [
        `--host-resolver-rules=MAP ${strangeName} localhost`,
        // in place of an authority: this one key is believed
        `--ignore-certificate-errors-spki-list=${publicKeyHash}`,
        '--enable-features=WebBluetooth',
      ],
    });
    try {
      const page = await context.newPage();
      await page.goto(plain.origin.replace('localhost', strangeName));
      expect(await page.evaluate(offered)).toMatchObject({
        secure: false,
        bluetooth: false,
        serial: false,
        worker: false,
      });
      await page.evaluate(() => (location.hash = '#/sensors'));
      await reads(page, 'plain-http', { names: SENSOR_WORDS.file.text });
      await page.goto(safe.origin.replace('localhost', strangeName));
      const all = await page.evaluate(offered);
      expect(all).toEqual({ secure: true, bluetooth: true, serial: true, motion: true, worker: true });
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
      await safe.close();
      await page.reload();
      await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
      process.stdout.write(
        'The built folder over TLS under a name of its own: all interfaces, and there without a network.\n',
      );
    } finally {
      await context.close();
      await plain.close();
      await safe.close();
      profile.dispose();
    }
  },
);
