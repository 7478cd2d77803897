import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sideDash } from '../charts/side-dash.ts';
import '../charts/signal-chart.ts';
import { columnFacts, findingWords, formFacts } from '../import/import-words.ts';
import type { ImportAnswer } from '../import/messages.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';
import './import-choices.ts';
import './import-facts.ts';
import './import-questions.ts';
import { ruledSectionStyle } from './ruled-section-style.ts';

type Looked = Extract<ImportAnswer, { kind: 'looked' }>;

/** A file that was looked at: what is asked, its first rows, its trace, and each guess with its evidence. Lets `read-chosen` through. */
@customElement('import-looked')
export class ImportLooked extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    foldStyle,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
      }
      .scroll {
        overflow-x: auto;
      }
      th,
      td {
        padding: var(--gap-1) var(--gap-3);
        text-align: end;
        white-space: nowrap;
      }
      h3 {
        font-size: var(--size-1);
        margin-block: var(--gap-4) var(--gap-2);
        overflow-wrap: anywhere;
      }
      signal-chart {
        display: block;
        margin-block: var(--gap-3) var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) looked!: Looked;

  /** The question that was answered is gone, and with it the focus: it goes on above those that are left. */
  protected override updated(changed: PropertyValues<this>): void {
    const before: Looked | undefined = changed.get('looked');
    if (before === undefined || before.proposal.questions.length <= this.looked.proposal.questions.length) return;
    this.renderRoot.querySelector<HTMLElement>('#asked')?.focus();
  }

  override render(): TemplateResult {
    const words = IMPORT_WORDS;
    const { proposal } = this.looked;
    const { questions, columns } = proposal;
    return html`
      <section>
        <h2 id="asked" tabindex="-1">${words.asked.text}</h2>
        ${
          questions.length === 0
            ? html`<p>${words['asked-none'].text}</p>`
            : html`<p class="voice">${fill(words['asked-of'], { asked: questions.length })}</p>
                <import-questions .questions=${questions}></import-questions>`
        }
        ${this.choices()}
      </section>
      ${this.found()}
      <section>
        <h2>${words.trace.text}</h2>
        ${this.pictures()}
      </section>
      <section>
        <h2>${words.rows.text}</h2>
        ${this.rows()}
      </section>
      <section>
        <h2>${words.guesses.text}</h2>
        ${columns.map((column) => html`<h3>${column.label}</h3><import-facts .facts=${columnFacts(column)}></import-facts>`)}
        <details>
          <summary>${words.form.text}</summary>
          <import-facts .facts=${formFacts(proposal)}></import-facts>
        </details>
      </section>
    `;
  }

  private choices(): TemplateResult {
    const { parts, partLines, isLong, windows, columns, questions, odd, wrongSteps } = this.looked.proposal;
    const used = columns.filter(({ use }) => use.value !== null && use.value !== 'unused');
    const noSide = used.length > 0 && used.every(({ side }) => side.value === null && !side.asks);
    return html`<import-choices
      .parts=${
        parts.parts.length < 2
          ? []
          : parts.parts.map(({ label }, i) => ({ label, fromLine: partLines[i]!.from, toLine: partLines[i]!.to }))
      }
      .isLong=${isLong}
      .windows=${windows}
      .asksSide=${noSide}
      .blocked=${questions.length > 0 || odd.unreadable.count > 0 || odd.stray.count > 0 || wrongSteps.count > 0}
    ></import-choices>`;
  }

  private found(): TemplateResult | typeof nothing {
    const { findings } = this.looked;
    if (findings.length === 0) return nothing;
    return html`<section>
      <h2>${IMPORT_WORDS.found.text}</h2>
      <ul>
        ${findings.map((one) => html`<li>${findingWords(one)}</li>`)}
      </ul>
    </section>`;
  }

  /** The columns that are used, each as it stands in the file; all of them while none is known. */
  private pictures(): TemplateResult[] {
    const { proposal, pictures } = this.looked;
    const used = proposal.columns.filter(({ use }) => use.value !== null && use.value !== 'unused');
    return (used.length > 0 ? used : proposal.columns).slice(0, 6).flatMap(({ index, label, unit, side }) => {
      const line = pictures.find(([column]) => column === index)?.[1];
      if (line === undefined) return [];
      const series = [
        {
          label,
          unit: unit.value ?? '?',
          times: line.times,
          values: line.values,
          decimals: 2,
          dash: sideDash(side.value),
          side: side.value,
        },
      ];
      return [
        html`<signal-chart .label=${fill(IMPORT_WORDS['trace-of'], { column: label })} .series=${series}></signal-chart>`,
      ];
    });
  }

  private rows(): TemplateResult {
    const { labels, firstRows } = this.looked.proposal;
    const missing = html`<span class="voice">${IMPORT_WORDS.missing.text}</span>`;
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${IMPORT_WORDS.rows.text}>
      <table>
        <thead>
          <tr>
            <th scope="col">${IMPORT_WORDS.row.text}</th>
            ${labels.map((label) => html`<th scope="col">${label}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${firstRows.map(
            (row, i) =>
              html`<tr>
                <th scope="row">${i + 1}</th>
                ${row.map((cell) => html`<td>${cell ?? missing}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }
}
