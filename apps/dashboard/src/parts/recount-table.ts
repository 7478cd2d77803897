import { RECOUNT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { RecountRow } from '../result/recount-view.ts';
import { base } from '../styles/base.ts';

/** Id of a re-count that is to be taken out. */
export type RecountChosen = CustomEvent<string>;

/** The first result of a set and its re-counts beside each other, each with what it differs in. Tells `recount-take-out`. */
@customElement('recount-table')
export class RecountTable extends LitElement {
  static override styles = [
    base,
    css`
      table {
        border-collapse: collapse;
      }
      caption {
        font-weight: 600;
        text-align: start;
      }
      th,
      td {
        border-block-start: 1px solid var(--hairline);
        font-weight: 400;
        padding: var(--gap-2) var(--gap-3) var(--gap-2) 0;
        text-align: start;
        vertical-align: top;
      }
      .count {
        font-weight: 600;
      }
      td p {
        margin: 0;
      }
      td button {
        font-size: var(--size-1);
        min-block-size: var(--target);
        padding: 0;
        text-align: start;
      }
      /* on a narrow screen a result is a block of lines, each with its name */
      @media (max-width: 40rem) {
        thead {
          clip-path: inset(50%);
          position: absolute;
        }
        tbody tr {
          border-block-start: 1px solid var(--hairline);
          display: block;
          padding-block: var(--gap-2);
        }
        tbody th,
        tbody td {
          border: 0;
          display: block;
          padding-block: 0;
        }
        td[data-name]::before {
          color: var(--ink-quiet);
          content: attr(data-name) ' ';
          font-weight: 400;
        }
      }
    `,
  ];

  @property({ attribute: false }) rows: readonly RecountRow[] = [];

  override render(): TemplateResult {
    const words = RECOUNT_WORDS;
    return html`<table>
      <caption>
        ${words.table.text}
      </caption>
      <thead>
        <tr>
          ${[words.what, words.count, words.interval, words.met, words.differs].map(
            ({ text }) => html`<th scope="col" class="quiet">${text}</th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${this.rows.map((row) => this.row(row))}
      </tbody>
    </table>`;
  }

  private row({ id, what, count, interval, met, differs }: RecountRow): TemplateResult {
    const words = RECOUNT_WORDS;
    return html`<tr>
      <th scope="row">${what}</th>
      <td class="count" data-name=${words.count.text}>${count}</td>
      <td data-name=${words.interval.text}>${interval}</td>
      <td data-name=${words.met.text}>${met}</td>
      <td>
        ${differs.map((line) => html`<p>${line}</p>`)}
        ${
          id === null
            ? nothing
            : html`<button
                class="plain"
                type="button"
                aria-label=${`${words['take-out'].text}: ${what}`}
                @click=${() => this.dispatchEvent(new CustomEvent('recount-take-out', { detail: id }))}
              >
                ${words['take-out'].text}
              </button>`
        }
      </td>
    </tr>`;
  }
}
