import { expect } from 'vitest';
import { close, open, told, upTo } from './support/devices/driven.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';
import { serialTests } from './support/serial/serial-test.ts';

const encoder = new TextEncoder();

/** Lines as a simple sensor sends them: a number, and a value. */
const lines = (count: number, from = 0): Uint8Array[] => upTo(count, from).map((n) => encoder.encode(`${n};123.456\n`));
const asText = (count: number, from = 0): string =>
  upTo(count, from)
    .map((n) => `${n};123.456\n`)
    .join('');

serialTests({
  'lines at 1000 a second arrive whole and in order, and a busy page loses none': async ({ page, farEnd, isReal }) => {
    expect(await page.evaluate(() => onPage.knownPort(921_600))).toBe('done');
    expect(await open(page)).toBe('done');
    if (isReal) {
      const stall = page.evaluate(() => onPage.stall(1000));
      await sendAtRate(lines(3000), 1000, (line) => farEnd.send(line) === true);
      await stall;
    } else for (const line of lines(200)) await farEnd.send(line);
    const sent = asText(isReal ? 3000 : 200);
    await expect.poll(() => page.evaluate(() => onPage.text(0).length)).toBe(sent.length);
    expect(await page.evaluate(() => onPage.text(0))).toBe(sent);
    expect(await told(page)).toEqual([]);
    await close(page);
  },

  'commands reach the device, every byte as it was': async ({ page, farEnd }) => {
    await page.evaluate(() => onPage.knownPort(921_600));
    expect(await open(page)).toBe('done');
    const bytes = [0, 3, 4, 10, 13, 17, 19, 26, 127, 128, 255];
    expect(await page.evaluate((all) => onPage.write(0, 0, all), bytes)).toBe('done');
    await expect.poll(() => farEnd.received()).toEqual(bytes);
    await close(page);
  },

  'a port that is open already is in use, and can be opened again once it is closed': async ({ page, farEnd }) => {
    await page.evaluate(() => onPage.knownPort(921_600));
    await page.evaluate(() => onPage.knownPort(921_600));
    expect([await open(page, 0), await open(page, 1)]).toEqual(['done', 'in-use']);
    await close(page, 0);
    expect(await open(page, 0)).toBe('done');
    await farEnd.send(encoder.encode('again\n'));
    await expect.poll(() => page.evaluate(() => onPage.text(0))).toBe('again\n');
    expect(await told(page, 0)).toEqual([]);
    await close(page, 0);
  },

  'a cable that is pulled is told once': async ({ page, farEnd }) => {
    await page.evaluate(() => onPage.knownPort(921_600));
    await open(page);
    await farEnd.send(encoder.encode('last\n'));
    await expect.poll(() => page.evaluate(() => onPage.text(0))).toBe('last\n');
    await farEnd.unplug();
    // a read that is under way may fail before the browser knows that the port is gone
    const news = async (): Promise<string[]> =>
      (await told(page)).filter((one, i) => i > 0 || one !== 'disturbed: UnknownError');
    await expect.poll(news).toEqual(['lost']);
    expect(await page.evaluate(() => onPage.write(0, 0, [1]))).toBe('not-open');
    expect(await news()).toEqual(['lost']);
  },
});
