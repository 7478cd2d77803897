import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { TrialVerdict } from '../result/trial-verdicts.ts';
import { base } from '../styles/base.ts';

const marks = { yes: '|', no: '×', cannot_tell: '?' } as const;

/** Pushes as lines: a stroke for accepted, a cross for not accepted, a question mark for cannot tell; force and reasons. */
@customElement('trial-list')
export class TrialList extends LitElement {
  static override styles = [
    base,
    css`
      ol {
        border-block-start: 1px solid var(--hairline);
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        align-items: baseline;
        border-block-end: 1px solid var(--hairline);
        column-gap: var(--gap-3);
        display: grid;
        grid-template-columns: 1.5ch 2ch minmax(0, 1fr);
        padding-block: var(--gap-2);
      }
      .mark {
        font-weight: 600;
        text-align: center;
      }
      .force {
        font-size: var(--size-2);
        white-space: nowrap;
      }
      .said {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-3);
        overflow-wrap: anywhere;
      }
      .why {
        grid-column: 3 / -1;
      }
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) verdicts: readonly TrialVerdict[] = [];

  override render(): TemplateResult {
    return html`<ol>
      ${this.verdicts.map(
        ({ index, accepted, force, headline, reasons }) =>
          html`<li>
            <span class="mark" aria-hidden="true">${marks[accepted]}</span>
            <span class="quiet">${index === null ? '' : index}</span>
            <span class="said">
              ${force === null ? nothing : html`<span class="force">${force}</span>`} <span>${headline}</span>
            </span>
            ${reasons.map((reason) => html`<p class="why quiet">${reason}</p>`)}
          </li>`,
      )}
    </ol>`;
  }
}
