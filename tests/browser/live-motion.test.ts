import { counterInput } from '@surae/analysis';
import { HELD_WORDS, SENSOR_WORDS } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { MovedPhone } from './support/devices/moved-phone.ts';
import { goToFirstSet, sayEnd, startSet, waitForCount } from './support/journey.mjs';
import { backToVisit, goToSensors, storedSet } from './support/sensors.ts';

browserTest('the phone itself counts raises, and what it told is stored in its order', async ({ page, origin }) => {
  page.setDefaultTimeout(25_000);
  const phone = await MovedPhone.of(page);
  const { trace } = simulateSet({ placement: 'foot', level: 'typical', seed: 4, count: 20 });
  const { timesS, channels } = counterInput(trace, 'foot');
  const at = (i: number) => {
    const [ax, ay, az, gx, gy, gz] = channels.map(({ samples }) => samples[i]);
    return { force: [ax, ay, az], turning: [gx, gy, gz] } as const;
  };
  await goToFirstSet(page, origin);
  await goToSensors(page);
  await page.getByRole('radio', { name: SENSOR_WORDS.motion.text }).check();
  await page.getByRole('button', { name: SENSOR_WORDS['follow-motion'].text }).click();
  await phone.move(at(0));
  await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).waitFor();
  const rateHz = (timesS.length - 1) / (timesS[timesS.length - 1] - timesS[0]);
  const positions = Array.from(timesS, (_, i) => at(i));
  const moving = phone.moveThrough(positions, rateHz).catch(() => {});
  await page.getByText(HELD_WORDS['lost-open'].text).waitFor();
  await backToVisit(page);
  await startSet(page, 'left', { placement: 'foot' });
  await waitForCount(page, 2);
  await page.keyboard.press(' ');
  await sayEnd(page, 'left');
  const { choice, stored } = await storedSet(page);
  expect(choice).toMatchObject({ origin: 'live', sensor: { route: 'motion' } });
  // the browser rounds to 0.1 m/s2, and tells about 60 readings a second: each is one that was set, and none goes back
  let place = 0;
  const strays: number[] = [];
  stored.numbers.forEach((_, i) => {
    const isAt = (n: number): boolean =>
      [0, 1, 2].every((k) => Math.abs(stored.channels[k][i] - positions[n].force[k]) <= 0.05 + 1e-9);
    let next = place;
    while (next < positions.length && !isAt(next)) next += 1;
    if (next === positions.length) strays.push(i);
    else place = next;
  });
  // three sensors are set one after the other: a reading in between may hold a part of each
  expect(strays.length).toBeLessThan(stored.numbers.length / 20);
  expect(stored.timesS.every((timeS, i) => i === 0 || timeS > stored.timesS[i - 1])).toBe(true);
  process.stdout.write(
    `Motion of this device, live set: ${stored.numbers.length} readings, ${strays.length} between two positions.\n`,
  );
  await page.close();
  await moving;
});
