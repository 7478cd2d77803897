import type { Page } from 'playwright-core';
import type { Picture } from './contact-sheet.ts';
import { inLanguage } from './in-language.mjs';
import { allStates } from './states/all-states.ts';
import { type State, walkList } from './states/state.ts';

interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme: 'light' | 'dark';
}

const phone = { name: '360', width: 360, height: 740, colorScheme: 'light' } as const;

/** How each state is looked at: a phone, a tablet, a desk, and the tablet on dark paper. */
const papers: readonly Paper[] = [
  phone,
  { name: '768', width: 768, height: 1024, colorScheme: 'light' },
  { name: '1280', width: 1280, height: 900, colorScheme: 'light' },
  { name: '768-dark', width: 768, height: 1024, colorScheme: 'dark' },
];

/** States whose name or area is among those that are wanted; all where nothing is. One needs those before it in its area. */
function chosen(wanted: readonly string[]): readonly State[] {
  if (wanted.length === 0) return allStates;
  return allStates.filter(({ name, area }) => wanted.includes(area) || wanted.includes(name));
}

/** Lays out what lies below the window, too: a page may leave that out until somebody scrolls there. */
async function layOutWhole(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const frame = () => new Promise((next) => requestAnimationFrame(next));
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await frame();
      await frame();
    }
    scrollTo(0, 0);
    await frame();
  });
}

async function take(
  page: Page,
  { name, area }: State,
  paper: Paper,
  folder: string,
  suffix = paper.name,
): Promise<Picture> {
  const file = `${area}-${name}-${suffix}.png`;
  await page.emulateMedia({ colorScheme: paper.colorScheme });
  await page.setViewportSize({ width: paper.width, height: paper.height });
  await layOutWhole(page);
  await page.screenshot({ path: `${folder}/${file}`, fullPage: true });
  return { area, state: name, paper: suffix, file, width: paper.width };
}

/** Leaves the window as it was found. */
async function tidy(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize({ width: 1280, height: 900 });
}

/** Takes a picture of every state at every width and on both papers. */
export async function takePictures(
  page: Page,
  origin: string,
  folder: string,
  wanted: readonly string[],
): Promise<Picture[]> {
  const pictures: Picture[] = [];
  await walkList(page, origin, chosen(wanted), async (state) => {
    for (const paper of papers) pictures.push(await take(page, state, paper, folder));
    await tidy(page);
  });
  return pictures;
}

/** Takes a picture of every state in a pseudo-language, on a phone. */
export function takeInLanguage(
  page: Page,
  origin: string,
  folder: string,
  wanted: readonly string[],
  language: 'long' | 'mirrored',
): Promise<Picture[]> {
  const pictures: Picture[] = [];
  return inLanguage(page, language, async () => {
    await walkList(page, origin, chosen(wanted), async (state) => {
      pictures.push(await take(page, state, phone, folder, language));
      await tidy(page);
    });
    return pictures;
  });
}
