// The page of the device tests, driven from the test.
import type { Page } from 'playwright-core';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import type { Outcome } from './page.ts';

/** Asks for a device as after a press of a button. */
export function choose(page: Page, plan: BluetoothPlan, limitMs = 5000): Promise<Outcome> {
  return page.evaluate(([wanted, limit]) => onPage.chooseBluetooth(wanted, limit), [plan, limitMs] as const);
}

export function open(page: Page, device = 0): Promise<Outcome> {
  return page.evaluate((n) => onPage.open(n), device);
}

export function close(page: Page, device = 0): Promise<void> {
  return page.evaluate((n) => onPage.close(n), device);
}

/** What was told of a device, in order. */
export function told(page: Page, device = 0): Promise<readonly string[]> {
  return page.evaluate((n) => onPage.told(n), device);
}

/** The numbers of what came, when it came and from which stream. */
export function counters(page: Page, device = 0): Promise<{ numbers: number[]; timesMs: number[]; streams: number[] }> {
  return page.evaluate((n) => onPage.counters(n), device);
}

/** Waits until so many pieces came from a device. */
export async function arrived(page: Page, count: number, device = 0): Promise<void> {
  await page.waitForFunction(([n, many]) => onPage.devices[n].arrived.length >= many, [device, count] as const);
}

/** Waits until something is told of a device. */
export async function isTold(page: Page, device = 0): Promise<void> {
  await page.waitForFunction((n) => onPage.told(n).length > 0, device);
}

/** Whole numbers, so many from one on. */
export function upTo(count: number, from = 0): number[] {
  return Array.from({ length: count }, (_, i) => from + i);
}
