// The page of sensors, walked by what a person sees.
import { decodeBlocks } from '@surae/records';
import { HELD_WORDS, LIVE_WORDS, READY_WORDS, SENSOR_PLACE, SENSOR_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { words } from './journey.mjs';
import { storedBodies, storedPieces } from './stored.ts';

/** From the page where a test is made ready to the page of sensors. */
export async function goToSensors(page: Page): Promise<void> {
  await page.getByRole('radio', { name: LIVE_WORDS.live.text }).check();
  const names = [LIVE_WORDS.connect.text, LIVE_WORDS.look.text];
  await page.getByRole('link', { name: new RegExp(`^(${names.join('|')})$`) }).click();
  await page.getByRole('heading', { name: SENSOR_PLACE.title.text }).waitFor();
}

/** Takes a description from a file. */
export async function importDescription(page: Page, json: unknown): Promise<void> {
  const buffer = Buffer.from(JSON.stringify(json));
  await page
    .getByLabel(SENSOR_WORDS.import.text)
    .setInputFiles({ name: 'sensor.json', mimeType: 'application/json', buffer });
  await page.getByText(words(SENSOR_WORDS.imported)).waitFor();
}

/** Asks for a Bluetooth sensor of a kind, by its name in the list, and waits until it is connected. */
export async function connectBluetooth(page: Page, kind: string): Promise<void> {
  await page.getByRole('radio', { name: SENSOR_WORDS.bluetooth.text }).check();
  await page.getByLabel(SENSOR_WORDS.kind.text).selectOption({ label: kind });
  await page.getByRole('button', { name: SENSOR_WORDS['choose-bluetooth'].text }).click();
  await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).waitFor();
}

/** Back to the visit, where the connected sensor is chosen already. */
export async function backToVisit(page: Page): Promise<void> {
  await page.getByRole('link', { name: SENSOR_WORDS.back.text }).click();
  await page.getByRole('radio', { name: LIVE_WORDS.live.text, checked: true }).waitFor();
  await page.getByText(READY_WORDS.source.text).waitFor();
}

/** Samples of a stored stream: the number of each since the stream began, its values and its times. */
export interface StoredSamples {
  readonly numbers: number[];
  /** one list for each channel, SI */
  readonly channels: number[][];
  /** [s] */
  readonly timesS: number[];
}

export async function storedSamples(page: Page, streamId: string): Promise<StoredSamples> {
  const blocks = decodeBlocks(await storedPieces(page, streamId)).toSorted((a, b) => a.firstIndex - b.firstIndex);
  return {
    numbers: blocks.flatMap(({ firstIndex, channels }) => Array.from(channels[0].samples, (_, i) => firstIndex + i)),
    channels: (blocks[0]?.channels ?? []).map((_, k) => blocks.flatMap(({ channels }) => [...channels[k].samples])),
    timesS: blocks.flatMap(({ deviceTimesS }) => [...(deviceTimesS ?? [])]),
  };
}

interface Begun {
  readonly bytesId: string;
  readonly choice: { readonly origin: string; readonly sensor?: Record<string, unknown> };
}

/** The last set that was begun, and what is stored of it. */
export async function storedSet(page: Page): Promise<Begun & { readonly stored: StoredSamples }> {
  const begun = (await storedBodies<Begun>(page, 'set-begun')).at(-1)!;
  return { ...begun, stored: await storedSamples(page, begun.bytesId) };
}
