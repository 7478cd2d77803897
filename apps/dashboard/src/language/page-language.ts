import { configureLocalization, type LocaleModule, msg } from '@lit/localize';
import { setWording } from '@surae/shared';
import { setLocale } from '../words/locale.ts';
import { english, type Language, otherLanguages } from './languages.ts';

/** Makes a text of the English one. */
type Make = (text: string) => string;

/** The words of a language that has a catalogue of its own come from there; a pseudo-language makes each when it is first asked for. */
const templates: LocaleModule['templates'] = {};
let make: Make | null = null;

const localization = configureLocalization({
  sourceLocale: english.tag,
  targetLocales: Object.values(otherLanguages).map(({ tag }) => tag),
  loadLocale: async (tag) => {
    const pseudo = await import('./pseudo.ts');
    make = tag === otherLanguages.mirrored.tag ? pseudo.sameLength : pseudo.lengthened;
    return { templates };
  },
});

function worded(id: string, text: string): string {
  if (make !== null) templates[id] ??= make(text);
  return msg(text, { id });
}

/** Puts the page into a language: its words, its direction, its numbers and days. Nothing that shows a word may be loaded before. */
export async function setPageLanguage({ tag, direction, locale }: Language, root: HTMLElement): Promise<void> {
  root.lang = tag;
  root.dir = direction;
  setLocale(locale);
  setWording(worded);
  await localization.setLocale(tag);
}
