import { batteryLevel, openSamples, openService } from '@surae/sensors';
import {
  HELD_WORDS,
  LIVE_WORDS,
  READY_WORDS,
  SENSOR_KIND_WORDS,
  SENSOR_PLACE,
  SENSOR_WORDS,
  TEST_WORDS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { expectAsSent } from './support/as-sent.ts';
import { upTo } from './support/devices/driven.ts';
import { openFirstSet } from './support/first-set.ts';
import { endRest, sayEnd, startSet, waitForCount, waitForEnding } from './support/journey.mjs';
import { heelDevice, heelPackets, heelSamplesPerPacket, heelStepsOf } from './support/radio/heel-string.ts';
import { type Beats, held, inBeats, swapped, twice } from './support/radio/packet-faults.ts';
import type { MockPeripheral, PeripheralOptions } from './support/radio/peripheral.ts';
import { type RadioTest, radioTests } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { reads } from './support/read-fault.ts';
import { backToVisit, connectBluetooth, goToSensors, importDescription, storedSet } from './support/sensors.ts';
import { serialCell } from './support/serial/serial-cell.ts';

const beatHz = 100 / heelSamplesPerPacket;
const kind = SENSOR_KIND_WORDS.open.text;

/** A sensor that is like the string and lacks something. */
const lacking = (n: number, name: string, services: PeripheralOptions['services']): PeripheralOptions => ({
  address: `C0:FF:EE:00:01:0${n}`,
  name,
  services,
  advertised: [openService],
});

const send = (device: MockPeripheral, beats: Beats): Promise<unknown> =>
  sendAtRate(beats, beatHz, (packets) => packets.every((packet) => device.notify(openSamples, packet)));

async function openSensors(page: Page, origin: string): Promise<void> {
  await page.goto(`${origin}/#/sensors`);
  await page.getByRole('heading', { name: SENSOR_PLACE.title.text }).waitFor();
}

/** Asks for a sensor that sends the open packet, whatever comes of it. */
async function ask({ page, chooser }: RadioTest, name: string): Promise<void> {
  chooser.choose(name);
  await page.getByRole('radio', { name: SENSOR_WORDS.bluetooth.text }).check();
  await page.getByLabel(SENSOR_WORDS.kind.text).selectOption({ label: kind });
  await page.getByRole('button', { name: SENSOR_WORDS['choose-bluetooth'].text }).click();
}

/** What the browser must not do on this page. */
async function forbid(page: Page): Promise<void> {
  await page.route(
    ({ pathname }) => pathname === '/',
    async (route) => {
      const response = await route.fetch();
      const headers = { ...response.headers(), 'permissions-policy': 'bluetooth=(), serial=()' };
      await route.fulfill({ response, headers });
    },
  );
}

radioTests(
  'what goes wrong with a sensor, in the words of the page',
  {
    'what is not allowed is said where it is asked for, and can be asked for again': async (given) => {
      const { page, origin } = given;
      await forbid(page);
      await openSensors(page, origin);
      await ask(given, 'Invented string');
      await reads(page, 'bluetooth-denied');
      await importDescription(page, serialCell);
      await page.getByRole('radio', { name: SENSOR_WORDS.serial.text }).check();
      await page.getByRole('button', { name: SENSOR_WORDS['first-port'].text }).click();
      await reads(page, 'serial-denied');
      const session = await page.context().newCDPSession(page);
      const permission = { name: 'accelerometer' };
      await session.send('Browser.setPermission', { permission, setting: 'denied', origin });
      await page.getByRole('radio', { name: SENSOR_WORDS.motion.text }).check();
      await page.getByRole('button', { name: SENSOR_WORDS['follow-motion'].text }).click();
      await reads(page, 'motion-denied');
      await session.send('Browser.setPermission', { permission, setting: 'granted', origin });
    },

    'two sensors that are mixed up: only what the right one sent is kept, the other one is pointed out, and one can stop while it does not answer':
      async (given) => {
        const { page, origin, radio, chooser } = given;
        const right = radio.add(heelDevice());
        await openFirstSet(page, origin);
        await goToSensors(page);
        chooser.choose('Invented string');
        const count = 3000;
        const sender = new SteadySender(heelPackets(count), beatHz, (packet) => right.notify(openSamples, packet));
        await connectBluetooth(page, kind);
        await backToVisit(page);
        await startSet(page, 'left');
        await waitForCount(page, 1);
        // a sensor with the same address, which counts as it always did
        sender.stop();
        right.dropLink();
        await right.listened(openSamples);
        await send(right, inBeats(heelPackets(4, { fromCounter: 31_000, fromS: 9 })));
        await waitForEnding(page, 'left');
        await reads(page, 'wrong-sensor');
        const { stored } = await storedSet(page);
        const sent = upTo(count * heelSamplesPerPacket).map((n) => heelStepsOf(n) / 1e4);
        expectAsSent([sent], new Set(), stored);
        await sayEnd(page, 'left', { reason: 'technical' });
        await endRest(page);

        const other = radio.add({ ...heelDevice(80), address: 'C0:FF:EE:00:00:08', name: 'Second string' });
        await page.getByRole('link', { name: LIVE_WORDS.look.text }).click();
        await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).click();
        chooser.choose('Second string');
        await connectBluetooth(page, kind);
        await backToVisit(page);
        await reads(page, 'mixed-up', { before: `${kind}, Invented string` });
        await other.listened(batteryLevel);
        // a device tells its charge again and again
        const telling = setInterval(() => other.change(batteryLevel, Uint8Array.of(7)), 100);
        await reads(page, 'battery-low-later', { percent: 7 });
        clearInterval(telling);

        other.dropLink();
        other.hang();
        await page.getByRole('button', { name: READY_WORDS.begin.text }).click();
        await page.getByText(LIVE_WORDS.waiting.text).waitFor();
        await page.getByRole('button', { name: TEST_WORDS.stop.text }).click();
        await reads(page, 'no-answer');
      },

    // takes the radio away at its end, so it is the last
    'what a sensor lacks, sends or loses is said while it is looked at': async (given) => {
      const { page, origin, radio } = given;
      await openSensors(page, origin);
      radio.add(lacking(1, 'Busy', [])).refuse(1);
      await ask(given, 'Busy');
      await reads(page, 'refused');
      radio.add(lacking(2, 'Empty', []));
      await ask(given, 'Empty');
      await reads(page, 'service-missing');
      radio.add(lacking(3, 'Half', [{ uuid: openService, characteristics: [] }]));
      await ask(given, 'Half');
      await reads(page, 'characteristic-missing');

      const device = radio.add(heelDevice());
      await ask(given, 'Invented string');
      await page.getByText(HELD_WORDS.waiting.text).waitFor();
      await device.listened(openSamples);
      await send(device, inBeats(upTo(6).map((n) => Uint8Array.of(0xa5, n, 0x5a))));
      await reads(page, 'other-packets');
      await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).click();

      await ask(given, 'Invented string');
      await page.getByText(HELD_WORDS.waiting.text).waitFor();
      await device.listened(openSamples);
      // the counter is at its end after 11 packets; the burst comes before the wait for a packet that is missing is over
      const run = inBeats(heelPackets(26, { fromCounter: 65_470 }));
      await send(device, held(swapped(twice(run, 4), 7), 14, 6));
      const received = 26 * heelSamplesPerPacket;
      await reads(page, 'duplicates', { received });
      await reads(page, 'reordering', { received });
      await reads(page, 'late-burst', { received });
      await reads(page, 'wrap-around', { received });

      device.dropLink();
      await device.listened(openSamples);
      await send(device, inBeats(heelPackets(4, { fromCounter: 0, fromS: 0.5 })));
      await reads(page, 'restart');
      await page.getByRole('button', { name: HELD_WORDS.again.text }).click();
      await send(device, inBeats(heelPackets(4, { fromCounter: 24, fromS: 0.74 })));
      await page.getByText(HELD_WORDS.streaming.text).waitFor();
      await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).click();

      radio.takeAway();
      // the browser is told of it in its own time
      await expect.poll(() => page.evaluate(() => navigator.bluetooth.getAvailability())).toBe(false);
      await ask(given, 'Invented string');
      await reads(page, 'no-radio');
    },
  },
  { of: 'dashboard' },
);
