import { decodeNotes } from '@surae/records';
import { openSamples } from '@surae/sensors';
import { END_CHOICES, LIVE_WORDS, SENSOR_KIND_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { isLong } from '../support/runs.ts';
import { expectAsSent } from './support/as-sent.ts';
import { upTo } from './support/devices/driven.ts';
import { goToFirstSet, sayEnd, startSet, waitForCount, waitForEnding, words } from './support/journey.mjs';
import { heelDevice, heelPackets, heelSamplesPerPacket, heelStepsOf } from './support/radio/heel-string.ts';
import type { MockPeripheral } from './support/radio/peripheral.ts';
import { type RadioTest, radioTests } from './support/radio/radio-test.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { reads } from './support/read-fault.ts';
import { backToVisit, connectBluetooth, goToSensors, storedSet } from './support/sensors.ts';
import { storedBodies, storedPieces } from './support/stored.ts';

const packetCount = 3000;
const sent = [upTo(packetCount * heelSamplesPerPacket).map((n) => heelStepsOf(n) / 1e4)];

/** A set that runs, with a sensor that goes on to send whether anybody listens. */
async function runningSet(given: RadioTest): Promise<{ device: MockPeripheral; sender: SteadySender<Uint8Array> }> {
  const { page, origin, radio, chooser } = given;
  const device = radio.add(heelDevice());
  chooser.choose('Invented string');
  await goToFirstSet(page, origin);
  await goToSensors(page);
  const sender = new SteadySender(heelPackets(packetCount), 100 / heelSamplesPerPacket, (packet) =>
    device.notify(openSamples, packet),
  );
  await connectBluetooth(page, SENSOR_KIND_WORDS.open.text);
  await backToVisit(page);
  await startSet(page, 'left');
  await waitForCount(page, 3);
  return { device, sender };
}

/** Numbers of samples in packets that nobody heard. */
function unheard({ heard, place }: SteadySender<Uint8Array>): Set<number> {
  const all = new Set(heard);
  const packets = upTo(place).filter((packet) => !all.has(packet));
  return new Set(packets.flatMap((packet) => upTo(heelSamplesPerPacket, packet * heelSamplesPerPacket)));
}

/** Stored numbers, each one more than the one before but for holes: how many holes, and how long the longest is. */
function holesOf(numbers: readonly number[]): { readonly count: number; readonly longest: number } {
  const steps = numbers.slice(1).map((n, i) => n - numbers[i] - 1);
  return { count: steps.filter((step) => step > 0).length, longest: Math.max(...steps) };
}

const lines = (page: Page) => page.locator('running-set');

radioTests(
  'a sensor that is lost while somebody is tested',
  {
    'and comes back soon goes on in the same set, with a hole as long as what is missing': async (given) => {
      const { page } = given;
      const { device, sender } = await runningSet(given);
      device.refuse(2);
      device.dropLink();
      await lines(page).getByText(words(LIVE_WORDS.lost)).waitFor();
      await reads(page, 'link-back');
      await waitForCount(page, 5);
      await page.keyboard.press(' ');
      await sayEnd(page, 'left');
      sender.stop();
      const { stored, bytesId } = await storedSet(page);
      const { count, longest } = holesOf(stored.numbers);
      expect(count).toBe(1);
      // what is under way when the link breaks, and what is sent before the page listens again, is lost too, and known
      const missing = unheard(sender);
      const first = stored.numbers.findIndex((n, i) => n - (stored.numbers[i - 1] ?? n) > 1);
      const hole = stored.numbers[first - 1];
      const whole = new Set([...missing]);
      const from = sent[0].findIndex((_, place) =>
        upTo(40).every((i) => sent[0][place + stored.numbers[i]] === stored.channels[0][i]),
      );
      for (let n = from + hole + 1; n < from + stored.numbers[first]; n += 1) whole.add(n);
      expectAsSent(sent, whole, stored);
      expect(longest * 0.01).toBeGreaterThan(0.5);
      const notes = decodeNotes(await storedPieces(page, bytesId));
      expect(notes).toContain(`samples lost: ${longest}`);
      expect(notes).toContain('new connections: 1');
      expect((await storedBodies<Record<string, unknown>>(page, 'set-stopped')).at(-1)).not.toHaveProperty(
        'sourceLost',
      );
      process.stdout.write(`A link that broke in a set: hole of ${longest} samples, all others as sent.\n`);
    },

    // what comes of it is what comes of a link that stays away
    ...(isLong && {
      'and falls silent while it stays connected ends the set as technical, with all that came': async (given) => {
        const { page } = given;
        const { sender } = await runningSet(given);
        sender.stop();
        await lines(page).getByText(words(LIVE_WORDS.silent)).waitFor();
        await waitForEnding(page, 'left');
        await page.getByText(words(LIVE_WORDS.technical)).waitFor();
        await page.getByRole('radio', { name: END_CHOICES.technical.text, exact: true, checked: true }).waitFor();
        expectAsSent(sent, new Set(), (await storedSet(page)).stored);
        const [stopped] = (await storedBodies<{ sourceLost?: string }>(page, 'set-stopped')).slice(-1);
        expect(stopped?.sourceLost).toMatch(/^No samples came for 1\d s\.$/);
      },
    }),

    'and stays away closes the set as technical, with all that came': async (given) => {
      const { page } = given;
      const { device, sender } = await runningSet(given);
      device.refuse(1000);
      device.dropLink();
      await lines(page).getByText(words(LIVE_WORDS.lost)).waitFor();
      await waitForEnding(page, 'left');
      await reads(page, 'link-lost');
      await page.getByRole('radio', { name: END_CHOICES.technical.text, exact: true, checked: true }).waitFor();
      sender.stop();
      const { stored } = await storedSet(page);
      expectAsSent(sent, new Set(), stored);
      expect((await storedBodies<Record<string, unknown>>(page, 'set-stopped')).at(-1)).toHaveProperty('sourceLost');
      await sayEnd(page, 'left', { reason: 'technical' });
      // the end is written after the button was pressed, and the set of the test before lies in the same store
      const ends = () => storedBodies<{ end: { reason: string } }>(page, 'set-end');
      await expect.poll(async () => (await ends()).map(({ end }) => end.reason)).toContain('technical');
    },
  },
  { of: 'dashboard' },
);
