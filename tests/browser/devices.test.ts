import { expect } from 'vitest';
import { devicePageTests, strangeName } from './support/devices/device-page-test.ts';
import { choose, upTo } from './support/devices/driven.ts';
import { MovedPhone } from './support/devices/moved-phone.ts';
import { forcePlan } from './support/radio/force-device.ts';

devicePageTests({
  'the motion of a phone comes in the axes of the device, in units of the SI': async ({ page }) => {
    const phone = await MovedPhone.of(page);
    const following = page.evaluate(() => onPage.followMotion(5000));
    await phone.move({ force: [1, -2, 9.81], turning: [0.1, 0.2, -0.3] });
    expect(await following).toBe('done');
    const motion = await page.evaluate(() => onPage.motion);
    // the browser rounds to 0.1 m/s2 and to 0.1 degrees a second
    for (const [name, value, step] of [
      ['acceleration x', 1, 0.1],
      ['acceleration y', -2, 0.1],
      ['acceleration z', 9.81, 0.1],
      ['angular-velocity x', 0.1, 0.00175],
      ['angular-velocity y', 0.2, 0.00175],
      ['angular-velocity z', -0.3, 0.00175],
    ] as const) {
      const told = motion[name].at(-1)!;
      expect([name, Math.abs(told - value) <= step / 2 + 1e-9, told]).toEqual([name, true, told]);
    }
    await page.evaluate(() => onPage.stopMotion());
  },

  'rate and steps of a moving phone are measured, and say what the browser does': async ({ page }) => {
    const phone = await MovedPhone.of(page);
    const following = page.evaluate(() => onPage.followMotion(5000));
    const positions = upTo(300).map((i) => ({
      force: [Math.sin(i / 15), Math.cos(i / 10), 9.81 + 2 * Math.sin(i / 12)] as const,
      turning: [Math.sin(i / 8), 0.5 * Math.cos(i / 9), 0.02 * Math.sin(i / 5)] as const,
    }));
    await phone.moveThrough(positions, 100);
    expect(await following).toBe('done');
    const quality = await page.evaluate(() => onPage.motionQuality());
    const { readings, rateHz, statedIntervalMs, incomplete, accelerationStep, turningStep } = quality;
    process.stdout.write(`Motion of a phone in this browser: ${JSON.stringify(quality)}\n`);
    expect([incomplete, statedIntervalMs]).toEqual([0, 16]);
    expect(readings).toBeGreaterThan(30);
    // no more than a display shows, however often the sensor is read
    expect(rateHz).toBeGreaterThan(5);
    expect(rateHz).toBeLessThan(70);
    expect(Math.abs(accelerationStep! - 0.1)).toBeLessThan(1e-9);
    expect(Math.abs(turningStep! * (180 / Math.PI) - 0.1)).toBeLessThan(1e-9);
    await page.evaluate(() => onPage.stopMotion());
  },

  'a machine without a motion sensor says so': async ({ page }) => {
    expect(await page.evaluate(() => onPage.followMotion(500))).toBe('no-sensor');
  },

  'motion that is not allowed says so': async ({ page, origin }) => {
    const session = await page.context().newCDPSession(page);
    const permission = { name: 'accelerometer' };
    await session.send('Browser.setPermission', { permission, setting: 'denied', origin });
    expect(await page.evaluate(() => onPage.followMotion(500))).toBe('not-allowed');
    await session.send('Browser.setPermission', { permission, setting: 'granted', origin });
  },

  'a page over plain http names the address as the reason': async ({ page, origin }) => {
    await page.goto(origin.replace('localhost', strangeName));
    await page.waitForFunction('"onPage" in globalThis');
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    expect(await choose(page, forcePlan)).toBe('insecure-page');
    expect(await page.evaluate(() => onPage.knownPort(9600))).toBe('insecure-page');
    expect(await page.evaluate(() => onPage.choosePort())).toBe('insecure-page');
    expect(await page.evaluate(() => onPage.followMotion(500))).toBe('insecure-page');
  },

  'a browser without Web Bluetooth names itself as the reason': async ({ page }) => {
    expect(await page.evaluate(() => 'bluetooth' in navigator)).toBe(false);
    expect(await choose(page, forcePlan)).toBe('no-interface');
  },
});
