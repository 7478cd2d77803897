import { STUDY_WORDS } from '@surae/shared';
import { browserTest } from './support/browser-test.ts';

browserTest('a study that is not there is said, with the way to those that are', async ({ page, origin }) => {
  await page.goto(`${origin}/#/study/nothing/quality`);
  await page.getByText(STUDY_WORDS.lost.text).waitFor();
  await page.getByRole('link', { name: STUDY_WORDS.back.text }).click();
  await page.getByText(STUDY_WORDS.explain.text).waitFor();
});
