import type { Window } from '@surae/records';
import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../charts/signal-chart.ts';
import { columnFacts, findingWords, formFacts } from '../import/import-words.ts';
import type { ImportAnswer } from '../import/messages.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';
import { foldStyle } from './fold-style.ts';
import './import-facts.ts';
import './import-questions.ts';
import { ruledSectionStyle } from './ruled-section-style.ts';

type Looked = Extract<ImportAnswer, { kind: 'looked' }>;

/** What is chosen before a file is read. */
export interface ReadChoice {
  readonly part?: string;
  readonly window?: Window | 'all';
  readonly side?: 'left' | 'right';
}

export type ReadChosen = CustomEvent<ReadChoice>;

/** A file that was looked at: what is asked, its first rows, its trace, and each guess with its evidence. Tells `read-chosen`. */
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
      .main {
        margin-block-start: var(--gap-6);
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
      chip-choice {
        display: block;
        margin-block-end: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) looked!: Looked;
  @state() private chosenPart: string | undefined;
  @state() private chosenWindow: string | undefined;
  @state() private side: string | null = null;

  /** The question that was answered is gone, and with it the focus: it goes on above those that are left. */
  protected override updated(changed: PropertyValues<this>): void {
    const before: Looked | undefined = changed.get('looked');
    if (before === undefined || before.proposal.questions.length <= this.looked.proposal.questions.length) return;
    this.renderRoot.querySelector<HTMLElement>('#asked')?.focus();
  }

  private get isReady(): boolean {
    const { questions, parts, isLong, odd, wrongSteps } = this.looked.proposal;
    if (questions.length > 0 || odd.unreadable.count > 0 || odd.stray.count > 0 || wrongSteps.count > 0) return false;
    return (parts.parts.length < 2 || this.chosenPart !== undefined) && (!isLong || this.chosenWindow !== undefined);
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
        <button class="main" type="button" ?disabled=${!this.isReady} @click=${() => this.read()}>${words.read.text}</button>
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
    const words = IMPORT_WORDS;
    const { parts, partLines, isLong, windows, columns } = this.looked.proposal;
    const used = columns.filter(({ use }) => use.value !== null && use.value !== 'unused');
    const noSide = used.length > 0 && used.every(({ side }) => side.value === null && !side.asks);
    const seconds = (value: number): string => value.toFixed(0);
    return html`
      ${
        parts.parts.length < 2
          ? nothing
          : html`<chip-choice
              .legend=${words.part.text}
              .chips=${[
                ...parts.parts.slice(0, 12).map(({ label }, i) => ({
                  value: String(i + 1),
                  text: fill(words['part-option'], { label, from: partLines[i]!.from, to: partLines[i]!.to }),
                })),
              ]}
              .value=${this.chosenPart ?? null}
              @chip-chosen=${({ detail }: ChipChosen) => (this.chosenPart = detail)}
            ></chip-choice>`
      }
      ${
        isLong
          ? html`<chip-choice
              .legend=${words.window.text}
              .chips=${[
                ...windows.slice(0, 8).map(({ fromS, toS }, i) => ({
                  value: String(i),
                  text: fill(words['window-option'], { from: seconds(fromS), to: seconds(toS) }),
                })),
                { value: 'all', text: words.whole.text },
              ]}
              .value=${this.chosenWindow ?? null}
              @chip-chosen=${({ detail }: ChipChosen) => (this.chosenWindow = detail)}
            ></chip-choice>`
          : nothing
      }
      ${
        noSide
          ? html`<chip-choice
              .legend=${words.side.text}
              .chips=${[
                { value: 'left', text: words['side-left'].text },
                { value: 'right', text: words['side-right'].text },
              ]}
              .open=${words['side-open'].text}
              .value=${this.side}
              @chip-chosen=${({ detail }: ChipChosen<string | null>) => (this.side = detail)}
            ></chip-choice>`
          : nothing
      }
    `;
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
          dash: [],
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

  private read(): void {
    const { windows } = this.looked.proposal;
    const window =
      this.chosenWindow === undefined
        ? undefined
        : this.chosenWindow === 'all'
          ? ('all' as const)
          : windows[Number(this.chosenWindow)];
    const detail: ReadChoice = {
      ...(this.chosenPart === undefined ? {} : { part: this.chosenPart }),
      ...(window === undefined ? {} : { window }),
      ...(this.side === 'left' || this.side === 'right' ? { side: this.side } : {}),
    };
    this.dispatchEvent(new CustomEvent('read-chosen', { detail }));
  }
}
