// Sensors with which something goes wrong, what the page says then, and what it keeps.
import { decodeBlocks } from '@surae/records';
import { openSamples } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { BluetoothPlan } from '../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { fill } from '../../../apps/dashboard/src/words/fill.ts';
import { isLong } from '../../support/runs.ts';
import { upTo } from './devices/driven.ts';
import type { FaultEnd, FaultReading } from './devices/fault-page.ts';
import { forceOf, openCellLayout, openDevice, openPlan, samplesPerPacket } from './radio/open-device.ts';
import type { Beats } from './radio/packet-faults.ts';
import type { MockPeripheral, PeripheralOptions } from './radio/peripheral.ts';
import { type RadioTest, radioTests } from './radio/radio-test.ts';
import { sendAtRate } from './radio/rated-sender.ts';

export const cell = 'Invented open cell';
export const reading: FaultReading = { layout: openCellLayout, nominalRateHz: 500 };
export const beatHz = 500 / samplesPerPacket;
export const packetCount = 40;
export const run = { packetCount, fromCounter: 100, fromS: 10, fastPpm: 0 };
export const all = packetCount * samplesPerPacket;

/** Samples of some packets, by their number. */
export const samplesOfPackets = (...packets: number[]): number[] =>
  packets.flatMap((packet) => upTo(samplesPerPacket, packet * samplesPerPacket));

export const lost = (count: number): string => fill(HELD_WORDS['lost-known'], { lost: count, all });
export const lostNone = (received: number): string => fill(HELD_WORDS['lost-none'], { received });
/** A sentence with any numbers in its places. */
export const like = ({ text }: { readonly text: string }): RegExp =>
  new RegExp(`^${text.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\w+\}/g, '.+')}$`);

export interface Kept {
  readonly numbers: number[];
  readonly values: number[];
}

/** What is kept of a source: the number of each sample since it began, and its value. */
export function keptOf({ bytes }: FaultEnd, source = 0): Kept {
  const blocks = decodeBlocks([Uint8Array.from(bytes)])
    .filter((block) => (block.source ?? 0) === source)
    .toSorted((a, b) => a.firstIndex - b.firstIndex);
  return {
    numbers: blocks.flatMap(({ firstIndex, channels }) => upTo(channels[0].samples.length, firstIndex)),
    values: blocks.flatMap(({ channels }) => [...channels[0].samples]),
  };
}

/** Every sample but the missing ones is kept, each at its place. */
export function expectKept(kept: Kept, missing: readonly number[] = [], count = all): void {
  const gone = new Set(missing);
  expect(kept.numbers).toEqual(upTo(count).filter((n) => !gone.has(n)));
  expect(kept.values).toEqual(kept.numbers.map(forceOf));
}

export const said = (page: Page): Promise<string[]> => page.evaluate(() => faultsOnPage.said);
export const end = (page: Page): Promise<FaultEnd> => page.evaluate(() => faultsOnPage.end());
export const isSaid = (page: Page, sentence: string): Promise<unknown> =>
  page.waitForFunction((words) => faultsOnPage.said.includes(words), sentence);
export async function haveCome(page: Page, count: number, source = 0): Promise<void> {
  await page.waitForFunction(([many, of]) => (faultsOnPage.counts[of] ?? 0) >= many, [count, source] as const);
}

export async function begun(
  { page, radio, chooser }: RadioTest,
  how: FaultReading = reading,
  device: PeripheralOptions = openDevice(),
  plan: BluetoothPlan = openPlan,
): Promise<MockPeripheral> {
  const peripheral = radio.add(device);
  chooser.choose(device.name);
  await page.evaluate((wanted) => faultsOnPage.choose(wanted), plan);
  await page.evaluate((one) => faultsOnPage.begin([one]), how);
  return peripheral;
}

export const sendTo = (device: MockPeripheral, beats: Beats): Promise<unknown> =>
  sendAtRate(beats, beatHz, (packets) => packets.every((packet) => device.notify(openSamples, packet)));

export type Work = (given: RadioTest) => Promise<void>;

/** What is done to the sensor or the page, which words must follow, and what must be kept of what was sent. */
export interface Fault {
  readonly done: string;
  /** tried in the long run only: it takes its time, or another one is much like it */
  readonly isLong?: true;
  readonly route: 'mock radio' | 'scripted port' | 'emulated motion' | 'browser alone';
  readonly work: Work;
}

/** Tries each fault on a page of its own, all over one radio; says how many, by which route, and how many are left for the long run. */
export function faultTests(title: string, faults: readonly Fault[]): void {
  const tried = faults.filter((fault) => isLong || fault.isLong !== true);
  const routes = [...new Set(tried.map(({ route }) => route))].map(
    (route) => `${tried.filter((fault) => fault.route === route).length} by ${route}`,
  );
  const left = tried.length < faults.length ? `; ${faults.length - tried.length} more in the long run` : '';
  process.stdout.write(`${title}: ${tried.length}; ${routes.join(', ')}${left}.\n`);
  radioTests(title, Object.fromEntries(tried.map(({ done, work }) => [done, work])), { entry: 'fault-page.ts' });
}
