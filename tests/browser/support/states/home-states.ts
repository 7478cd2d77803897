import type { Handout } from '@surae/exchange';
import { EXERCISE_WORDS, HOME_TODAY_WORDS, HOME_WORDS, type Sentence } from '@surae/shared';
import { HOME_HANDOUT, homeHash } from '../../../support/home-address.ts';
import { gpxText, steady } from '../../../support/made-gpx.ts';
import { words } from '../journey.mjs';
import type { Stand, State } from './state.ts';

/** What somebody takes home: another page than the clinic's, at an address of its own. */
export const homeStates: readonly State[] = [
  { name: 'home-morning', area: 'home', reach: open },
  { name: 'home-today', area: 'home', reach: (at) => show(at, HOME_WORDS.today) },
  { name: 'home-today-set', area: 'home', reach: doSet },
  { name: 'home-today-step', area: 'home', reach: (at) => showNext(at, 'step-raise') },
  { name: 'home-today-hold', area: 'home', reach: (at) => showNext(at, 'one-leg-hold') },
  { name: 'home-running', area: 'home', reach: (at) => show(at, HOME_WORDS.running) },
  { name: 'home-run-file', area: 'home', reach: (at) => chooseRun(at, gpxText([[steady(1200, 3)]])) },
  { name: 'home-run-file-refused', area: 'home', reach: (at) => chooseRun(at, '<kml/>') },
  { name: 'home-running-written', area: 'home', reach: writeRun },
  { name: 'home-legs', area: 'home', reach: (at) => show(at, HOME_WORDS.legs) },
  { name: 'home-legs-pushes', area: 'home', reach: (at) => openLegs(at, { ...HOME_HANDOUT, pushes }) },
  { name: 'home-legs-old-code', area: 'home', reach: (at) => openLegs(at, { ...HOME_HANDOUT, weeks: null }) },
  { name: 'home-flare', area: 'home', reach: (at) => show(at, HOME_WORDS.flare) },
  { name: 'home-give', area: 'home', reach: (at) => show(at, HOME_WORDS.give) },
  { name: 'home-left', area: 'home', reach: leave },
];

const pushes: Handout['pushes'] = {
  unit: 'N',
  decimals: 0,
  left: { told: 'reached', value: 1425, low: 1391, high: 1459 },
  right: { told: 'pain', value: 1150, low: 1120, high: 1180 },
};

async function openLegs({ page, origin }: Stand, handout: Handout): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${origin}/${homeHash(handout)}`);
  await page.locator('home-page nav').getByRole('button', { name: HOME_WORDS.legs.text, exact: true }).click();
  await page.getByRole('heading', { name: HOME_WORDS.legs.text, exact: true }).waitFor();
}

async function open({ page, origin }: Stand): Promise<void> {
  await page.goto(`${origin}/${homeHash()}`);
  await page.locator('home-page h1').waitFor();
}

async function show({ page }: Stand, { text }: Sentence): Promise<void> {
  await page.locator('home-page nav').getByRole('button', { name: text, exact: true }).click();
  await page.getByRole('heading', { name: text, exact: true }).waitFor();
}

async function doSet({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: HOME_TODAY_WORDS['one-set-done'].text }).click();
  await page.getByText(words(HOME_TODAY_WORDS['sets-left'])).waitFor();
  await page.getByRole('button', { name: HOME_TODAY_WORDS['one-set-back'].text }).waitFor();
}

async function showNext({ page }: Stand, code: 'step-raise' | 'one-leg-hold'): Promise<void> {
  await page.getByRole('button', { name: HOME_TODAY_WORDS.next.text }).click();
  await page.getByRole('heading', { name: EXERCISE_WORDS[code].text }).waitFor();
}

async function writeRun({ page }: Stand): Promise<void> {
  const more = HOME_TODAY_WORDS['run-more'].text.replace('{what}', HOME_TODAY_WORDS.minutes.text);
  await page.getByRole('button', { name: more }).click();
  await page.getByRole('radio', { name: '2', exact: true }).click();
  await page.getByRole('button', { name: HOME_TODAY_WORDS['write-run'].text }).click();
  await page.getByText(HOME_TODAY_WORDS['over-limit'].text).waitFor();
}

async function chooseRun({ page }: Stand, text: string): Promise<void> {
  const file = { name: 'run.gpx', mimeType: 'application/gpx+xml', buffer: Buffer.from(text) };
  await page.locator('run-file input').setInputFiles(file);
  await page.locator('run-file').locator('li, .voice').first().waitFor();
}

/** Back to the clinic, for the states that follow. */
async function leave(at: Stand): Promise<void> {
  await at.page.evaluate(() => (location.hash = '#/'));
  await at.everybody();
}
