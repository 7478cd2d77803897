import { TOTAL_WORDS, TREND_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { TotalSeries } from '../course/total-change.ts';
import { totalPicture } from '../course/total-picture.ts';
import { rangeWords, seriesName, seriesRest, seriesRows, seriesSentences } from '../course/total-words.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';
import { trendFigure, trendRest, trendTable } from './trend-parts.ts';
import { trendTableStyle } from './trend-table-style.ts';

/** How totals of questionnaires went over time: what can be said of each, its picture, and the same as a table. */
@customElement('total-trends')
export class TotalTrends extends LitElement {
  static override styles = [
    base,
    legsStyle,
    foldStyle,
    trendTableStyle,
    css`
      :host {
        container-type: inline-size;
        display: block;
      }
    `,
  ];

  @property({ attribute: false }) series: readonly TotalSeries[] = [];

  override render(): TemplateResult | typeof nothing {
    if (this.series.length === 0) return nothing;
    return html`<section>
      <h2>${TOTAL_WORDS.title.text}</h2>
      ${this.series.map((one) => this.one(one))}
    </section>`;
  }

  private one(series: TotalSeries): TemplateResult {
    const words = TOTAL_WORDS;
    const name = seriesName(series);
    return html`
      <h3>${name}</h3>
      ${seriesSentences(series).map((line) => html`<p>${line}</p>`)}
      ${trendFigure(totalPicture(series), rangeWords(series.questionnaire))}
      ${trendTable(
        fill(words['table-of'], { name }),
        [TREND_WORDS.day.text, words['total-field'].text, words.version.text],
        seriesRows(series).map(({ when, total, version }) => [when, total, version]),
      )}
      ${trendRest(words.rest.text, seriesRest(series))}
    `;
  }
}
