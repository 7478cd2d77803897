import { expect, test } from 'vitest';
import { english, languageOf, otherLanguages } from '../../../apps/dashboard/src/language/languages.ts';

test('an address that names no language, or none that there is, is English', () => {
  for (const search of ['', '?seed=4', '?language=', '?language=klingon', '?language=constructor', '?Language=long'])
    expect(languageOf(search)).toBe(english);
});

test('an address names one of the others', () => {
  expect(languageOf('?seed=4&language=long')).toBe(otherLanguages.long);
  expect(languageOf('?language=mirrored').direction).toBe('rtl');
  expect(languageOf('?language=long-mirrored').direction).toBe('rtl');
});

test('each has a tag of its own, and a locale that is known', () => {
  const all = [english, ...Object.values(otherLanguages)];
  expect(new Set(all.map(({ tag }) => tag)).size).toBe(all.length);
  for (const { locale } of all) expect(Intl.NumberFormat.supportedLocalesOf(locale)).toEqual([locale]);
});
