import { loadavg } from 'node:os';
import { openSamples, openService, packetEncoder } from '@surae/sensors';
import { expect } from 'vitest';
import { isLong } from '../support/runs.ts';
import { upTo } from './support/devices/driven.ts';
import { MemoryWatch } from './support/devices/process-memory.ts';
import { openPlan } from './support/radio/open-device.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { sendAtRate } from './support/radio/rated-sender.ts';
import { sixDevice, sixLayout, sixPerPacket, sixRateHz, sixValue } from './support/radio/six-channels.ts';

/** Half an hour in the long run; SURAE_SOAK_S gives another length [s]. */
const lengthS = Number(process.env['SURAE_SOAK_S'] ?? (isLong ? 1800 : 4));
/** From here on there is enough to say something of memory and pictures [s]. */
const judgedFromS = 120;
const everyS = Math.max(1, lengthS / 120);

interface Reading {
  readonly atS: number;
  readonly ownBytes: number | undefined;
  readonly heapBytes: number;
  readonly keptBytes: number;
}

/** Slope of a line through points, by least squares. */
function slopeOf(points: readonly (readonly [number, number])[]): number {
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const above = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return above / points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
}

/** The packet that begins with a sample. */
const encode = packetEncoder(sixLayout);
function packetFrom(first: number): Uint8Array {
  const numbers = upTo(sixPerPacket, first);
  const channels = upTo(6).map((channel) => numbers.map((n) => sixValue(channel, n)));
  return encode({ counter: first, timeS: first / sixRateHz, channels });
}

const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(2)} MB`;

radioTests(
  `a set of ${lengthS} s, six channels at 1000 Hz, over a mock radio`,
  {
    'comes whole, and neither memory nor pictures suffer': async ({ page, radio, chooser }) => {
      const device = radio.add(sixDevice());
      chooser.choose('Invented foot sensor');
      await page.evaluate((plan) => soakOnPage.begin(plan), { ...openPlan, advertised: [openService] });
      const memory = await MemoryWatch.of(page);
      const readings: Reading[] = [];
      const loads: number[] = [];
      const startMs = performance.now();
      const read = async (): Promise<void> => {
        const { keptBytes } = await page.evaluate(() => soakOnPage.state());
        readings.push({ atS: (performance.now() - startMs) / 1000, keptBytes, ...(await memory.read()) });
        loads.push(loadavg()[0]);
      };
      const packetCount = Math.ceil((lengthS * sixRateHz) / sixPerPacket);
      let reading = Promise.resolve();
      let nextS = 0;
      const sent = await sendAtRate(upTo(packetCount), sixRateHz / sixPerPacket, (packet) => {
        if ((packet * sixPerPacket) / sixRateHz >= nextS) {
          nextS += everyS;
          reading = reading.then(read);
        }
        return device.notify(openSamples, packetFrom(packet * sixPerPacket));
      });
      await reading;
      const sentSamples = packetCount * sixPerPacket;
      await page.waitForFunction((count) => soakOnPage.state().samples >= count, sentSamples, { polling: 100 });
      const { state, summary, sha256, storedBytes } = await page.evaluate(() => soakOnPage.end());

      const settled = readings.filter(({ atS }) => atS >= lengthS / 5);
      const perMinute = (of: (one: Reading) => number | undefined): number =>
        60 * slopeOf(settled.map((one) => [one.atS, of(one) ?? NaN] as const));
      const own = perMinute(({ ownBytes }) => ownBytes);
      const kept = perMinute(({ keptBytes }) => keptBytes);
      const heap = perMinute(({ heapBytes }) => heapBytes);
      const missedShare = state.missedFrames / (state.frames + state.missedFrames);
      const load = loads.reduce((sum, one) => sum + one, 0) / loads.length;
      process.stdout.write(
        [
          `Soak of ${(sent.spanMs / 1000).toFixed(0)} s: ${state.samples} samples of ${sentSamples} sent, ` +
            `${state.wrong} wrong, ${summary.lostCount ?? 'unknown'} lost; ${mb(storedBytes)} on the disk; ` +
            `${state.raises} raises counted.`,
          `Pictures: ${state.frames} shown, ${state.missedFrames} missed, ${(100 * missedShare).toFixed(3)} %; ` +
            `longest wait ${state.longestFrameMs.toFixed(0)} ms.`,
          lengthS < judgedFromS
            ? 'Too short to tell of memory.'
            : `Memory a minute: ${mb(own)} of the process, of which ${mb(kept)} are the samples of the set; ` +
              `${mb(heap)} of the heap of the script. At the end ${mb(readings.at(-1)!.ownBytes ?? NaN)}.`,
          `Load of the machine meanwhile: ${load.toFixed(1)} on average, ${Math.max(...loads).toFixed(1)} at most.\n`,
        ].join('\n'),
      );
      expect(state.samples).toBe(sentSamples);
      expect(state.wrong).toBe(0);
      expect(summary).toMatchObject({ receivedCount: sentSamples, lostCount: 0, lossKnowledge: 'known' });
      expect(sha256).toMatch(/^[0-9a-f]{64}$/);
      expect(storedBytes).toBeGreaterThan(sentSamples * 7 * 8);
      expect(state.raises).toBeGreaterThan(lengthS / 4 - 2);
      expect(state.frames).toBeGreaterThan(0);
      if (lengthS < judgedFromS) return;
      expect(missedShare).toBeLessThan(0.01);
      // what is not the samples themselves
      if (!Number.isNaN(own)) expect(own - kept).toBeLessThan(1e6);
    },
  },
  { entry: 'soak-page.ts', timeoutMs: lengthS * 1000 + 120_000 },
);
