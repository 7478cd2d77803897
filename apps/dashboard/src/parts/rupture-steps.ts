import type { Side } from '@surae/analysis';
import { RUPTURE_WORDS, SAFETY_LIST } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { entryWords } from '../words/entry-words.ts';

/**
 * What is done after a pop or a sudden give, in large words and alone on the screen. Tells `pop-kept`, or `pop-undone` where it was
 * something else; it asks nothing.
 */
@customElement('rupture-steps')
export class RuptureSteps extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-6);
        margin-inline: auto;
        max-inline-size: 56rem;
        min-block-size: 100svh;
        padding: var(--gap-6) var(--gap-4);
        place-content: center stretch;
      }
      h1 {
        margin: 0;
      }
      ol {
        border-block: 3px solid var(--ink);
        display: grid;
        font-size: var(--size-4);
        font-weight: 600;
        gap: var(--gap-4);
        line-height: 1.2;
        margin: 0;
        padding: var(--gap-6) 0 var(--gap-6) 1.5em;
      }
      @media (max-width: 30rem) {
        ol {
          font-size: var(--size-3);
        }
      }
      .go {
        display: grid;
        gap: var(--gap-3);
      }
    `,
  ];

  @property() side: Side = 'left';

  protected override firstUpdated(): void {
    scrollTo(0, 0);
    this.renderRoot.querySelector('h1')?.focus();
  }

  override render(): TemplateResult {
    const words = RUPTURE_WORDS;
    const line = SAFETY_LIST.find(({ id }) => id === 'safety.rupture');
    return html`
      <h1 tabindex="-1"><span class="side" data-side=${this.side}>${words[`title-${this.side}`].text}</span></h1>
      <div role="alert"><ol>
        <li>${words.sit.text}</li>
        ${line === undefined ? nothing : html`<li>${entryWords(line, 'next')}</li>`}
        <li>${words.look.text}</li>
        <li>${words.breath.text}</li>
      </ol></div>
      <div class="go">
        <p class="quiet">${words.kept.text}</p>
        <button class="main" type="button" @click=${() => this.dispatchEvent(new CustomEvent('pop-kept'))}>
          ${words.keep.text}
        </button>
        <button class="plain" type="button" @click=${() => this.dispatchEvent(new CustomEvent('pop-undone'))}>
          ${words.back.text}
        </button>
      </div>
    `;
  }
}
