import { DESIGN_WORDS } from '@surae/shared';
import { type DesignAnswer, designCommand, designOutputs, type NamedText } from '@surae/study';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { answerLines, caseRows, neededWords } from '../design/design-lines.ts';
import { saveBlob } from '../result/save-file.ts';
import { softwareName } from '../result/software.ts';
import { madeLine } from '../study/origin-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './made-again.ts';
import './svg-figure.ts';

/** What is saved by a press each. */
const saves = [
  { name: 'design.svg', type: 'image/svg+xml', code: 'save-picture' },
  { name: 'design.csv', type: 'text/csv', code: 'save-table' },
  { name: 'curve.csv', type: 'text/csv', code: 'save-curve' },
  { name: 'reproduce.json', type: 'application/json', code: 'save-record' },
] as const;

/** The answer with its figure and its table, as files that can be made again. */
@customElement('design-result')
export class DesignResult extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        container-type: inline-size;
      }
      .answer {
        font-size: var(--size-4);
        font-weight: 600;
        line-height: 1.15;
        margin-block-end: var(--gap-3);
      }
      section {
        margin-block-start: var(--gap-6);
      }
      table {
        border-collapse: collapse;
        inline-size: 100%;
        max-inline-size: 44rem;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        font-weight: 400;
        padding-block: var(--gap-2);
        text-align: start;
        vertical-align: top;
      }
      td {
        padding-inline-start: var(--gap-3);
      }
      tbody th {
        overflow-wrap: anywhere;
      }
      /* columns keep their words, unless letters are large for the page */
      @container (max-width: 16em) {
        thead th,
        td {
          overflow-wrap: anywhere;
        }
      }
      thead th {
        color: var(--ink-quiet);
        font-size: var(--size-1);
      }
      thead th + th {
        padding-inline-start: var(--gap-3);
      }
      .choices {
        margin-block: var(--gap-4) var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) answer!: DesignAnswer;
  @state() private said = '';
  private files: readonly NamedText[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('answer')) return;
    this.files = designOutputs(this.answer, softwareName());
    this.said = '';
  }

  override render(): TemplateResult {
    const { answer } = this;
    const { question } = answer.request;
    const words = DESIGN_WORDS;
    const rows = caseRows(answer);
    const isOfPeople = question.counts !== 'tests';
    return html`
      <h2>${words.answer.text}</h2>
      <p class="answer">${neededWords(answer.cases.expected, answer)}</p>
      ${answerLines(answer).map((line) => html`<p>${line}</p>`)}
      ${question.notes.map((note) => html`<p class="voice">${words[`note-${note}`].text}</p>`)}
      <p class="voice">${words['note-caution'].text}</p>
      <p class="quiet">${words.source.text.split('{source}')[0]}<span translate="no" lang="en">${question.source}</span>.</p>
      <section>
        <h3>${words.cases.text}</h3>
        <table>
          <thead>
            <tr>
              <th scope="col">${words.case.text}</th>
              <th scope="col">${words.need.text}</th>
              ${isOfPeople ? html`<th scope="col">${words.begun.text}</th>` : nothing}
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              ({ what, need, begun }) =>
                html`<tr>
                  <th scope="row">${what}</th>
                  <td>${need}</td>
                  ${isOfPeople ? html`<td>${begun}</td>` : nothing}
                </tr>`,
            )}
          </tbody>
        </table>
      </section>
      <section>
        <h3>${words.picture.text}</h3>
        <svg-figure .svg=${this.text('design.svg')}></svg-figure>
        <div class="choices">
          ${saves.map(
            ({ name, type, code }) =>
              html`<button type="button" @click=${() => this.save(name, type)}>${words[code].text}</button>`,
          )}
        </div>
        <p role="status" class="voice">${this.said}</p>
        <made-again
          .command=${designCommand(answer)}
          .software=${softwareName()}
          .explain=${words['again-explain'].text}
          .lines=${this.files.map(madeLine)}
        ></made-again>
      </section>
    `;
  }

  private text(name: string): string {
    return this.files.find((file) => file.name === name)!.text;
  }

  private save(name: string, type: string): void {
    saveBlob(new Blob([this.text(name)], { type }), name);
    this.said = fill(DESIGN_WORDS.saved, { file: name });
  }
}
