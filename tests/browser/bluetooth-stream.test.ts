import { adoptedCharacteristics, industrialMeasurementService, openSamples, packetEncoder } from '@surae/sensors';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { BluetoothPlan } from '../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { upTo } from './support/devices/driven.ts';
import type { Reading } from './support/devices/page.ts';
import {
  forceOf,
  openCellLayout,
  openDevice,
  openPackets,
  openPlan,
  sampleStepS,
  samplesPerPacket,
} from './support/radio/open-device.ts';
import { cutShort, held, inBeats, swapped, twice, without } from './support/radio/packet-faults.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';

const cell = 'Invented open cell';
const reading: Reading = { layout: openCellLayout, nominalRateHz: 500, samplesPerPacket: null };
const beatHz = 500 / samplesPerPacket;

/** Samples that are under way when the connection breaks, or sent before the page listens again, at most. */
const fewBesideBreak = 200;

/** The packet before which the connection breaks. */
const breakAt = 220;

const stream = (page: Page, plan: BluetoothPlan, how: Reading): Promise<string> =>
  page.evaluate(([wanted, told]) => onPage.stream(wanted, told), [plan, how] as const);

/** Every sample that was streamed: its number, its value and its time by the device. */
async function samplesOf(page: Page): Promise<{ numbers: number[]; values: number[]; timesS: (number | null)[] }> {
  const runs = await page.evaluate(() => onPage.runs);
  return {
    numbers: runs.flatMap(({ firstIndex, values }) => upTo(values.length, firstIndex)),
    values: runs.flatMap(({ values }) => values),
    timesS: runs.flatMap(({ timesS, values }): readonly (number | null)[] => timesS ?? values.map(() => null)),
  };
}

/** Waits until all that was sent has been read. */
async function isRead(page: Page, atLeast: number): Promise<void> {
  const count = (): number => onPage.runs.reduce((sum, { values }) => sum + values.length, 0);
  await page.waitForFunction(`(${count.toString()})() >= ${atLeast}`);
}

radioTests('what a Bluetooth sensor sends is what is streamed', {
  'each sample has the number, value and time that it was sent with, and each lost one is a hole': async (given) => {
    const { page, radio, chooser } = given;
    const device = radio.add(openDevice());
    chooser.choose(cell);
    expect(await stream(page, openPlan, reading)).toBe('done');
    // both the counter and the clock begin again on the way
    const run = { packetCount: 600, fromCounter: 65_000, fromS: 2 ** 32 / 1e6 - 1.5, fastPpm: 200 };
    let beats = inBeats(openPackets(run));
    beats = without(beats, 60, 2);
    beats = twice(beats, 100);
    beats = swapped(beats, 130);
    beats = held(beats, 150, 10);
    beats = cutShort(beats, 180, 11);
    const lostPackets = new Set([60, 61, 180]);
    let beat = 0;
    const stall = page.evaluate(() => onPage.stall(1000));
    await sendAtRate(beats, beatHz, (packets) => {
      if (beat === breakAt) {
        device.refuse(1);
        device.dropLink();
      }
      for (const packet of packets) if (!device.notify(openSamples, packet)) lostPackets.add(beat);
      beat += 1;
      return true;
    });
    await stall;
    const lost = new Set([...lostPackets].flatMap((packet) => upTo(samplesPerPacket, packet * samplesPerPacket)));
    const sent = upTo(run.packetCount * samplesPerPacket).filter((n) => !lost.has(n));
    // the end of the stream came through: the connection was back by then
    expect(lost.has(run.packetCount * samplesPerPacket - 1)).toBe(false);
    await isRead(page, sent.length - fewBesideBreak);
    const summary = await page.evaluate(() => onPage.endStream());
    const { numbers, values, timesS } = await samplesOf(page);
    // what is under way when a connection breaks never comes, and a page may listen a moment later than a device notifies:
    // that is lost too, and known; it lies at the ends of the hole that the broken connection left
    const unheard = sent.filter((n) => !numbers.includes(n));
    expect(unheard.length).toBeLessThan(fewBesideBreak);
    const hole = [...lost, ...unheard]
      .filter((n) => n >= breakAt * samplesPerPacket - fewBesideBreak)
      .sort((x, y) => x - y);
    expect(hole).toEqual(upTo(hole.length, hole[0]));
    expect(unheard.every((n) => hole.includes(n))).toBe(true);
    expect(numbers).toEqual(sent.filter((n) => !unheard.includes(n)));
    expect(values).toEqual(numbers.map(forceOf));
    const worst = Math.max(...timesS.map((time, i) => Math.abs(time! - timesS[0]! - numbers[i] * sampleStepS(run))));
    // the course of the samples follows a clock that is fast by 200 ppm a little at a time: 16 packets of 12 ms behind it
    expect(worst).toBeLessThan(6e-5);
    expect(summary).toMatchObject({
      placedBy: 'counter',
      lossKnowledge: 'known',
      receivedCount: numbers.length,
      lostCount: lost.size + unheard.length,
      duplicateCount: samplesPerPacket,
      reorderedCount: 1,
      lateCount: 0,
      refusedPacketCount: 1,
      restartCount: 0,
      reconnectCount: 1,
    });
    const news = await page.evaluate(() => onPage.news);
    expect(news).toEqual(['lost', 'waiting', 'trying', 'waiting', 'trying', 'back', 'ended']);
    process.stdout.write(
      `Open packet over a mock radio: ${numbers.length} samples as sent, ${lost.size + unheard.length} lost and known.\n`,
    );
  },

  'a sensor that begins anew is told, and what came before is kept': async ({ page, radio, chooser }) => {
    const device = radio.add(openDevice());
    chooser.choose(cell);
    expect(await stream(page, openPlan, reading)).toBe('done');
    const run = { packetCount: 60, fromCounter: 30_000, fromS: 100, fastPpm: 0 };
    await sendAtRate(openPackets(run), beatHz, (packet) => device.notify(openSamples, packet));
    await isRead(page, 60 * samplesPerPacket);
    device.dropLink();
    await device.listened(openSamples);
    const anew = openPackets({ ...run, fromCounter: 0, fromS: 0.5 });
    await sendAtRate(anew, beatHz, (packet) => device.notify(openSamples, packet) || true);
    await page.waitForFunction(() => onPage.news.at(-1) === 'failed: restarted');
    const { numbers, values } = await samplesOf(page);
    expect(numbers).toEqual(upTo(60 * samplesPerPacket));
    expect(values).toEqual(numbers.map(forceOf));
  },

  'a sensor that stays away ends the stream in its time, and what came is kept': async ({ page, radio, chooser }) => {
    const device = radio.add(openDevice());
    chooser.choose(cell);
    const settings = { longestHoleMs: 1000 };
    expect(await stream(page, openPlan, { ...reading, settings })).toBe('done');
    const run = { packetCount: 30, fromCounter: 0, fromS: 0, fastPpm: 0 };
    await sendAtRate(openPackets(run), beatHz, (packet) => device.notify(openSamples, packet));
    await isRead(page, 30 * samplesPerPacket);
    device.refuse(100);
    device.dropLink();
    await page.waitForFunction(() => onPage.news.at(-1) === 'failed: lost');
    expect((await samplesOf(page)).values).toEqual(upTo(30 * samplesPerPacket).map(forceOf));
  },

  'an adopted characteristic streams every value, and says that nothing tells what was lost': async (given) => {
    const { page, radio, chooser } = given;
    const force = adoptedCharacteristics.find(({ name }) => name === 'Force')!;
    const { characteristic, layout } = force;
    const device = radio.add({
      address: 'C0:FF:EE:00:00:04',
      name: 'Adopted cell',
      services: [
        { uuid: industrialMeasurementService, characteristics: [{ uuid: characteristic, flags: ['notify'] }] },
      ],
    });
    chooser.choose('Adopted cell');
    const plan: BluetoothPlan = {
      advertised: [industrialMeasurementService],
      namePrefix: null,
      streams: [{ service: industrialMeasurementService, characteristic }],
      targets: [],
    };
    expect(await stream(page, plan, { layout, nominalRateHz: 100, samplesPerPacket: 1 })).toBe('done');
    const encode = packetEncoder(layout);
    const values = upTo(150).map(forceOf);
    await sendAtRate(values, 100, (value) => device.notify(characteristic, encode({ channels: [[value]] })));
    await isRead(page, 150);
    const summary = await page.evaluate(() => onPage.endStream());
    expect((await samplesOf(page)).values).toEqual(values);
    expect(summary).toMatchObject({ placedBy: 'arrival', receivedCount: 150, refusedPacketCount: 0 });
    expect(summary.lossKnowledge).not.toBe('known');
  },
});
