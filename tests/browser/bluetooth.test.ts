import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { arrived, choose, close, counters, isTold, open, told, upTo } from './support/devices/driven.ts';
import {
  COMMANDS,
  forceDevice,
  forcePlan,
  numbered,
  SAMPLES,
  SECOND,
  SERVICE,
  talkingDevice,
} from './support/radio/force-device.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';

const cell = 'Invented cell';
const seconds = inRun(4, 10);

radioTests('a stream from a Bluetooth device', {
  [`${seconds} seconds at 500 packets a second arrive whole and in order`]: async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    expect(await choose(page, forcePlan)).toBe('done');
    expect(await open(page)).toBe('done');
    const { count, spanMs } = await sendAtRate(numbered(500 * seconds), 500, (packet) =>
      device.notify(SAMPLES, packet),
    );
    expect(spanMs).toBeGreaterThan(1000 * seconds - 100);
    await arrived(page, count);
    const { numbers, timesMs } = await counters(page);
    expect(numbers).toEqual(upTo(500 * seconds));
    expect(timesMs.every((time, i) => i === 0 || time >= timesMs[i - 1])).toBe(true);
    expect(await told(page)).toEqual([]);
  },

  'a page that is busy for a second loses nothing, and only the times of arrival are late': async (given) => {
    const { page, radio, chooser } = given;
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    await open(page);
    const stall = page.evaluate(() => onPage.stall(1000));
    await sendAtRate(numbered(750), 500, (packet) => device.notify(SAMPLES, packet));
    await stall;
    await arrived(page, 750);
    const { numbers, timesMs } = await counters(page);
    expect(numbers).toEqual(upTo(750));
    const spanMs = timesMs.at(-1)! - timesMs[0];
    const longest = Math.max(...timesMs.slice(1).map((time, i) => time - timesMs[i]));
    // 1.5 s of packets: either the stall lies between two of them, or it held back all that came before its end
    expect(longest > 500 || spanMs < 1000).toBe(true);
  },

  'values that do not change arrive as often as they were sent': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    await open(page);
    const steady = Array.from({ length: 100 }, () => Uint8Array.of(7, 0, 0, 0));
    await sendAtRate(steady, 500, (packet) => device.notify(SAMPLES, packet));
    await arrived(page, 100);
    expect((await counters(page)).numbers).toEqual(Array.from({ length: 100 }, () => 7));
  },

  'two devices stream at once, and one of them has two streams': async ({ page, radio, chooser }) => {
    const one = radio.add(forceDevice());
    const other = radio.add(forceDevice({ address: 'C0:FF:EE:00:00:02', name: 'Other cell' }));
    const both = [SAMPLES, SECOND].map((characteristic) => ({ service: SERVICE, characteristic }));
    chooser.choose(cell);
    expect(await choose(page, forcePlan)).toBe('done');
    chooser.choose('Other cell');
    expect(await choose(page, { ...forcePlan, streams: both })).toBe('done');
    expect([await open(page, 0), await open(page, 1)]).toEqual(['done', 'done']);
    await Promise.all([
      sendAtRate(numbered(300), 300, (packet) => one.notify(SAMPLES, packet)),
      sendAtRate(numbered(200, 1000), 200, (packet) => other.notify(SAMPLES, packet)),
      sendAtRate(numbered(100, 5000), 100, (packet) => other.notify(SECOND, packet)),
    ]);
    await Promise.all([arrived(page, 300, 0), arrived(page, 300, 1)]);
    expect((await counters(page, 0)).numbers).toEqual(upTo(300));
    const { numbers, streams } = await counters(page, 1);
    expect(numbers.filter((_, i) => streams[i] === 0)).toEqual(upTo(200, 1000));
    expect(numbers.filter((_, i) => streams[i] === 1)).toEqual(upTo(100, 5000));
  },

  'commands reach the device while it streams, one after the other': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    expect(await page.evaluate(() => onPage.write(0, 0, [1]))).toBe('not-open');
    await open(page);
    const sending = sendAtRate(numbered(200), 500, (packet) => device.notify(SAMPLES, packet));
    const outcomes = await page.evaluate(() =>
      Promise.all(Array.from({ length: 20 }, (_, i) => onPage.write(0, 0, [7, i]))),
    );
    expect(outcomes).toEqual(Array.from({ length: 20 }, () => 'done'));
    await sending;
    await arrived(page, 200);
    expect(device.writes).toEqual(upTo(20).map((i) => ({ characteristic: COMMANDS, bytes: Uint8Array.of(7, i) })));
    expect(device.mostAtOnce).toBe(1);
    expect((await counters(page)).numbers).toEqual(upTo(200));
    expect(await page.evaluate(() => onPage.write(0, 1, [1]))).toBe('not-open');
  },

  'battery and names are told by a device that has them, and are open for one that has not': async (given) => {
    const { page, radio, chooser } = given;
    radio.add(talkingDevice(12));
    chooser.choose(cell);
    await choose(page, forcePlan);
    await open(page);
    expect(await page.evaluate(() => onPage.about(0))).toEqual({
      batteryPercent: 12,
      names: { manufacturer: 'Invented Works', model: 'Cell Ü 2', firmware: null, hardware: null, software: null },
    });
    radio.add(forceDevice({ address: 'C0:FF:EE:00:00:02', name: 'Other cell' }));
    chooser.choose('Other cell');
    await choose(page, forcePlan);
    await open(page, 1);
    const { batteryPercent, names } = await page.evaluate(() => onPage.about(1));
    expect([batteryPercent, ...Object.values(names)]).toEqual(Array.from({ length: 6 }, () => null));
  },
});

radioTests('a link that breaks', {
  'a broken link is told once, and is opened again without a person': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    await open(page);
    await sendAtRate(numbered(20), 500, (packet) => device.notify(SAMPLES, packet));
    await arrived(page, 20);
    chooser.cancel();
    device.refuse(2);
    device.dropLink();
    await isTold(page);
    const tries = await page.evaluate(async () => {
      const outcomes: string[] = [];
      while (outcomes.at(-1) !== 'done' && outcomes.length < 5) outcomes.push(await onPage.open(0));
      return outcomes;
    });
    expect(tries).toEqual(['refused', 'refused', 'done']);
    await sendAtRate(numbered(20, 100), 500, (packet) => device.notify(SAMPLES, packet));
    await arrived(page, 40);
    expect((await counters(page)).numbers).toEqual([...upTo(20), ...upTo(20, 100)]);
    expect(await told(page)).toEqual(['lost']);
  },

  'a link that breaks while it is opened is lost, and is not told a second time': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    const both = [SAMPLES, SECOND].map((characteristic) => ({ service: SERVICE, characteristic }));
    chooser.choose(cell);
    await choose(page, { ...forcePlan, streams: both });
    device.dropAtListening(SAMPLES);
    expect(await open(page)).toBe('lost');
    expect(await told(page)).toEqual([]);
    expect(await open(page)).toBe('done');
  },

  'a link that is closed by the page is not told as lost, and can be opened again': async ({
    page,
    radio,
    chooser,
  }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    await open(page);
    await close(page);
    await expect.poll(() => device.connected).toBe(false);
    expect(await open(page)).toBe('done');
    await sendAtRate(numbered(10), 500, (packet) => device.notify(SAMPLES, packet));
    await arrived(page, 10);
    expect((await counters(page)).numbers).toEqual(upTo(10));
    expect(await told(page)).toEqual([]);
  },
});

radioTests('a link that is opened again at once', {
  'the late end of a connection that was closed takes the next one with it once': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    const both = [SAMPLES, SECOND].map((characteristic) => ({ service: SERVICE, characteristic }));
    await choose(page, { ...forcePlan, streams: both });
    await open(page);
    await close(page);
    await expect.poll(() => device.connected).toBe(false);
    device.dropAtListening(SAMPLES);
    expect(await open(page)).toBe('done');
    await sendAtRate(numbered(10), 500, (packet) => device.notify(SAMPLES, packet));
    await arrived(page, 10);
    expect(await told(page)).toEqual([]);
  },
});

radioTests('a Bluetooth device that cannot be used', {
  'a list that is closed without a choice': async ({ page, chooser }) => {
    chooser.cancel();
    expect(await choose(page, forcePlan)).toBe('not-chosen');
  },

  'a page that asks though nobody has pressed anything': async ({ page, origin }) => {
    await page.goto('about:blank');
    await page.goto(`${origin}/#${SERVICE}`);
    await page.waitForFunction(() => document.title !== 'devices');
    expect(await page.title()).toBe('needs-press');
  },

  'a device that refuses': async ({ page, radio, chooser }) => {
    radio.add(forceDevice()).refuse(1);
    chooser.choose(cell);
    await choose(page, forcePlan);
    expect(await open(page)).toBe('refused');
    expect(await told(page)).toEqual([]);
  },

  'a device that never answers': async ({ page, radio, chooser }) => {
    radio.add(forceDevice()).hang();
    chooser.choose(cell);
    await choose(page, forcePlan, 500);
    expect(await open(page)).toBe('no-answer');
  },

  'a device that went away': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice());
    chooser.choose(cell);
    await choose(page, forcePlan);
    radio.remove(device);
    // whoever knows of the second knows that the first is gone
    radio.add(forceDevice({ address: 'C0:FF:EE:00:00:02', name: 'Other cell' }));
    chooser.choose('Other cell');
    expect(await choose(page, forcePlan)).toBe('done');
    expect(await open(page, 0)).toBe('not-found');
  },

  'a device that says that it has a service and has not': async ({ page, radio, chooser }) => {
    const device = radio.add(forceDevice({ services: [], advertised: [SERVICE] }));
    chooser.choose(cell);
    await choose(page, forcePlan);
    expect(await open(page)).toBe('service-missing');
    await expect.poll(() => device.connected).toBe(false);
  },

  'a device that has the service without the characteristic': async ({ page, radio, chooser }) => {
    radio.add(forceDevice({ services: [{ uuid: SERVICE, characteristics: [] }] }));
    chooser.choose(cell);
    await choose(page, forcePlan);
    expect(await open(page)).toBe('service-missing');
  },

  'a characteristic that cannot be listened to': async ({ page, radio, chooser }) => {
    const characteristics = [
      { uuid: SAMPLES, flags: ['read'] },
      { uuid: COMMANDS, flags: ['write'] },
    ] as const;
    radio.add(forceDevice({ services: [{ uuid: SERVICE, characteristics }] }));
    chooser.choose(cell);
    await choose(page, forcePlan);
    expect(await open(page)).toBe('service-missing');
  },
});

radioTests(
  'a machine without a radio',
  {
    'says so when a device is asked for': async ({ page, chooser }) => {
      chooser.cancel();
      expect(await choose(page, forcePlan)).toBe('no-radio');
    },
  },
  { hasAdapter: false },
);
