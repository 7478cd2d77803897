import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

const values = Array.from({ length: 11 }, (_, i) => i);

/** Pain from 0 to 10 in one tap. */
@customElement('pain-scale')
export class PainScale extends LitElement {
  static override styles = [
    base,
    css`
      span {
        align-self: center;
        line-height: 1.1;
      }
      .values {
        direction: ltr;
        display: grid;
        gap: 2px;
        grid-template-columns: repeat(6, minmax(0, 1fr));
      }
      button {
        border-width: 1px;
        min-inline-size: 0;
        padding: 0;
      }
      @media (min-width: 45rem) and (max-width: 60rem) {
        .values {
          grid-template-columns: repeat(12, minmax(0, 1fr));
        }
      }
    `,
  ];

  /** the pain said last; null before any was */
  @property({ attribute: false }) value: number | null = null;

  override render(): TemplateResult {
    return html`<div class="values" role="group" aria-label=${TEST_WORDS.pain.text}>
        <span class="quiet" aria-hidden="true">${TEST_WORDS['pain-short'].text}</span>
        ${values.map(
          (value) =>
            html`<button
              type="button"
              aria-label=${fill(TEST_WORDS['pain-value'], { value })}
              aria-pressed=${this.value === value}
              @click=${() => this.dispatchEvent(new CustomEvent<number>('pain-said', { detail: value }))}
            >
              ${value}
            </button>`,
        )}
      </div>`;
  }
}
