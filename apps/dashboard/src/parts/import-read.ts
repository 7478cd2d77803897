import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sideDash } from '../charts/side-dash.ts';
import '../charts/signal-chart.ts';
import { answerWords } from '../import/import-words.ts';
import type { ImportAnswer } from '../import/messages.ts';
import { thinned } from '../import/thinned.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { ruledSectionStyle } from './ruled-section-style.ts';

/** A visit that a recording can be taken into. */
export interface OpenVisit {
  readonly id: string;
  readonly personId: string;
  readonly person: string;
  readonly date: string;
}

/** A recording that was read from a file, and the ways on from it. Tells `recipe-kept` and `recipe-saved`. */
@customElement('import-read')
export class ImportRead extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
      }
      signal-chart {
        display: block;
        margin-block: var(--gap-3) var(--gap-6);
      }
      /* under the button beside it, where there is no room, it stands at the edge as all text does */
      .choices .plain {
        padding-inline: 0;
      }
      .said {
        margin-block-start: var(--gap-3);
      }
      .visits {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        margin-block-end: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) result!: Extract<ImportAnswer, { kind: 'read' }>;
  @property({ attribute: false }) visits: readonly OpenVisit[] = [];
  /** what became of keeping the recipe; empty where it was not tried */
  @property({ attribute: false }) said = '';

  /** what became of keeping the recording; empty while it is being kept */
  @property({ attribute: false }) takenSaid = '';

  override render(): TemplateResult {
    const words = IMPORT_WORDS;
    const { groups } = this.result.recording;
    const gaps = groups.reduce((sum, group) => sum + group.gaps.length, 0);
    return html`
      <section>
        <h2 tabindex="-1">${words['read-title'].text}</h2>
        ${groups.map(({ timesS, channels }) => {
          const names = new Set(channels.map(({ quantity }) => answerWords(quantity)));
          const seconds = ((timesS.at(-1) ?? 0) - (timesS[0] ?? 0)).toFixed(1);
          return html`<p>${fill(words['read-line'], { channels: [...names].join(', '), seconds, samples: timesS.length })}</p>`;
        })}
        <p class="quiet">${gaps === 0 ? words['no-gaps'].text : fill(words.gaps, { count: gaps })}</p>
        <p class="quiet" role="status">${this.takenSaid}</p>
        ${this.pictures()}
      </section>
      <section>
        <h2>${words['next-title'].text}</h2>
        ${
          this.visits.length === 0
            ? html`<p>${words['no-visit'].text}</p>`
            : html`<p>${words['into-explain'].text}</p>
                <div class="visits">
                  ${this.visits.map(
                    ({ id, person, date }) =>
                      html`<a class="button" href=${hashOf({ page: 'visit', visitId: id })}
                        >${fill(words['into-visit'], { person, date })}</a
                      >`,
                  )}
                </div>`
        }
        <p>${words['keep-explain'].text}</p>
        <div class="choices">
          <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('recipe-kept'))}>${words['keep-recipe'].text}</button>
          <button class="plain" type="button" @click=${() => this.dispatchEvent(new CustomEvent('recipe-saved'))}>
            ${words['save-recipe'].text}
          </button>
        </div>
        ${this.said === '' ? nothing : html`<p class="voice said" role="status">${this.said}</p>`}
      </section>
    `;
  }

  private pictures(): TemplateResult[] {
    return this.result.recording.groups.flatMap(({ timesS, channels }) =>
      channels.slice(0, 6).map(({ column, unit, samples, side }) => {
        const line = thinned(timesS, samples);
        const series = [
          {
            label: column,
            unit: unit.si,
            times: line.times,
            values: line.values,
            decimals: 3,
            dash: sideDash(side),
            side: side ?? null,
          },
        ];
        return html`<signal-chart .label=${fill(IMPORT_WORDS['trace-of'], { column })} .series=${series}></signal-chart>`;
      }),
    );
  }
}
