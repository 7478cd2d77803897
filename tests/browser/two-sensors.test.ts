import { openSamples } from '@surae/sensors';
import { SOURCE_ERRORS } from '@surae/shared';
import { expect } from 'vitest';
import {
  all,
  beatHz,
  cell,
  end,
  expectKept,
  haveCome,
  isSaid,
  keptOf,
  packetCount,
  reading,
  run,
  sendTo,
} from './support/faulty-sensor.ts';
import { openDevice, openPackets, openPlan, samplesPerPacket } from './support/radio/open-device.ts';
import { inBeats } from './support/radio/packet-faults.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';

radioTests(
  'two sensors at once',
  {
    'go on when one of them is lost for good, and all of both is kept': async ({ page, radio, chooser }) => {
      const one = radio.add(openDevice());
      const other = radio.add({ ...openDevice(), address: 'C0:FF:EE:00:00:13', name: 'Second open cell' });
      for (const name of [cell, 'Second open cell']) {
        chooser.choose(name);
        await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      }
      await page.evaluate((how) => faultsOnPage.begin(how), [reading, { ...reading, longestHoleMs: 500 }]);
      const packets = openPackets({ ...run, packetCount: 2 * packetCount });
      const first = sendAtRate(packets, beatHz, (packet) => one.notify(openSamples, packet));
      await sendTo(other, inBeats(openPackets({ ...run, fromCounter: 7000 })));
      await haveCome(page, all, 1);
      other.refuse(100);
      other.dropLink();
      await first;
      await haveCome(page, 2 * all);
      await isSaid(page, SOURCE_ERRORS.lost.text);
      const ended = await end(page);
      expectKept(keptOf(ended, 0), [], 2 * all);
      expectKept(keptOf(ended, 1));
      expect(ended.notes.at(-1)).toContain('no common time line');
    },

    'lie on one time line, within what is said of it, and both are kept raw': async ({ page, radio, chooser }) => {
      const devices = [
        radio.add(openDevice()),
        radio.add({ ...openDevice(), address: 'C0:FF:EE:00:00:13', name: 'Second open cell' }),
      ];
      for (const name of [cell, 'Second open cell']) {
        chooser.choose(name);
        await page.evaluate((plan) => faultsOnPage.choose(plan), openPlan);
      }
      await page.evaluate((how) => faultsOnPage.begin(how), [reading, reading]);
      // long enough for both clocks to be known, also where a busy machine hands on many packets at once
      const count = 900;
      const begunMs: number[] = [];
      let isUnderWay = (): void => {};
      const underWay = new Promise<void>((resolve) => (isUnderWay = resolve));
      await Promise.all(
        devices.map(async (device, n) => {
          // the second begins in the middle of the first
          if (n === 1) await underWay;
          const packets = openPackets({ packetCount: count, fromCounter: 5000 * n, fromS: 100 * n, fastPpm: 0 });
          begunMs[n] = performance.now();
          let sent = 0;
          await sendAtRate(packets, beatHz, (packet) => {
            sent += 1;
            if (sent === 60) isUnderWay();
            return device.notify(openSamples, packet);
          });
        }),
      );
      for (const n of [0, 1]) await haveCome(page, count * samplesPerPacket, n);
      const ended = await end(page);
      for (const n of [0, 1]) expectKept(keptOf(ended, n), [], count * samplesPerPacket);
      expect(ended.map, ended.notes.join('; ')).not.toBeNull();
      // both are sent when their last sample is taken: sample 0 of the second lies so far behind that of the first
      const apartS = (begunMs[1] - begunMs[0]) / 1000;
      const offMs = 1000 * (ended.map!.offsetS - apartS);
      process.stdout.write(
        `Two sensors on one time line: ${offMs.toFixed(1)} ms off, said to be within ${ended.withinMs!.toFixed(1)} ms.\n`,
      );
      expect(Math.abs(offMs)).toBeLessThan(ended.withinMs!);
      expect(ended.withinMs!).toBeLessThan(40);
      expect(ended.notes.some((note) => note.includes('aligned within'))).toBe(true);
    },
  },
  { entry: 'fault-page.ts' },
);
