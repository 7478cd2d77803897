import type { Report } from '@surae/analysis';
import { REPETITION_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repetitionRows } from '../result/repetition-rows.ts';
import { unseenWords } from '../result/verdict-words.ts';
import { base } from '../styles/base.ts';

/** Every repetition of a set with its height, period and verdict in words. */
@customElement('repetition-table')
export class RepetitionTable extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        container-type: inline-size;
      }
      table {
        border-collapse: collapse;
        inline-size: 100%;
      }
      caption {
        clip-path: inset(50%);
        position: absolute;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        padding: var(--gap-2) var(--gap-3) var(--gap-2) 0;
        text-align: start;
        vertical-align: baseline;
      }
      thead th {
        border-block-end-color: var(--ink-quiet);
        color: var(--ink-quiet);
        font-weight: 400;
      }
      .number {
        text-align: end;
        white-space: nowrap;
      }
      th.number {
        white-space: normal;
      }
      tbody th {
        font-weight: 400;
      }
      td .quiet {
        display: block;
      }
      .cannot_tell {
        color: var(--voice);
      }
      /* too narrow for four columns: the verdict goes below the numbers */
      @container (max-width: 30rem) {
        tr {
          border-block-end: 1px solid var(--hairline);
          display: grid;
          grid-template-columns: 2.5rem 1fr 1fr;
          padding-block: var(--gap-2);
        }
        thead tr {
          border-block-end-color: var(--ink-quiet);
        }
        table,
        thead,
        tbody {
          display: block;
        }
        th,
        td {
          border: 0;
          padding-block: 0;
        }
        th.number,
        td.number {
          text-align: start;
          white-space: normal;
        }
        .number ~ :last-child {
          grid-column: 2 / -1;
        }
      }
    `,
  ];

  @property({ attribute: false }) report!: Report;

  override render(): TemplateResult {
    const rows = repetitionRows(this.report);
    if (rows.length === 0) return html`<p>${REPETITION_WORDS.none.text}</p>`;
    const unseen = unseenWords(this.report.repetitions);
    const words = REPETITION_WORDS;
    return html`
      <table>
        <caption>
          ${words.caption.text}
        </caption>
        <thead>
          <tr>
            <th class="number" scope="col">${words.index.text}</th>
            <th class="number" scope="col">${words[this.report.kind].text}</th>
            <th class="number" scope="col">${words.period.text}</th>
            <th scope="col">${words.verdict.text}</th>
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                <th class="number" scope="row">${row.index}</th>
                <td class="number">${row.size}</td>
                <td class="number">${row.period}</td>
                <td class=${row.valid}>
                  ${row.verdict}${row.unseen === undefined ? nothing : html`<span class="quiet">${row.unseen}</span>`}
                </td>
              </tr>`,
          )}
        </tbody>
      </table>
      ${unseen === undefined ? nothing : html`<p class="quiet">${unseen}</p>`}
    `;
  }
}
