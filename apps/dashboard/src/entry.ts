import { languageOf } from './language/languages.ts';
import { setPageLanguage } from './language/page-language.ts';

// The language comes first: modules of the page read words when they are loaded.
await setPageLanguage(languageOf(location.search), document.documentElement);
await import('./main.ts');
