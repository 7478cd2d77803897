import { RECOUNT_STUDY_WORDS, STUDY_RESULT_WORDS } from '@surae/shared';
import type { StudyResults } from '@surae/study';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import '../parts/made-again.ts';
import { saveFile } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { type AgreementItem, agreementItems, countWords, lanesOf } from './agreement-items.ts';
import { agreementLines, namesOf } from './agreement-lines.ts';
import { agreementPlot } from './agreement-plot.ts';
import type { ItemTrace } from './item-trace.ts';
import { madeLine, originLines } from './origin-lines.ts';
import type { RecountAgreement } from './recount-desk.ts';
import './trace-look.ts';

/** How far raters agree: a section for each pair, and every recording with the most apart first, to be looked at with all marks. */
@customElement('recount-agreement')
export class RecountAgreementPart extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    css`
      .pair {
        display: grid;
        gap: var(--gap-2) var(--gap-6);
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 21.5rem), 1fr));
      }
      .plot {
        inline-size: 100%;
        max-inline-size: 30rem;
      }
      .plot text {
        fill: var(--ink-quiet);
        font: 14px var(--font);
      }
      .plot .ink {
        stroke: var(--ink);
        stroke-width: 1.5;
      }
      .plot .doubt {
        stroke: var(--ink-quiet);
        stroke-width: 3;
      }
      .plot .hair {
        stroke: var(--hairline);
      }
      .plot .ring {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.5;
      }
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        margin-block-end: var(--gap-2);
        max-inline-size: var(--line);
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        border-collapse: collapse;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        font-weight: 400;
        padding: var(--gap-1) var(--gap-4) var(--gap-1) 0;
        text-align: start;
      }
      thead th {
        font-weight: 600;
      }
      td {
        font-variant-numeric: tabular-nums;
      }
      th button {
        font-size: var(--size-1);
        overflow-wrap: normal;
        padding-inline: 0;
        white-space: nowrap;
      }
    `,
  ];

  @property({ attribute: false }) agreement!: RecountAgreement;
  /** the study as it is written to files; undefined where nothing is written */
  @property({ attribute: false }) made: (() => StudyResults) | undefined;
  @property({ attribute: false }) trace!: (sha256: string) => Promise<ItemTrace>;
  /** a result is worked out when it is asked for: it takes its time */
  @state() private results: StudyResults | undefined;
  @state() private looked: AgreementItem | undefined;
  @state() private shown: ItemTrace | 'not-read' | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('agreement')) this.results = undefined;
  }

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { lists, pairs } = this.agreement;
    return html`<h2>${words.agreement.text}</h2>
      ${pairs.map(
        (pair, at) => html`<section>
          <h3>${namesOf(pair).title}</h3>
          <div class="pair">
            <ul>
              ${agreementLines(pair).map((line) => html`<li>${line}</li>`)}
            </ul>
            <div>${agreementPlot(lists[at]!, pair)}</div>
          </div>
        </section>`,
      )}
      <section>
        <h3>${words['by-difference'].text}</h3>
        ${this.looked === undefined ? this.table() : this.look(this.looked)}
      </section>
      ${this.made === undefined ? nothing : this.files(this.made)}`;
  }

  /** How figure and table are made again; the figure as a file. */
  private files(made: () => StudyResults): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { results } = this;
    if (results === undefined) {
      return html`<section>
        <button type="button" @click=${() => (this.results = made())}>${words['made-again'].text}</button>
      </section>`;
    }
    const files = results.outputs.filter(({ name }) => name === 'agreement.svg' || name === 'agreement.csv');
    return html`<section>
      ${files.map(
        (file) => html`<div class="choices">
            <button type="button" @click=${() => saveFile({ name: file.name, type: 'text/plain', content: file.text })}>
              ${fill(words['save-file'], { file: file.name })}
            </button>
          </div>
          <made-again
            .explain=${STUDY_RESULT_WORDS['again-explain'].text}
            .command=${results.origin.command}
            .software=${results.origin.software}
            .lines=${[...originLines(results.origin), madeLine(file)]}
          ></made-again>`,
      )}
    </section>`;
  }

  private table(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { columns, rows } = agreementItems(this.agreement);
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${words['by-difference'].text}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words['column-recording'].text}</th>
            <th scope="col">${words['column-apart'].text}</th>
            ${columns.map((name) => html`<th scope="col">${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (item) => html`<tr>
              <th scope="row">
                <button class="plain" type="button" aria-label=${fill(words['look-at'], { trial: item.trial })} @click=${() => void this.lookAt(item)}>
                  ${item.trial}
                </button>
              </th>
              <td>${countWords(item.apart)}</td>
              ${item.counts.map((count) => html`<td class=${typeof count === 'number' ? '' : 'quiet'}>${countWords(count)}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  private look(item: AgreementItem): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { columns } = agreementItems(this.agreement);
    const { shown } = this;
    return html`<h4 tabindex="-1">${fill(words['marks-of'], { trial: item.trial })}</h4>
      <ul>
        ${columns.map((name, at) => html`<li>${name}: ${countWords(item.counts[at] ?? null)}</li>`)}
      </ul>
      ${
        shown === undefined
          ? html`<p class="quiet">${words.reading.text}</p>`
          : shown === 'not-read'
            ? html`<p class="voice" role="alert">${words['not-read'].text}</p>`
            : html`<trace-look .trace=${shown} .lanes=${lanesOf(this.agreement, item.trial)}></trace-look>`
      }
      <button type="button" @click=${() => void this.back()}>${words['look-back'].text}</button>`;
  }

  private async lookAt(item: AgreementItem): Promise<void> {
    this.looked = item;
    this.shown = undefined;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('h4')?.focus();
    try {
      const shown = await this.trace(item.sha256);
      if (this.looked === item) this.shown = shown;
    } catch {
      this.shown = 'not-read';
    }
  }

  private async back(): Promise<void> {
    const trial = this.looked?.trial;
    this.looked = undefined;
    await this.updateComplete;
    const label = fill(RECOUNT_STUDY_WORDS['look-at'], { trial: trial ?? '' });
    for (const button of this.renderRoot.querySelectorAll('button')) {
      if (button.getAttribute('aria-label') === label) button.focus();
    }
  }
}
