import type { Side } from '@surae/analysis';
import { ENDING_WORDS, REDO_REASONS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** Why a leg is done again. */
export type DoneAgain = CustomEvent<string>;

/** Sets a test aside with a reason, in one press (`done-again`): it is taken back where the leg is begun anew. */
@customElement('redo-choice')
export class RedoChoice extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-8);
        max-inline-size: 56rem;
        padding-block-start: var(--gap-4);
      }
      .legend {
        font-weight: 600;
      }
      button {
        font-size: var(--size-1);
      }
      .choices {
        margin-block-end: var(--gap-3);
      }
    `,
  ];

  /** which leg, where it goes without saying no longer */
  @property() side: Side | undefined;
  /** what becomes of the one just recorded */
  @property() why = '';
  @property() tired: string | undefined;

  override render(): TemplateResult {
    return html`
      <p class="legend" id="legend">${ENDING_WORDS[this.side === undefined ? 'redo' : (`redo-${this.side}` as const)].text}</p>
      <div class="choices" role="group" aria-labelledby="legend">
        ${Object.entries(REDO_REASONS).map(
          ([detail, { text }]) =>
            html`<button type="button" @click=${() => this.dispatchEvent(new CustomEvent('done-again', { detail }))}>
              ${text}
            </button>`,
        )}
      </div>
      <p class="quiet">${this.why}</p>
      ${this.tired === undefined ? nothing : html`<p class="quiet">${this.tired}</p>`}
    `;
  }
}
