import {
  GUESS_ANSWERS,
  GUESS_QUESTIONS,
  HELD_WORDS,
  LIGHT_FIXES,
  LIGHT_SENTENCES,
  LIVE_WORDS,
  PULL_READY_WORDS,
  READY_WORDS,
  REST_LOAD_REFUSALS,
  SENSOR_PLACE,
  SENSOR_WORDS,
  SET_UP_WORDS,
  SOURCE_LIGHT_SENTENCES,
  ZERO_REFUSALS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fixturePath } from '../support/fixture.ts';
import { goToFirstSet, words } from './support/journey.mjs';
import { choosePushes, warmUp } from './support/pulls.mjs';
import { backToVisit, goToSensors, importDescription } from './support/sensors.ts';
import { CellSender } from './support/serial/cell-sender.ts';
import { serialCell } from './support/serial/serial-cell.ts';
import { serialDashboardTests } from './support/serial/serial-test.ts';
import { isSound } from './support/sound.ts';
import { storedBodies } from './support/stored.ts';

/** A fix as its button says it: without the full stop. */
function fixName(reason: 'no-zero' | 'side-missing'): string {
  return LIGHT_FIXES[reason].text.replace(/\.$/, '');
}

/** A simulated person and a recording have lights as well: what nobody can see there is not told. */
async function lightsOfOtherSources(page: Page): Promise<void> {
  await page.getByText(SOURCE_LIGHT_SENTENCES['simulated-worn'].text).waitFor();
  await isSound(page, 'lights-simulated');
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  await page.getByText(SOURCE_LIGHT_SENTENCES['played-none'].text).waitFor();
  await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
  await page
    .getByLabel(READY_WORDS['choose-file'].text)
    .setInputFiles(fixturePath('recordings/made/heel-three-raises.csv'));
  await page.getByText(SOURCE_LIGHT_SENTENCES['played-side'].text).waitFor();
  await page.getByText(SOURCE_LIGHT_SENTENCES['played-none'].text).waitFor({ state: 'detached' });
}

/** What a push leaves open is asked, once; what it contradicts is told; an answer is kept with the visit. */
async function answersWhatIsAsked(page: Page, sender: CellSender): Promise<void> {
  await backToVisit(page);
  const look = page.getByRole('button', { name: SET_UP_WORDS['ask-look'].text });
  const asked = page.getByRole('group', { name: words(GUESS_QUESTIONS.unit) });
  await look.waitFor();
  expect(await asked.count()).toBe(0);
  await look.click();
  await page.getByText(SET_UP_WORDS['ask-nothing'].text).waitFor();
  sender.push(300);
  await expect
    .poll(
      async () => {
        // half of a push tells nothing, so looking too early does no harm
        if (sender.isCaughtUp && (await look.count()) > 0) await look.click();
        return asked.count();
      },
      { interval: 200 },
    )
    .toBe(1);
  await asked.getByText(words(SET_UP_WORDS['ask-guess'])).waitFor();
  await isSound(page, 'asked');
  expect(await look.count()).toBe(0);
  await asked.getByRole('button', { name: 'kgf', exact: true }).click();
  await asked.waitFor({ state: 'detached' });
  const answers = () => storedBodies<{ subject: string; about: string; answer: string }>(page, 'sensor-answer');
  expect(await answers()).toMatchObject([{ subject: 'unit', about: 'force', answer: 'kgf' }]);
  await page.getByText(SET_UP_WORDS['ask-known'].text).click();
  await page.getByText(/^The force comes in kgf: as was answered/).waitFor();
  await isSound(page, 'answered');
  await page.getByRole('button', { name: SET_UP_WORDS['ask-anew'].text }).click();
  await asked.getByRole('button', { name: GUESS_ANSWERS['cannot-tell'].text }).click();
  await asked.waitFor({ state: 'detached' });
}

serialDashboardTests({
  'lights say what is not in order, a zero is refused under load and taken empty, and a calibration is kept with the test':
    async ({ page, origin, farEnd }) => {
      const encoder = new TextEncoder();
      await goToFirstSet(page, origin);
      await lightsOfOtherSources(page);
      await choosePushes(page, 'left');
      await goToSensors(page);
      await importDescription(page, serialCell);
      await page.getByRole('radio', { name: SENSOR_WORDS.serial.text }).check();
      await page
        .getByRole('button', { name: words(SENSOR_WORDS['known-port']) })
        .first()
        .click();
      await page.getByRole('button', { name: HELD_WORDS['let-go'].text }).waitFor();
      await expect.poll(() => farEnd.received()).toEqual([0x53, 0x0a]);
      const sender = new CellSender((text) => void farEnd.send(encoder.encode(text)));
      await page.getByText(HELD_WORDS.streaming.text).waitFor();
      await answersWhatIsAsked(page, sender);
      await page.getByRole('link', { name: LIVE_WORDS.look.text }).click();
      await page.getByRole('heading', { name: SENSOR_PLACE.title.text }).waitFor();
      // a cell that shows twice what hangs on it: read empty, with 10 and with 20 kg, and empty again
      for (const massKg of [0, 10, 20, 0]) {
        sender.hang(2 * massKg * 9.80665, 2.5);
        await page.getByLabel(SET_UP_WORDS['mass-on'].text).fill(String(massKg));
        const rows = page.locator('mass-calibration tr');
        const before = await rows.count();
        await expect
          .poll(
            async () => {
              if (sender.isCaughtUp && (await rows.count()) <= before)
                await page.getByRole('button', { name: SET_UP_WORDS['read-mass'].text }).click();
              return rows.count();
            },
            { interval: 100 },
          )
          .toBeGreaterThan(before);
      }
      await isSound(page, 'masses');
      await page.getByRole('button', { name: SET_UP_WORDS.keep.text }).click();
      await page.getByText(SET_UP_WORDS['now-kept'].text).waitFor();
      const [calibration] = await storedBodies<{ line: { slope: number } }>(page, 'calibration');
      expect(Math.abs(calibration.line.slope - 2)).toBeLessThan(0.01);
      sender.hang(300, 3);
      await backToVisit(page);
      await page.getByText(words(SET_UP_WORDS.calibrated)).waitFor();
      await page.getByRole('radio', { name: PULL_READY_WORDS.inline.text, checked: true }).waitFor();
      await page.getByText(LIGHT_SENTENCES['no-zero'].text).waitFor();
      await page.getByText(LIGHT_SENTENCES['side-missing'].text).waitFor();
      // a calibration knows unit and sign: nothing is left to ask
      expect(await page.getByText(SET_UP_WORDS['ask-title'].text).count()).toBe(0);
      await isSound(page, 'lights-open');
      await page.getByRole('button', { name: fixName('no-zero') }).click();
      await page.getByText(words(ZERO_REFUSALS.loaded)).waitFor();
      expect(await storedBodies(page, 'sensor-zero')).toEqual([]);
      sender.hang(2, 3);
      await expect
        .poll(
          async () => {
            const again = page.getByRole('button', { name: fixName('no-zero') });
            if ((await again.count()) > 0) await again.click();
            return (await storedBodies(page, 'sensor-zero')).length;
          },
          { interval: 100 },
        )
        .toBe(1);
      await page.getByText(words(SET_UP_WORDS['zero-taken'])).waitFor();
      await page.getByRole('button', { name: fixName('side-missing') }).click();
      await page.getByText(LIGHT_SENTENCES['side-missing'].text).waitFor({ state: 'detached' });
      // the leg that rests on a plate: nothing lies on it yet, then it does
      await page.getByRole('radio', { name: PULL_READY_WORDS.platform.text }).check();
      const weigh = page.getByRole('button', { name: SET_UP_WORDS['rest-load-take'].text });
      const weighedUntil = (said: { readonly text: string }) =>
        expect
          .poll(
            async () => {
              if (sender.isCaughtUp) await weigh.click();
              return page.getByText(words(said)).count();
            },
            { interval: 100 },
          )
          .toBe(1);
      // another place is watched anew, from its first sample
      sender.hang(2, 3);
      await weighedUntil(REST_LOAD_REFUSALS['nothing-on-it']);
      sender.hang(122, 4);
      await weighedUntil(SET_UP_WORDS['rest-load-calibrated']);
      await isSound(page, 'lights-zeroed');
      const [zero] = await storedBodies<{ level: number; u: number }>(page, 'sensor-zero');
      expect(Math.abs(zero.level - 2.75)).toBeLessThan(0.5);
      expect(zero.u).toBeGreaterThan(0);
      // the calibration knows which way the reading goes: nothing is open any more
      await warmUp(page, 'left');
      sender.stop();
      const [{ choice }] = await storedBodies<{
        choice: {
          setUp: {
            lights: { name: string; state: string; reason: string }[];
            zero: { level: number } | null;
            restLoad: { loadN: number; uN: number };
            certificate: { hash: string } | null;
          };
        };
      }>(page, 'pull-begun');
      expect(choice.setUp.zero?.level).toBe(zero.level);
      expect(choice.setUp.certificate?.hash).toMatch(/^[0-9a-f]{64}$/);
      // a cell that shows twice what lies on it: 120 above its zero are 60
      expect(Math.abs(choice.setUp.restLoad.loadN - 60)).toBeLessThan(0.5);
      expect(choice.setUp.restLoad.uN).toBeGreaterThan(0);
      expect(choice.setUp.lights.map(({ name, state }) => `${name} ${state}`)).toEqual([
        'connected lit',
        'right-way-up lit',
        'zero lit',
        'side lit',
        'mass lit',
      ]);
    },
});
