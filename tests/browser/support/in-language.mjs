// A page in another language, and the catalogue of the tests with it, so that a walk finds what it looks for.
import { setWording } from '@surae/shared';
import { bundled } from './bundled.mjs';

/** @typedef {import('playwright-core').Page} Page */

/**
 * How the dashboard makes the words of its pseudo-languages; it is TypeScript, which Node alone does not read.
 *
 * @type {Promise<typeof import('../../../apps/dashboard/src/language/pseudo.ts')> | undefined}
 */
let pseudo;

async function readPseudo() {
  const source = await bundled(new URL('../../../apps/dashboard/src/language/pseudo.ts', import.meta.url));
  return import(`data:text/javascript,${encodeURIComponent(source)}`);
}

/** @typedef {'long' | 'mirrored' | 'long-mirrored'} PseudoLanguage */

/**
 * Does something with a page in a pseudo-language: every address that it goes to names the language.
 *
 * @template Result
 * @param {Page} page
 * @param {PseudoLanguage} language
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 */
export async function inLanguage(page, language, work) {
  const { lengthened, sameLength } = await (pseudo ??= readPseudo());
  const make = language === 'mirrored' ? sameLength : lengthened;
  const goto = page.goto.bind(page);
  page.goto = (address, options) => {
    const named = new URL(address);
    named.searchParams.set('language', language);
    return goto(named.href, options);
  };
  setWording((_id, text) => make(text));
  try {
    return await work();
  } finally {
    setWording();
    page.goto = goto;
  }
}
