/** A language of the page. */
export interface Language {
  /** how the page names it to whoever reads it aloud */
  readonly tag: string;
  readonly direction: 'ltr' | 'rtl';
  /** by which numbers and days are written */
  readonly locale: string;
}

/** The language in which the catalogue is written. */
export const english: Language = { tag: 'en', direction: 'ltr', locale: 'en-GB' };

/**
 * Languages of nobody, to look at the page with: one with longer words and a decimal comma, one that is read from the right, and
 * one that is both. They are chosen by the address alone.
 */
const pseudo = {
  long: { tag: 'en-XA', direction: 'ltr', locale: 'de-DE' },
  mirrored: { tag: 'en-XB', direction: 'rtl', locale: 'en-GB' },
  'long-mirrored': { tag: 'en-XC', direction: 'rtl', locale: 'de-DE' },
} as const satisfies Readonly<Record<string, Language>>;

/** Name of a pseudo-language in the address. */
export type PseudoName = keyof typeof pseudo;

/** Every language beside English by its name in the address. */
export const otherLanguages: Readonly<Record<PseudoName, Language>> = pseudo;

/** The language that an address names: English where it names none that there is. */
export function languageOf(search: string): Language {
  const name = new URLSearchParams(search).get('language') ?? '';
  return Object.hasOwn(otherLanguages, name) ? otherLanguages[name as PseudoName] : english;
}
