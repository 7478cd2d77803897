// A page in another language, and the catalogue of the tests with it, so that a walk finds what it looks for.
import { setWording } from '@surae/shared';
import { bundled } from './bundled.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** How the dashboard makes the words of its pseudo-languages; it is TypeScript, which Node alone does not read. */
const source = await bundled(new URL('../../../apps/dashboard/src/language/pseudo.ts', import.meta.url));
/** @type {typeof import('../../../apps/dashboard/src/language/pseudo.ts')} */
const { lengthened, sameLength } = await import(`data:text/javascript,${encodeURIComponent(source)}`);
const makes = { long: lengthened, mirrored: sameLength, 'long-mirrored': lengthened };

/**
 * Does something with a page in a pseudo-language: every address that it goes to names the language.
 *
 * @template Result
 * @param {Page} page
 * @param {keyof typeof makes} language
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 */
export async function inLanguage(page, language, work) {
  const goto = page.goto.bind(page);
  page.goto = (address, options) => {
    const named = new URL(address);
    named.searchParams.set('language', language);
    return goto(named.href, options);
  };
  setWording((_id, text) => makes[language](text));
  try {
    return await work();
  } finally {
    setWording();
    page.goto = goto;
  }
}
