import type { Page } from 'playwright-core';
import { brokenWords } from './broken-words.ts';
import { crossedLegs } from './crossed-legs.ts';
import { faintBorders } from './faint-borders.ts';
import { cutOff, tooWide } from './fits-page.ts';
import { inOtherWords } from './in-other-words.ts';
import { resized } from './resized.ts';
import { isLookedAt } from './states/stand-ins.ts';
import { type State, walkList } from './states/state.ts';
import { tabStops } from './tab-stops.ts';
import { moving, smallTargets } from './targets.ts';
import { withTextSpacing } from './text-spacing.ts';
import { violations } from './violations.ts';

const narrow = { width: 360, height: 740 };
/** The narrowest page that must not scroll in two directions: WCAG 2.2, criterion 1.4.10. */
const narrowest = { width: 320, height: 640 };
/** What is left of a desk of 1280 x 900 where the browser shows everything twice as large. */
const zoomed = { width: 640, height: 450 };
const wide = { width: 1280, height: 900 };

/** Everything that breaks a rule in any of these states that this run looks at, on both papers, and the names of those. */
export async function walked(
  page: Page,
  origin: string,
  states: readonly State[],
): Promise<{ found: string[]; states: string[] }> {
  const found: string[] = [];
  const seen: string[] = [];
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  const isWanted = (place: number): boolean => isLookedAt(states[place]);
  const look = async ({ name }: State): Promise<void> => {
    seen.push(name);
    const add = (where: string, what: string[]): number =>
      found.push(...what.map((one) => `${name} (${where}): ${one}`));
    add('light', await violations(page));
    await page.emulateMedia({ colorScheme: 'dark' });
    // the other paper changes colours and nothing else
    add('dark', await violations(page, 'colours'));
    add('dark', await faintBorders(page));
    await page.emulateMedia({ colorScheme: 'light' });
    add('light', await faintBorders(page));
    add('target', await smallTargets(page));
    add('tab', await tabStops(page));
    add('motion', await moving(page));
    add('broken words', await brokenWords(page));
    add('read from the right', await inOtherWords(page, () => crossedLegs(page)));
    await resized(page, zoomed);
    add('zoomed to 200 %', [...(await tooWide(page)), ...(await cutOff(page))]);
    await resized(page, narrowest);
    add('320 px', await tooWide(page));
    await resized(page, narrow);
    add('broken words, 360 px', await brokenWords(page));
    add(
      'longer words, 360 px',
      await inOtherWords(page, async () => [
        ...(await tooWide(page)),
        ...(await cutOff(page)),
        ...(await crossedLegs(page)),
      ]),
    );
    add('spaced', await withTextSpacing(page, async () => [...(await tooWide(page)), ...(await cutOff(page))]));
    for (const size of ['100%', '200%']) {
      await page.evaluate((wanted) => (document.documentElement.style.fontSize = wanted), size);
      add(`360 px at ${size}`, await tooWide(page));
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await resized(page, wide);
  };
  await walkList(page, origin, states, look, isWanted);
  return { found, states: seen };
}
