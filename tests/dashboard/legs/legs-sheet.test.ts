import { HOME_WORDS, LEGS_PLACE, LEGS_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { legsFile } from '../../../apps/dashboard/src/legs/legs-file.ts';
import { flagPart, legsSheet } from '../../../apps/dashboard/src/legs/legs-sheet.ts';
import { canAndCannot, type LegsView, legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { redFlags } from '../../../apps/dashboard/src/legs/red-flags.ts';
import { sheetTexts } from '../../../apps/dashboard/src/sheet/sheet.ts';
import { escaped } from '../../../apps/dashboard/src/sheet/sheet-markup.ts';
import { made } from '../../support/legs-visit.ts';

const address = 'http://127.0.0.1:8080/#/mine/AQEBAg';

async function view(): Promise<LegsView> {
  const { visit, person, earlier } = await made(
    { day: '2026-03-02', left: { count: 27 }, right: { count: 19 } },
    { day: '2026-04-27', left: { count: 27 }, right: { count: 24 } },
  );
  return legsView(visit, person, earlier);
}

test('the red flags stand first, then the title, and every sentence of the view', async () => {
  const given = await view();
  const texts = sheetTexts(legsSheet(given, ''));
  expect(texts[0]).toBe(redFlags(null).title);
  expect(texts).toEqual(expect.arrayContaining([...given.tests.flatMap(({ sentences }) => sentences)]));
  expect(texts.indexOf(LEGS_PLACE.title.text)).toBe(sheetTexts([flagPart(null)]).length);
});

test('what numbers can and cannot say stands only where there are numbers', async () => {
  const given = await view();
  const ofNumbers = [LEGS_WORDS['can-title'].text, ...canAndCannot(given)];
  expect(sheetTexts(legsSheet(given, ''))).toEqual(expect.arrayContaining(ofNumbers));
  const texts = sheetTexts(legsSheet({ ...given, tests: [] }, ''));
  expect(texts.filter((text) => ofNumbers.includes(text))).toEqual([]);
  expect(texts).toContain(SCOPE_SENTENCES.scope.text);
});

test('the file says what the page says, and carries the code of the address but not the address', async () => {
  const given = await view();
  const html = String(legsFile(given, address).content);
  let from = html.indexOf('<body>');
  for (const text of sheetTexts(legsSheet(given, address))) {
    from = html.indexOf(`>${escaped(text)}<`, from);
    expect(from, text).toBeGreaterThan(0);
  }
  expect(html.match(/class="code-drawn"/g)).toHaveLength(1);
  expect(html).not.toMatch(/https?:|href=|AQEBAg/);
  expect(html).toContain(HOME_WORDS['code-title'].text);
  expect(String(legsFile(given).content)).not.toContain('class="code-drawn"');
});
