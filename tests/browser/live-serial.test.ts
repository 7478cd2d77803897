import {
  DESCRIBE_WORDS,
  HELD_WORDS,
  LIVE_WORDS,
  PULL_READY_WORDS,
  PULL_WORDS,
  SENSOR_PLACE,
  SENSOR_WORDS,
  TEST_WORDS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Serial } from '../../apps/dashboard/src/devices/serial-interface.ts';
import { expectAsSent } from './support/as-sent.ts';
import { upTo } from './support/devices/driven.ts';
import { goToFirstSet, words } from './support/journey.mjs';
import { beginTrial, choosePushes, waitForVerdict, warmUp } from './support/pulls.mjs';
import { SteadySender } from './support/radio/steady-sender.ts';
import { reads } from './support/read-fault.ts';
import { backToVisit, goToSensors, importDescription, storedSamples } from './support/sensors.ts';
import { serialCell } from './support/serial/serial-cell.ts';
import { serialDashboardTests } from './support/serial/serial-test.ts';
import { storedBodies } from './support/stored.ts';

const rateHz = 200;
const sampleCount = 20_000;

/** Force by the number of the sample [N]: 40 N at rest, and again and again a ramp to a plateau; a tremble marks the place. */
function forceOf(n: number): number {
  const inCycleS = (n / rateHz) % 12;
  const push = Math.min(1, Math.max(0, inCycleS - 5)) * (inCycleS < 10 ? 500 : 0);
  return 40 + push + (Math.imul(n ^ (n >>> 5), 0x9e3779b1) >>> 28) / 10;
}

/** The first port that the page knows, opened or closed by somebody else on the same page. */
function holdPort(page: Page, isHeld: boolean): Promise<void> {
  return page.evaluate(async (opens) => {
    const { serial } = navigator as unknown as { readonly serial: Serial };
    const [port] = await serial.getPorts();
    await (opens ? port.open({ baudRate: 9600 }) : port.close());
  }, isHeld);
}

/** What the port sends now stands beside its description and is read by it as it is written. */
async function seesItsBytes(page: Page): Promise<void> {
  const sensors = page.url();
  await page.getByRole('link', { name: words(SENSOR_WORDS['change-of']) }).click();
  await page.getByLabel(DESCRIBE_WORDS.live.text).check();
  await page.getByRole('columnheader', { name: 'force [N]' }).waitFor();
  await page.getByText(words(DESCRIBE_WORDS.counter)).first().waitFor();
  const text = page.getByLabel(DESCRIBE_WORDS.text.text, { exact: true });
  await text.fill((await text.inputValue()).replace('"unit": "N"', '"unit": "kgf"'));
  // 40 N as kilograms-force would be some 390 N
  await page
    .getByRole('cell', { name: /^[34]\d\d\.\d+$/ })
    .first()
    .waitFor();
  await page.evaluate((address) => (location.href = address), sensors);
  await page.getByRole('heading', { name: SENSOR_PLACE.title.text }).waitFor();
}

serialDashboardTests({
  'pushes from a serial sensor are stored as sent; lost lines and noise are holes, a cable that is pulled ends one':
    async ({ page, origin, farEnd }) => {
      const encoder = new TextEncoder();
      const isNoise = (n: number): boolean => n % 397 === 150;
      const lines = upTo(sampleCount).map((n) =>
        isNoise(n)
          ? Uint8Array.of(0xff, 0x80, 0x3b, 0x0a)
          : encoder.encode(`${n % 4096};${n * 5};${forceOf(n).toFixed(1)}\n`),
      );
      const sent = [upTo(sampleCount).map((n) => Number(forceOf(n).toFixed(1)))];
      const isCut = (n: number): boolean => n % 397 < 3;
      const lost = new Set(upTo(sampleCount).filter((n) => isCut(n) || isNoise(n)));
      await goToFirstSet(page, origin);
      await choosePushes(page, 'left');
      await goToSensors(page);
      await importDescription(page, serialCell);
      await page.getByRole('radio', { name: SENSOR_WORDS.serial.text }).check();
      // the port that is known is offered first
      const open = page.getByRole('button', { name: words(SENSOR_WORDS['known-port']) }).first();
      await open.waitFor();
      await holdPort(page, true);
      await open.click();
      await reads(page, 'port-in-use');
      await holdPort(page, false);
      await open.click();
      await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).waitFor();
      await expect.poll(() => farEnd.received()).toEqual([0x53, 0x0a]);
      const sender = new SteadySender(lines, rateHz, (line, n) => isCut(n) || farEnd.send(line) === true);
      await page.getByText(HELD_WORDS.streaming.text).waitFor();
      await reads(page, 'serial-noise');
      await seesItsBytes(page);
      await backToVisit(page);
      await page.getByRole('radio', { name: PULL_READY_WORDS.inline.text, checked: true }).waitFor();
      await warmUp(page, 'left');
      await page.getByText(words(LIVE_WORDS.held)).waitFor();
      await beginTrial(page, 1);
      await waitForVerdict(page);
      await beginTrial(page, 2);
      await page.getByText(words(PULL_WORDS.relax)).first().waitFor();
      await page.waitForTimeout(500);
      await farEnd.unplug();
      sender.stop();
      await reads(page, 'port-pulled');
      await page.getByRole('button', { name: TEST_WORDS.stop.text }).click();
      await page.locator('pull-running').waitFor({ state: 'detached' });
      const [begun, cut] = await storedBodies<{ bytesId: string }>(page, 'trial-begun');
      const stored = await storedSamples(page, begun.bytesId);
      const { from, to } = expectAsSent(sent, lost, stored);
      const untilCut = await storedSamples(page, cut.bytesId);
      expect(expectAsSent(sent, lost, untilCut).from).toBeGreaterThan(to);
      const inside = [...lost].filter((n) => n > from && n < to).length;
      expect(inside).toBeGreaterThan(0);
      const [{ choice }] = await storedBodies<{ choice: { origin: string; sensor: object } }>(page, 'pull-begun');
      expect(choice).toMatchObject({ origin: 'live', sensor: { route: 'serial', kindName: serialCell.name } });
      process.stdout.write(
        `Serial lines, live push: ${stored.numbers.length} samples as sent, ${inside} lost and known.\n`,
      );
    },
});
