import { diaryCode } from '@surae/exchange';
import { HOME_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../parts/data-code.ts';
import { saveFile } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { keptDiary } from './kept-diary.ts';
import type { HomeMemory } from './kept-mornings.ts';

/** What somebody wrote down on this device, to be given back: as a file, as a code, as a text. Nothing is sent. */
@customElement('home-give')
export class HomeGive extends LitElement {
  static override styles = [
    base,
    css`
      h2 {
        margin-block-start: var(--gap-6);
      }
      textarea {
        background: var(--raised);
        border: 1.5px solid var(--ink);
        color: inherit;
        font: inherit;
        inline-size: 100%;
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) memory!: HomeMemory;
  /** the day here */
  @property() day = '';

  override render(): TemplateResult {
    const diary = keptDiary(this.memory);
    const [mornings, done, runs] = [diary.mornings.length, diary.done.length, diary.runs.length];
    if (mornings + done + runs === 0) return html`<p>${HOME_WORDS['give-none'].text}</p>`;
    const code = diaryCode(diary);
    const name = `surae-diary-${this.day.replaceAll('-', '')}.txt`;
    return html`
      <p>${fill(HOME_WORDS['give-explain'], { mornings, done, runs })}</p>
      <button type="button" @click=${() => saveFile({ name, type: 'text/plain', content: `${code}\n` })}>
        ${HOME_WORDS['give-file'].text}
      </button>
      <h2>${HOME_WORDS['give-code'].text}</h2>
      <data-code .text=${code} label=${HOME_WORDS['code-label'].text} too-long=${HOME_WORDS['give-long'].text}></data-code>
      <h2 id="text">${HOME_WORDS['give-text'].text}</h2>
      <textarea readonly rows="3" aria-labelledby="text" .value=${code}></textarea>
    `;
  }
}
