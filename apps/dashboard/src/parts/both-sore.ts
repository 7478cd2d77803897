import { AXIS_WORDS, BILATERAL_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BilateralView } from '../result/bilateral-view.ts';
import { base } from '../styles/base.ts';

/** Both legs where both are sore: which one governs, and each against its own start, the groups and its target. No ratio. */
@customElement('both-sore')
export class BothSore extends LitElement {
  static override styles = [
    base,
    css`
      section {
        border-inline-start: 3px solid var(--voice);
        margin-block: var(--gap-4) var(--gap-6);
        padding-inline-start: var(--gap-4);
      }
      .title {
        font-weight: 600;
      }
      /* left stays on the left in a language that is read from the right */
      .legs {
        direction: ltr;
        display: grid;
        gap: var(--gap-4) var(--gap-8);
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr));
      }
      .legs > * {
        direction: var(--reading);
      }
      .legs p {
        margin-block-end: var(--gap-1);
      }
      p:last-child {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) view!: BilateralView;
  /** of the heading */
  @property({ type: Number }) level: 2 | 3 = 3;

  override render(): TemplateResult {
    const { lead, legs } = this.view;
    return html`<section>
      <p class="title" role="heading" aria-level=${this.level}>${BILATERAL_WORDS.title.text}</p>
      <p>${lead}</p>
      <div class="legs">
        ${legs.map(
          ({ side, lines }) =>
            html`<div>
              <p><span class="side" data-side=${side}>${AXIS_WORDS[side].text}</span></p>
              ${lines.map((line) => html`<p>${line}</p>`)}
            </div>`,
        )}
      </div>
    </section>`;
  }
}
