import { FRAME_WORDS, setWording } from '@surae/shared';
import { afterEach, expect, test, vi } from 'vitest';
import { english, otherLanguages } from '../../../apps/dashboard/src/language/languages.ts';
import { decimal } from '../../../apps/dashboard/src/words/decimal.ts';
import { setLocale } from '../../../apps/dashboard/src/words/locale.ts';

afterEach(() => {
  setWording();
  setLocale(english.locale);
});

test('a page takes on a language and goes back to English: words, direction, numbers', async () => {
  // the library tells the window of each step
  vi.stubGlobal('window', new EventTarget());
  const { setPageLanguage } = await import('../../../apps/dashboard/src/language/page-language.ts');
  const root = { lang: '', dir: '' } as HTMLElement;
  const lengthBefore = FRAME_WORDS['skip'].text.length;
  await setPageLanguage(otherLanguages['long-mirrored'], root);
  expect([root.lang, root.dir]).toEqual(['en-XC', 'rtl']);
  expect(FRAME_WORDS['skip'].text.length).toBeGreaterThan(lengthBefore);
  await setPageLanguage(otherLanguages.long, root);
  expect([root.lang, root.dir]).toEqual(['en-XA', 'ltr']);
  expect(FRAME_WORDS['skip'].text).toMatch(/[áéíóú]/);
  expect(decimal(12.5, 1)).toBe('12,5');
  await setPageLanguage(otherLanguages.mirrored, root);
  expect([root.lang, root.dir]).toEqual(['en-XB', 'rtl']);
  await setPageLanguage(english, root);
  expect([root.lang, root.dir]).toEqual(['en', 'ltr']);
  expect(FRAME_WORDS['skip'].text).not.toMatch(/[áéíóú]/);
  expect(decimal(12.5, 1)).toBe('12.5');
});
