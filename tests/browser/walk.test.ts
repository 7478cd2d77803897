import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { shownElements } from './support/shown-elements.ts';
import { untilListed, untilStill } from './support/states/listed-elements.ts';
import { Stand, type State, walkList } from './support/states/state.ts';

/** Puts an element beside the page once it was drawn this often: a third of a second is 20 times. */
function putLater(page: Page, name: string, afterFrames = 20): Promise<void> {
  return page.evaluate(
    ({ localName, frames }) => {
      const part = document.createElement(localName);
      part.textContent = localName;
      const next = (left: number): void => {
        if (left === 0) document.body.append(part);
        else requestAnimationFrame(() => next(left - 1));
      };
      next(frames);
    },
    { localName: name, frames: afterFrames },
  );
}

browserTest('a state is looked at once all that it is said to show is there', async ({ page, origin }) => {
  const states: State[] = [
    { name: 'waiting', area: 'start', reach: (at) => putLater(at.page, 'late-part') },
    { name: 'passed', area: 'start', reach: (at) => putLater(at.page, 'later-part') },
    { name: 'there', area: 'start', reach: () => Promise.resolve() },
  ];
  const listed = { waiting: ['late-part', 'start-page'], there: ['later-part'] };
  const seen: Record<string, string[]> = {};
  const look = async ({ name }: State): Promise<void> => {
    seen[name] = (await shownElements(page)).filter((one) => one.endsWith('-part'));
  };
  const isWanted = (place: number): boolean => states[place].name !== 'passed';
  await walkList(page, origin, states, look, isWanted, (there, name) => untilListed(there, name, listed));
  expect(seen).toEqual({ waiting: ['late-part'], there: ['late-part', 'later-part'] });
});

browserTest('what a state never shows, and a state that is not listed, are told by name', async ({ page, origin }) => {
  const stand = new Stand(page, origin);
  await stand.open();
  await page.evaluate(() => {
    document.body.append(document.createElement('hidden-part'));
    document.querySelector<HTMLElement>('hidden-part')!.style.display = 'none';
  });
  const asked = (listed: string[]): Promise<void> => untilListed(page, 'a', { a: listed }, 200);
  await expect(asked(['start-page', 'never-part', 'hidden-part'])).rejects.toThrow(
    'a is said to show never-part, hidden-part',
  );
  await expect(asked(['start-page'])).resolves.toBeUndefined();
  const unlisted: State = { name: 'invented', area: 'start', reach: () => Promise.resolve() };
  await expect(walkList(page, origin, [unlisted], () => Promise.resolve())).rejects.toThrow(
    'invented: what it shows is not listed',
  );
});

browserTest('what is listed anew is listed once nothing more comes', async ({ page, origin }) => {
  await new Stand(page, origin).open();
  await putLater(page, 'first-part');
  await putLater(page, 'last-part', 60);
  await untilStill(page, 2000);
  expect(await shownElements(page)).toEqual(expect.arrayContaining(['first-part', 'last-part']));
});

browserTest('a page that one goes to is made anew, whatever of it stood there', async ({ page, origin }) => {
  const stand = new Stand(page, origin);
  await stand.open();
  const mark = page.locator('start-page[data-before]');
  for (const element of ['start-page', 'app-shell h1', 'start-page details']) {
    await page.locator('start-page').evaluate((one) => one.setAttribute('data-before', ''));
    expect(await mark.count()).toBe(1);
    await stand.go('#/', element);
    expect(await mark.count()).toBe(0);
  }
});
