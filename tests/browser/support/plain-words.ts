import type { Page } from 'playwright-core';

/** Names of people and places are no sentences, nor is the source of a figure, which is quoted as it is printed, nor a day. */
export const names = [
  /Ines Okafor-Lind|Tomasz Brelo|Mirela Haddad|Jonne Vatanen-Ruiz/,
  /\p{Lu}[\p{L}-]+(?: (?:&|et al\.?|\p{Lu}[\p{L}-]+))* (?:19|20)\d\d [^()]*?\d+:[\p{L}\d]+(?: \(limits of agreement[^)]*\)|, table[^.]*)?/u,
  /\d{1,2}\. \p{L}+\.?(?: \d{4})?/u,
];

/**
 * Words on a page in a pseudo-language that did not go through the catalogue: those with a vowel that has no accent, each with the text
 * that it stands in. Text of one of the given patterns is no sentence: a name, a file, a source.
 */
export function plainWords(page: Page, allowed: readonly RegExp[] = names): Promise<string[]> {
  return page.evaluate(
    (patterns) => {
      const known = patterns.map((pattern) => new RegExp(pattern, 'gu'));
      const found = new Set<string>();
      const look = (where: string, text: string): void => {
        const rest = known.reduce((left, pattern) => left.replace(pattern, ' '), text.replaceAll(/\s+/g, ' '));
        const plain = rest.match(/\p{L}*[aeiou]\p{L}*/giu) ?? [];
        if (plain.length > 0) found.add(`${where}: ${plain.join(' ')} | ${text.trim().slice(0, 120)}`);
      };
      const walk = (root: ParentNode, host: string): void => {
        for (const element of root.querySelectorAll('*')) {
          // what is quoted as it is printed says that it is not to be translated
          if (element.matches('style, script, template, code, meta, link, title, [translate="no"]')) continue;
          const isShown = element.checkVisibility({ visibilityProperty: true }) || element.closest('[hidden]') === null;
          const where = `${host} ${element.localName}`;
          if (isShown) {
            for (const name of [
              'aria-label',
              'aria-description',
              'aria-roledescription',
              'aria-valuetext',
              'alt',
              'title',
              'placeholder',
            ]) {
              const value = element.getAttribute(name);
              if (value !== null && element.localName.includes('-') === false) look(`${where}@${name}`, value);
            }
            for (const node of element.childNodes)
              if (node.nodeType === Node.TEXT_NODE) look(where, node.nodeValue ?? '');
          }
          if (element.shadowRoot !== null) walk(element.shadowRoot, element.localName);
        }
      };
      walk(document, 'page');
      look('title', document.title);
      return [...found];
    },
    allowed.map(({ source }) => source),
  );
}
