import { readFileSync } from 'node:fs';
import { openSamples } from '@surae/sensors';
import {
  DESCRIBE_PLACE,
  DESCRIBE_WORDS,
  HELD_WORDS,
  LIVE_WORDS,
  SENSOR_KIND_WORDS,
  SENSOR_PLACE,
  SENSOR_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { goToFirstSet, words } from './support/journey.mjs';
import { heelDevice, heelPackets, heelSamplesPerPacket } from './support/radio/heel-string.ts';
import { cutShort, inBeats, without } from './support/radio/packet-faults.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { reads } from './support/read-fault.ts';
import { connectBluetooth, goToSensors, importDescription } from './support/sensors.ts';
import { isSound } from './support/sound.ts';

const example = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../shared/sensors/examples/${name}.json`, import.meta.url), 'utf8'));

radioTests(
  'the page of sensors',
  {
    'a description is taken from a file, refused with the place of each fault, written on, and taken back': async (
      given,
    ) => {
      const { page, origin } = given;
      await page.goto(`${origin}/`);
      await page.getByRole('link', { name: SENSOR_PLACE.link.text, exact: true }).click();
      await page.getByText(SENSOR_WORDS['kept-none'].text).waitFor();
      await isSound(page, 'sensors-empty');
      const bad = { ...(example('load-cell') as object), placement: 'elbow' };
      const file = page.getByLabel(SENSOR_WORDS.import.text);
      await file.setInputFiles({
        name: 'bad.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(bad)),
      });
      await page.getByText(/placement: expected one of .+ got "elbow"/).waitFor();
      await reads(page, 'description-fault', { file: 'bad.json' });
      await isSound(page, 'sensors-refused');
      await importDescription(page, example('load-cell'));
      await importDescription(page, example('string-at-the-heel'));
      await isSound(page, 'sensors-kept');
      await page
        .getByRole('link', { name: words(SENSOR_WORDS['change-of']) })
        .first()
        .click();
      await page.getByRole('heading', { name: DESCRIBE_PLACE.title.text }).waitFor();
      await page.getByText(DESCRIBE_WORDS.usable.text).waitFor();
      // packet 17 at 0.5 s with 1.23 N and a value that is not known
      await page.getByLabel(DESCRIBE_WORDS.bytes.text).fill('42 00 11 00 40 00 02 00 00 7B 80 00 00 5A');
      await page.getByText('Packet of kind 1, samples: 2. Number 17. Time 0.5 s.').waitFor();
      await page.getByRole('cell', { name: '1.23', exact: true }).waitFor();
      await page.getByRole('cell', { name: words(DESCRIBE_WORDS.missing) }).waitFor();
      await isSound(page, 'describe');
      const text = page.getByLabel(DESCRIBE_WORDS.text.text, { exact: true });
      await text.fill((await text.inputValue()).replace('"i24"', '"i99"'));
      await page.getByText(/link\.characteristics\[0\]\.packets\[0\]\.fields\[4\]\.values\[0\]\.form/).waitFor();
      await isSound(page, 'describe-faults');
      await text.fill((await text.inputValue()).replace('"i99"', '"i24"').replace('0.01', '0.02'));
      await page.getByRole('cell', { name: '2.46', exact: true }).waitFor();
      await page.getByRole('button', { name: DESCRIBE_WORDS.keep.text }).click();
      await page.getByText(words(DESCRIBE_WORDS.kept)).waitFor();
      await page.getByRole('link', { name: DESCRIBE_WORDS.back.text }).click();
      const takeBack = page.getByRole('button', { name: words(SENSOR_WORDS['take-back-of']) });
      await expect.poll(() => takeBack.count()).toBe(2);
      await takeBack.first().click();
      await expect.poll(() => takeBack.count()).toBe(1);
    },

    'a sensor that streams is seen with its holes, its rate and what it lost; what cannot be reached says why': async (
      given,
    ) => {
      const { page, origin, radio, chooser } = given;
      const device = radio.add(heelDevice(12));
      await goToFirstSet(page, origin);
      await goToSensors(page);
      for (const [route, said] of [
        [SENSOR_WORDS.serial, SENSOR_WORDS['serial-none']],
        [SENSOR_WORDS.simulated, SENSOR_WORDS['in-visit']],
        [SENSOR_WORDS.file, SENSOR_WORDS['in-visit']],
      ]) {
        await page.getByRole('radio', { name: route.text }).check();
        await page.getByText(said.text).waitFor();
      }
      await page.getByRole('radio', { name: SENSOR_WORDS.motion.text }).check();
      await page.getByRole('button', { name: SENSOR_WORDS['follow-motion'].text }).click();
      await reads(page, 'motion-without-values');
      await isSound(page, 'sensors-no-motion');
      chooser.cancel();
      await page.getByRole('radio', { name: SENSOR_WORDS.bluetooth.text }).check();
      await page.getByRole('button', { name: SENSOR_WORDS['choose-bluetooth'].text }).click();
      await reads(page, 'not-chosen');

      let beats = inBeats(heelPackets(3000, { fastPpm: 200 }));
      for (let packet = 60; packet < 2900; packet += 70) beats = cutShort(without(beats, packet, 10), packet + 20, 9);
      chooser.choose('Invented string');
      await connectBluetooth(page, SENSOR_KIND_WORDS.open.text);
      await page.getByText(HELD_WORDS.waiting.text).waitFor();
      const sender = new SteadySender(beats, 100 / heelSamplesPerPacket, (packets) =>
        packets.every((packet) => device.notify(openSamples, packet)),
      );
      await reads(page, 'counter-gaps');
      await reads(page, 'short-packets');
      await reads(page, 'clock-drift');
      await reads(page, 'battery-low', { percent: 12 });
      await isSound(page, 'sensors-live');
      await page.getByRole('link', { name: SENSOR_WORDS.back.text }).click();
      await page.getByText(words(LIVE_WORDS.held)).waitFor();
      await page.getByText(fill(LIVE_WORDS['battery-low'], { percent: 12 })).waitFor();
      await page.getByText(HELD_WORDS.streaming.text).waitFor();
      await isSound(page, 'ready-live');
      await page.getByRole('link', { name: LIVE_WORDS.look.text }).click();
      device.refuse(1);
      device.dropLink();
      await page.getByText(words(HELD_WORDS.back)).waitFor();
      await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).click();
      await page.getByText(SENSOR_WORDS['none-held'].text).waitFor();
      await expect.poll(() => device.connected).toBe(false);
      sender.stop();
    },
  },
  { of: 'dashboard' },
);
