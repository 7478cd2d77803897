import { readFileSync } from 'node:fs';
import { batteryLevel, batteryService, openSamples, openService, readSensorDescription } from '@surae/sensors';
import { DEVICE_ERRORS, HELD_WORDS, LIVE_WORDS, SOURCE_ERRORS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { BluetoothPlan } from '../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { strangeName } from './support/devices/device-page-test.ts';
import { upTo } from './support/devices/driven.ts';
import {
  begun,
  cell,
  end,
  expectKept,
  faultTests,
  haveCome,
  isSaid,
  keptOf,
  reading,
  said,
} from './support/faulty-sensor.ts';
import { forceOf, openDevice, openPlan } from './support/radio/open-device.ts';
import type { PeripheralOptions } from './support/radio/peripheral.ts';
import type { RadioTest } from './support/radio/radio-test.ts';

/** A device that cannot be begun with, and the one thing that is said. */
async function refused(given: RadioTest, device: PeripheralOptions, plan = openPlan): Promise<string[]> {
  await begun(given, reading, device, plan);
  return said(given.page);
}

const startPlan: BluetoothPlan = { ...openPlan, targets: [{ service: openService, characteristic: batteryLevel }] };
const startable: PeripheralOptions = {
  ...openDevice(),
  services: [
    {
      uuid: openService,
      characteristics: [
        { uuid: openSamples, flags: ['notify'] },
        { uuid: batteryLevel, flags: ['write'] },
      ],
    },
  ],
};

/** Lines such as 17;-12.3 from a port that is played in the page. */
async function beginSerialCell(page: Page, longestHoleMs?: number): Promise<void> {
  const columns = [
    { kind: 'counter', modulus: 65_536 },
    { kind: 'channel', quantity: 'force', axis: null, unit: 'N' },
  ] as const;
  const lines = { delimiter: ';', decimal: '.', columns } as const;
  const how = { nominalRateHz: 100, ...(longestHoleMs === undefined ? {} : { longestHoleMs }) };
  await page.evaluate(([one, layout]) => faultsOnPage.beginSerial(one, layout), [how, lines] as const);
  // one listens from the middle of a line on, and nobody can tell how much of it is missing
  await page.evaluate(() => onPage.scripted.send(new TextEncoder().encode('5.3\n')));
}

faultTests('What goes wrong with a source of samples', [
  {
    done: 'the sensor refuses to be connected to',
    route: 'mock radio',
    work: async (given) => {
      const { page, radio, chooser } = given;
      radio.add(openDevice()).refuse(1);
      chooser.choose(cell);
      await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      await page.evaluate((one) => faultsOnPage.begin([one]), reading);
      expect(await said(page)).toEqual([DEVICE_ERRORS.refused.text]);
    },
  },
  {
    done: 'the sensor never answers',
    isLong: true,
    route: 'mock radio',
    work: async (given) => {
      const { page, radio, chooser } = given;
      radio.add(openDevice()).hang();
      chooser.choose(cell);
      await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      await page.evaluate((one) => faultsOnPage.begin([one]), reading);
      expect(await said(page)).toEqual([DEVICE_ERRORS['no-answer'].text]);
    },
  },
  {
    done: 'the sensor says that it has a service and has not',
    route: 'mock radio',
    work: async (given) =>
      expect(await refused(given, { ...openDevice(), services: [], advertised: [openService] })).toEqual([
        DEVICE_ERRORS['service-missing'].text,
      ]),
  },
  {
    done: 'the sensor has the service without the characteristic',
    isLong: true,
    route: 'mock radio',
    work: async (given) =>
      expect(await refused(given, { ...openDevice(), services: [{ uuid: openService, characteristics: [] }] })).toEqual(
        [DEVICE_ERRORS['service-missing'].text],
      ),
  },
  {
    done: 'the sensor goes off when it is told to begin',
    route: 'mock radio',
    work: async (given) => {
      const { page, radio, chooser } = given;
      radio.add(startable).goAtNextWrite();
      chooser.choose(cell);
      await page.evaluate((plan) => faultsOnPage.choose(plan), startPlan);
      await page.evaluate((one) => faultsOnPage.begin([one]), { ...reading, startWith: [1] });
      expect(await said(page)).toEqual([DEVICE_ERRORS.lost.text]);
    },
  },
  {
    done: 'the battery is low',
    route: 'mock radio',
    work: async ({ page, radio, chooser }) => {
      const level = { uuid: batteryLevel, flags: ['read'], value: Uint8Array.of(9) } as const;
      const device = openDevice();
      radio.add({ ...device, services: [...device.services, { uuid: batteryService, characteristics: [level] }] });
      chooser.choose(cell);
      await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      const percent = await page.evaluate(() => faultsOnPage.battery());
      expect(fill(HELD_WORDS['battery-low'], { percent: percent! })).toBe('9 %. Charge it before the next person.');
    },
  },
  {
    done: 'the list of the browser is closed without a choice',
    route: 'mock radio',
    work: async ({ page, chooser }) => {
      chooser.cancel();
      await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      expect(await said(page)).toEqual([DEVICE_ERRORS['not-chosen'].text]);
    },
  },
  {
    done: 'noise on a serial line: read on at the next line, what was damaged is said and counted',
    route: 'scripted port',
    work: async ({ page }) => {
      await beginSerialCell(page);
      const line = (n: number): number[] =>
        n === 30 ? [0xff, 0x80, 0x3b, 0x0a] : [...new TextEncoder().encode(`${n};${forceOf(n)}\n`)];
      const send = (numbers: readonly number[]): Promise<void> =>
        page.evaluate((part) => onPage.scripted.send(Uint8Array.from(part)), numbers.flatMap(line));
      await send(upTo(60));
      await haveCome(page, 59);
      await page.evaluate(() => onPage.scripted.disturb('FramingError'));
      await send(upTo(20, 60));
      await haveCome(page, 79);
      const ended = await end(page);
      expectKept(keptOf(ended), [30], 80);
      expect(await said(page)).toContain(LIVE_WORDS.disturbed.text);
      expect(ended.loss[0]).toBe(fill(HELD_WORDS['lost-known'], { lost: 1, all: 80 }));
    },
  },
  {
    done: 'the cable of a serial sensor is pulled: the stream ends, all that came is kept',
    route: 'scripted port',
    work: async ({ page }) => {
      await beginSerialCell(page, 400);
      const text = upTo(50).map((n) => `${n};${forceOf(n)}\n`);
      await page.evaluate((all50) => onPage.scripted.send(new TextEncoder().encode(all50)), text.join(''));
      await haveCome(page, 50);
      await page.evaluate(() => {
        onPage.scripted.refuse('NetworkError');
        for (let i = 0; i < 20; i += 1) onPage.scripted.refuse('NetworkError');
        onPage.scripted.unplug();
      });
      await isSaid(page, SOURCE_ERRORS.lost.text);
      expectKept(keptOf(await end(page)), [], 50);
    },
  },
  {
    done: 'the motion of a phone is not allowed',
    route: 'emulated motion',
    work: async ({ page, origin }) => {
      const session = await page.context().newCDPSession(page);
      const permission = { name: 'accelerometer' };
      await session.send('Browser.setPermission', { permission, setting: 'denied', origin });
      const outcome = await page.evaluate(() => onPage.followMotion(500));
      await session.send('Browser.setPermission', { permission, setting: 'granted', origin });
      expect(outcome).toBe('not-allowed');
      expect(DEVICE_ERRORS['not-allowed'].text).toContain('Allow it in the settings');
    },
  },
  {
    done: 'the page came over plain http',
    route: 'browser alone',
    work: async ({ page, origin }) => {
      await page.goto(origin.replace('localhost', strangeName));
      await page.waitForFunction('"faultsOnPage" in globalThis');
      await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      expect(await said(page)).toEqual([DEVICE_ERRORS['insecure-page'].text]);
    },
  },
  {
    done: 'the description of a sensor has a fault: said with its place',
    route: 'browser alone',
    work: () => {
      const path = new URL('../../shared/sensors/examples/load-cell.json', import.meta.url);
      const answer = readSensorDescription(readFileSync(path, 'utf8').replace('"i24"', '"i99"'));
      expect(answer.kind).not.toBe('description');
      expect(JSON.stringify(answer)).toContain('link.characteristics[0].packets[0].fields[4].values[0].form');
      return Promise.resolve();
    },
  },
]);
