import type { Side } from '@surae/analysis';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** An answer in a sentence, and the leg that it is about where it is about one. */
export interface Lead {
  readonly side: Side | null;
  readonly text: string;
}

/** One comparison: what it is beside, its answer in a sentence or two, and behind a fold what the answer rests on. */
@customElement('comparison-fold')
export class ComparisonFold extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        border-block-start: 1px solid var(--hairline);
      }
      summary,
      .flat {
        display: grid;
        gap: 0 var(--gap-2);
        grid-template-columns: 1ch minmax(0, 1fr);
        min-block-size: var(--target);
        padding-block: var(--gap-3);
      }
      summary {
        cursor: pointer;
        list-style: none;
      }
      summary::-webkit-details-marker {
        display: none;
      }
      summary::before {
        content: '+' / '';
        line-height: 1.4;
      }
      details[open] > summary::before {
        content: '–' / '';
      }
      .told {
        grid-column: 2;
      }
      h2,
      h3 {
        color: var(--ink-quiet);
        font-size: var(--size-1);
        font-weight: 400;
        line-height: 1.4;
        margin: 0;
      }
      .lead {
        display: block;
        font-size: var(--size-2);
        line-height: 1.3;
        margin-block-start: var(--gap-1);
        max-inline-size: 56ch;
        overflow-wrap: anywhere;
      }
      .note {
        color: var(--voice);
        display: block;
      }
      .inside {
        padding-block: var(--gap-2) var(--gap-6);
        padding-inline-start: calc(1ch + var(--gap-2));
      }
    `,
  ];

  @property() heading = '';
  /** of the heading: 3 where the result has a heading of its own */
  @property({ type: Number }) level: 2 | 3 = 2;
  /** what holds whatever the answer is; empty for none */
  @property() note = '';
  @property({ attribute: false }) leads: readonly Lead[] = [];
  /** there is nothing behind the answer */
  @property({ type: Boolean }) flat = false;

  override render(): TemplateResult {
    if (this.flat) return html`<div class="flat">${this.told()}</div>`;
    return html`<details>
      <summary>${this.told()}</summary>
      <div class="inside"><slot></slot></div>
    </details>`;
  }

  private told(): TemplateResult {
    return html`<div class="told">
      ${this.level === 2 ? html`<h2>${this.heading}</h2>` : html`<h3>${this.heading}</h3>`}
      ${this.leads.map(
        ({ side, text }) =>
          html`<span class="lead"
            >${side === null ? nothing : html`<span class="side" data-side=${side}></span>`}${text}</span
          >`,
      )}
      ${this.note === '' ? nothing : html`<span class="note">${this.note}</span>`}
    </div>`;
  }
}
