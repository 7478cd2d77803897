import { handoutCode } from '@surae/exchange';
import { HOME_WORDS, LEGS_FLAG_WORDS, LEGS_PLACE } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { fitsAt, openResult } from './support/result-page.ts';
import { violations } from './support/violations.ts';

interface Spoken {
  readonly text: string;
  readonly voice: string;
}

/** Voices that are played to the page, and what it has them say: a browser without a window has none. */
async function playVoices(
  page: Page,
  voices: readonly { name: string; lang: string; localService: boolean }[],
): Promise<void> {
  await page.addInitScript((given) => {
    const log: object[] = [];
    const speech = Object.assign(new EventTarget(), {
      getVoices: () => given.map((voice) => ({ ...voice, default: false })),
      speak: ({ text, voice }: { text: string; voice: { name: string } }) => log.push({ text, voice: voice.name }),
      cancel: () => log.push({ text: '', voice: 'silence' }),
    });
    class Utterance extends EventTarget {
      readonly text: string;
      constructor(text: string) {
        super();
        this.text = text;
      }
    }
    for (const [name, value] of Object.entries({
      speechSynthesis: speech,
      SpeechSynthesisUtterance: Utterance,
      spoken: log,
    })) {
      Object.defineProperty(globalThis, name, { value });
    }
  }, voices);
}

const spoken = (page: Page): Promise<readonly Spoken[]> =>
  page.evaluate(() => Reflect.get(globalThis, 'spoken') as readonly Spoken[]);

const near = { name: 'near', lang: 'en-GB', localService: true };
const far = { name: 'far', lang: 'en-US', localService: false };
const button = (page: Page) => page.getByRole('button', { name: HOME_WORDS['read-aloud'].text });
const legs = { left: { told: 'did', value: 22, low: 22, high: 22 }, right: null } as const;
const handout = handoutCode({
  day: '2026-03-02',
  asked: 'left',
  usual: { left: 1, right: null, stiffness: null },
  contact: null,
  lines: [],
  legs,
  plan: [],
  planKey: 0,
  series: 0,
  pushes: null,
  weeks: [],
});

browserTest(
  'a page of somebody is read by a voice of the device, in its order, and is silent when it is left',
  async (given) => {
    const { page, origin } = given;
    await playVoices(page, [far, near]);
    await openResult(page, origin, [{ day: '2026-03-02', left: { count: 27 }, right: { count: 19 } }]);
    const visit = new URL(page.url()).hash;
    await page.evaluate((hash) => (location.hash = hash), visit.replace('/visit/', '/legs/'));
    await button(page).click();
    const said = await spoken(page);
    expect(new Set(said.map(({ voice }) => voice))).toEqual(new Set(['silence', 'near']));
    const texts = said.map(({ text }) => text).filter((text) => text !== '');
    // what comes first on the page is read first
    expect(texts[0]).toBe(LEGS_FLAG_WORDS.title.text);
    expect(texts).toContain('Your left leg did 27, your right leg did 19.');
    expect(texts.findIndex((text) => text.startsWith('Picture.'))).toBeGreaterThan(
      texts.indexOf(LEGS_PLACE.title.text),
    );
    await fitsAt(page, 'legs-read-aloud', 360);
    expect(await violations(page)).toEqual([]);
    await page.evaluate((hash) => (location.hash = hash), visit);
    await page.locator('result-step').waitFor();
    expect((await spoken(page)).at(-1)).toEqual({ text: '', voice: 'silence' });
  },
);

browserTest('at home each page is read by itself; a second press and another page end it', async ({ page, origin }) => {
  await playVoices(page, [near]);
  await page.goto(`${origin}/#/mine/${handout}`);
  await button(page).click();
  const first = await spoken(page);
  expect(first.map(({ text }) => text)).toContain(HOME_WORDS['pain-left'].text);
  await page.getByRole('button', { name: HOME_WORDS['read-stop'].text }).click();
  expect((await spoken(page)).at(-1)?.voice).toBe('silence');
  await button(page).click();
  await page.getByRole('button', { name: HOME_WORDS.legs.text, exact: true }).click();
  await page.getByText(/Your left leg did 22/).waitFor();
  await expect.poll(async () => (await spoken(page)).at(-1)?.voice).toBe('silence');
  await button(page).click();
  const last = await spoken(page);
  expect(
    last
      .slice(-12)
      .map(({ text }) => text)
      .join(' '),
  ).toMatch(/Your left leg did 22/);
});

browserTest('where only a voice of the network is there, or none, nothing offers to read', async ({ page, origin }) => {
  await playVoices(page, [far]);
  await page.goto(`${origin}/#/mine/${handout}`);
  await page.getByRole('heading', { name: HOME_WORDS.morning.text }).waitFor();
  expect(await page.locator('read-aloud').count()).toBe(1);
  expect(await button(page).count()).toBe(0);
  expect(await spoken(page)).toEqual([]);
});
