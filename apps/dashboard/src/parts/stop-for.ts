import { READY_WORDS, SAFETY_LIST } from '@surae/shared';
import { html, type TemplateResult } from 'lit';
import { entryWords } from '../words/entry-words.ts';

/** What a test is stopped for, but for one line that cannot happen in it; and what else is said there. */
export function stopFor(leftOut: string, also?: string): TemplateResult {
  const watched = SAFETY_LIST.filter(({ when, id }) => when === 'during' && id !== leftOut);
  return html`<section>
    <h2>${READY_WORDS.cautions.text}</h2>
    <ul>
      ${watched.map((line) => html`<li>${entryWords(line, 'ask')}</li>`)}
    </ul>
    ${also === undefined ? null : html`<p>${also}</p>`}
  </section>`;
}
