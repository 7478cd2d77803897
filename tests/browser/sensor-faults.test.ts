import { openSamples } from '@surae/sensors';
import { LIVE_WORDS, SOURCE_ERRORS } from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { upTo } from './support/devices/driven.ts';
import type { FaultEnd } from './support/devices/fault-page.ts';
import {
  all,
  beatHz,
  begun,
  end,
  expectKept,
  faultTests,
  haveCome,
  isSaid,
  keptOf,
  like,
  lost,
  lostNone,
  reading,
  run,
  said,
  samplesOfPackets,
  sendTo,
} from './support/faulty-sensor.ts';
import { forceOf, openPackets, samplesPerPacket } from './support/radio/open-device.ts';
import { type Beats, cutShort, held, inBeats, swapped, twice, without } from './support/radio/packet-faults.ts';
import type { RadioTest } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';

/** A sensor that sends packets with something done to them; what the page says of the loss, and what it keeps. */
async function spoilt(
  given: RadioTest,
  change: (beats: Beats) => Beats,
  missing: readonly number[],
  { more = {}, counts = {} }: { more?: Partial<typeof run>; counts?: Partial<FaultEnd['summaries'][number]> } = {},
): Promise<string> {
  const { page } = given;
  const device = await begun(given);
  await sendTo(device, change(inBeats(openPackets({ ...run, ...more }))));
  await haveCome(page, all - missing.length);
  const ended = await end(page);
  expectKept(keptOf(ended), missing);
  expect(ended.summaries[0]).toMatchObject({ receivedCount: all - missing.length, ...counts });
  return ended.loss[0];
}

faultTests('What goes wrong on the way from a sensor', [
  {
    done: 'two packets are lost on the air: counted, all others kept',
    route: 'mock radio',
    work: async (given) => {
      const missing = samplesOfPackets(20, 21);
      expect(await spoilt(given, (beats) => without(beats, 20, 2), missing)).toBe(lost(missing.length));
    },
  },
  {
    done: 'a packet comes twice: kept once',
    route: 'mock radio',
    work: async (given) => {
      const counts = { duplicateCount: samplesPerPacket };
      expect(await spoilt(given, (beats) => twice(beats, 25), [], { counts })).toBe(lostNone(all));
    },
  },
  {
    done: 'a packet is overtaken: put in its place',
    route: 'mock radio',
    work: async (given) => {
      const counts = { reorderedCount: 1, lateCount: 0 };
      expect(await spoilt(given, (beats) => swapped(beats, 25), [], { counts })).toBe(lostNone(all));
    },
  },
  {
    done: 'ten packets are held back by the radio and come at once: nothing is lost',
    isLong: true,
    route: 'mock radio',
    work: async (given) => expect(await spoilt(given, (beats) => held(beats, 20, 10), [])).toBe(lostNone(all)),
  },
  {
    done: 'the page is busy for a second and all comes in a burst: nothing is lost',
    route: 'mock radio',
    work: async (given) => {
      let stall = Promise.resolve();
      const change = (beats: Beats): Beats => {
        stall = given.page.evaluate(() => onPage.stall(1000));
        return beats;
      };
      expect(await spoilt(given, change, [])).toBe(lostNone(all));
      await stall;
    },
  },
  {
    done: 'counter and clock begin again at 0: nothing is lost',
    route: 'mock radio',
    work: async (given) => {
      const more = { fromCounter: 65_400, fromS: 2 ** 32 / 1e6 - 0.3 };
      expect(await spoilt(given, (beats) => beats, [], { more })).toBe(lostNone(all));
    },
  },
  {
    done: 'the clock of the sensor is fast by a fiftieth of a per cent: nothing is lost, nothing is made up',
    isLong: true,
    route: 'mock radio',
    work: async (given) => {
      const counts = { clockLeapCount: 0, restartCount: 0 };
      expect(await spoilt(given, (beats) => beats, [], { more: { fastPpm: 200 }, counts })).toBe(lostNone(all));
    },
  },
  {
    done: 'a packet is cut short: counted as one that could not be read, its samples as lost',
    route: 'mock radio',
    work: async (given) => {
      const missing = samplesOfPackets(25);
      const counts = { refusedPacketCount: 1 };
      expect(await spoilt(given, (beats) => cutShort(beats, 25, 11), missing, { counts })).toBe(lost(missing.length));
    },
  },
  {
    done: 'a packet is too long and two are garbage: counted, nothing of the others is lost',
    route: 'mock radio',
    work: async (given) => {
      const noise = [Uint8Array.of(...openPackets(run)[0], 7), Uint8Array.of(255, 0, 3), new Uint8Array(20).fill(0xa5)];
      const change = (beats: Beats): Beats => [...beats.slice(0, 10), noise, ...beats.slice(10)];
      expect(await spoilt(given, change, [], { counts: { refusedPacketCount: 3 } })).toBe(lostNone(all));
    },
  },
  {
    done: 'the connection breaks and is back after a second: the stream goes on, the hole is known',
    route: 'mock radio',
    work: async (given) => {
      const { page } = given;
      const device = await begun(given);
      const unheard: number[] = [];
      let packet = 0;
      await sendAtRate(openPackets({ ...run, packetCount: 200 }), beatHz, (bytes) => {
        if (packet === 30) {
          device.refuse(1);
          device.dropLink();
        }
        if (!device.notify(openSamples, bytes)) unheard.push(packet);
        packet += 1;
        return true;
      });
      await page.waitForFunction((count) => faultsOnPage.said.length >= count, 2);
      const ended = await end(page);
      const kept = keptOf(ended);
      expect(kept.values).toEqual(kept.numbers.map(forceOf));
      const missing = upTo(kept.numbers.at(-1)! + 1).filter((n) => !kept.numbers.includes(n));
      // one hole, and it holds all that nobody heard; what is under way when a link breaks is lost with it
      expect(missing).toEqual(upTo(missing.length, missing[0]));
      expect(samplesOfPackets(...unheard).every((n) => missing.includes(n) || n > kept.numbers.at(-1)!)).toBe(true);
      expect(missing.length).toBeLessThan(samplesOfPackets(...unheard).length + 200);
      expect(ended.summaries[0]).toMatchObject({
        lostCount: missing.length,
        reconnectCount: 1,
        lossKnowledge: 'known',
      });
      const [first, second, ...more] = await said(page);
      expect(first).toBe(fill(LIVE_WORDS.lost, { seconds: 10 }));
      expect(second).toMatch(like(LIVE_WORDS.back));
      expect(second).toContain(String(missing.length));
      expect(more).toEqual([]);
    },
  },
  {
    done: 'the connection breaks for good: the stream ends, all that came is kept',
    route: 'mock radio',
    work: async (given) => {
      const { page } = given;
      const device = await begun(given, { ...reading, longestHoleMs: 700 });
      await sendTo(device, inBeats(openPackets(run)));
      await haveCome(page, all);
      device.refuse(100);
      device.dropLink();
      await isSaid(page, SOURCE_ERRORS.lost.text).catch(() => undefined);
      expect((await said(page)).at(-1)).toBe(SOURCE_ERRORS.lost.text);
      expectKept(keptOf(await end(page)));
    },
  },
  {
    done: 'the sensor was switched off and on and counts anew: the stream ends, all that came is kept',
    route: 'mock radio',
    work: async (given) => {
      const { page } = given;
      const device = await begun(given);
      await sendTo(device, inBeats(openPackets({ ...run, fromCounter: 30_000 })));
      await haveCome(page, all);
      device.dropLink();
      await device.listened(openSamples);
      const anew = openPackets({ ...run, packetCount: 20, fromCounter: 0, fromS: 0.5 });
      await sendAtRate(anew, beatHz, (packet) => device.notify(openSamples, packet) || true);
      await isSaid(page, SOURCE_ERRORS.restarted.text);
      expectKept(keptOf(await end(page)));
    },
  },
]);
