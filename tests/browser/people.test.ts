import { START_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

browserTest('a person is corrected: what was told before stays, and when and who stand beside it', async (given) => {
  const { page, origin } = given;
  await openStart(page, origin);
  const entry = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Mirela Haddad' }) });
  const before = await storedBodies(page, 'person');
  await entry.locator('summary').click();
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText(START_WORDS['amend-none'].text).waitFor();
  await entry.getByLabel(START_WORDS['height-field'].text).fill('1.72');
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText(START_WORDS['height-range'].text).waitFor();
  expect(await entry.getByText(START_WORDS['amend-none'].text).count()).toBe(0);
  await fitsAt(page, 'person-refused', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await entry.getByLabel(START_WORDS['height-field'].text).fill('172');
  await entry.getByLabel(START_WORDS['amend-who'].text).fill('R. N.');
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText('body height 172 cm').waitFor();
  // the focus is back where the form was opened
  await page.keyboard.press('Enter');
  await entry.getByText(/^Body height, cm: not told, then 172\.0 \(.+, R\. N\.\)$/).waitFor();
  await fitsAt(page, 'person-corrected', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  expect(await storedBodies(page, 'person')).toEqual(before);
  expect(await storedBodies(page, 'person-amended')).toEqual([{ change: { bodyHeightM: 1.72 }, by: 'R. N.' }]);
  await page.reload();
  await entry.getByText('body height 172 cm').waitFor();
});
