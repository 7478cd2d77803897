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
        display: block;
        font-size: var(--size-1);
        line-height: 1.2;
      }
      .values {
        direction: ltr;
        display: grid;
        gap: 2px;
        grid-template-columns: repeat(auto-fill, minmax(56px, 1fr));
      }
      button {
        border-width: 1px;
        min-inline-size: 0;
        padding: 0;
      }
    `,
  ];

  /** the pain said last; null before any was */
  @property({ attribute: false }) value: number | null = null;

  override render(): TemplateResult {
    return html`<span class="quiet" aria-hidden="true">${TEST_WORDS.pain.text}</span>
      <div class="values" role="group" aria-label=${TEST_WORDS.pain.text}>
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
