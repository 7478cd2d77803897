import { RECOUNT_STUDY_WORDS as WORDS } from '@surae/shared';
import { recountBase } from '../../../../apps/dashboard/src/study/recount-base.ts';
import { RecountDesk } from '../../../../apps/dashboard/src/study/recount-desk.ts';
import type { StudySession } from '../../../../apps/dashboard/src/study/study-session.ts';
import { putStudy } from '../put-study.ts';
import type { Stand, State } from './state.ts';

/** A study whose recordings are counted again: who counts, a count, the lock, the agreement, a look at the marks of all. */
export const recountStudyStates: readonly State[] = [
  { name: 'recount-raters', area: 'study', reach: (at) => openPart(at), anew: true },
  { name: 'recount-item', area: 'study', reach: countSome },
  { name: 'recount-lock', area: 'study', reach: ({ page }) => pressNamed(page, WORDS.lock.text, 'recount-lock') },
  { name: 'recount-agreement', area: 'study', reach: (at) => openPart(at, allOpened, 'recount-agreement'), anew: true },
  { name: 'recount-look', area: 'study', reach: ({ page }) => lookAtFirst(page) },
];

async function openPart(
  at: Stand,
  tell?: (session: StudySession) => Promise<unknown>,
  element = 'recount-part',
): Promise<void> {
  const id = await putStudy(at.page, tell);
  await at.go(`#/study/${id}/recount`, element);
}

/** A rater goes from peak to peak; one that is less strict lets every peak count. */
async function countAll(desk: RecountDesk, rater: string, strictness: number): Promise<void> {
  const session = desk.begin(rater);
  await session.show();
  for (const [place] of session.key.items.entries()) {
    for (let before = -1; before !== session.cursorS; ) {
      before = session.cursorS;
      session.toPeak(1);
      const isStrict = strictness > 0 && session.marks.length === 2 + (place % strictness);
      if (before !== session.cursorS) await session.say(isStrict ? 'no' : 'yes');
    }
    await session.done();
  }
  await session.lock(rater, '2026-03-02');
}

async function allOpened(session: StudySession): Promise<void> {
  const desk = new RecountDesk(recountBase(session));
  await countAll(desk, 'ada', 2);
  await countAll(desk, 'ben', 3);
  await desk.open(['ada', 'ben'], 'cyd', '2026-03-03', 'both have locked');
}

type Page = Stand['page'];

async function countSome({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: /^ada: / }).click();
  await page.locator('recount-item recount-trace').waitFor();
  await page.getByRole('slider').focus();
  for (const [at, key] of ['1', '2', '3'].entries()) {
    await page.keyboard.press('d');
    await page.keyboard.press(key);
    await page.locator('recount-trace text.number').nth(at).waitFor();
  }
}

async function pressNamed(page: Page, name: string, element: string): Promise<void> {
  await page.getByRole('button', { name }).click();
  await page.locator(element).waitFor();
}

async function lookAtFirst(page: Page): Promise<void> {
  await page.locator('recount-agreement table button').first().click();
  await page.locator('trace-look recount-trace').waitFor();
}
