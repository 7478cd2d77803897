import { AXIS_WORDS, TREND_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { LegTrend, TestTrend } from '../course/leg-trends.ts';
import { morningPicture } from '../course/morning-picture.ts';
import { morningRows, morningSentences } from '../course/morning-words.ts';
import type { Morning } from '../course/mornings.ts';
import type { ReachLine } from '../course/reach-lines.ts';
import type { TotalSeries } from '../course/total-change.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { twoLines } from '../legs/two-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './both-sore.ts';
import './reach-trends.ts';
import './total-trends.ts';
import { foldStyle } from './fold-style.ts';
import { trendFigure, trendRest, trendTable } from './trend-parts.ts';
import { trendTableStyle } from './trend-table-style.ts';

/** How tests and mornings went over time: a picture each, what can be said of it, and the same as a table. */
@customElement('course-trends')
export class CourseTrends extends LitElement {
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
      /* only the reason may break; days and numbers keep together */
      .tests td:last-child {
        overflow-wrap: anywhere;
      }
      .tests tbody th,
      .tests td:not(:last-child) {
        white-space: nowrap;
      }
      /* on a narrow page a day breaks between its words, so that the reason keeps room */
      @container (max-width: 24em) {
        .tests tbody th,
        .tests td:not(:last-child) {
          white-space: normal;
        }
      }
    `,
  ];

  @property({ attribute: false }) tests: readonly TestTrend[] = [];
  @property({ attribute: false }) mornings: readonly Morning[] = [];
  @property({ attribute: false }) totals: readonly TotalSeries[] = [];
  @property({ attribute: false }) reaches: readonly (readonly ReachLine[])[] = [];

  override render(): TemplateResult {
    return html`
      <section>
        <h2>${TREND_WORDS.mornings.text}</h2>
        ${this.mornings.length === 0 ? html`<p class="quiet">${TREND_WORDS['mornings-none'].text}</p>` : this.morning()}
      </section>
      <section>
        <h2>${TREND_WORDS.tests.text}</h2>
        ${
          this.tests.length === 0
            ? html`<p class="quiet">${TREND_WORDS.none.text}</p>`
            : this.tests.map((one) => this.test(one))
        }
      </section>
      <reach-trends .units=${this.reaches}></reach-trends>
      <total-trends .series=${this.totals}></total-trends>
    `;
  }

  private test({ title, lines, words, legs, bilateral }: TestTrend): TemplateResult {
    return html`
      <h3>${title}</h3>
      ${bilateral === null ? nothing : html`<both-sore .view=${bilateral}></both-sore>`}
      ${legs.map(({ lead }) => html`<p>${lead}</p>`)} ${trendFigure(twoLines(lines, words), TREND_WORDS.band.text)}
      ${legs.map((leg) => this.leg(title, leg))}
    `;
  }

  private leg(test: string, { side, rows, lines }: LegTrend): TemplateResult {
    const words = TREND_WORDS;
    return html`
      <table class="tests">
        <caption>
          <span class="side" data-side=${side}>${fill(words['table-of'], { test, leg: AXIS_WORDS[side].text })}</span>
        </caption>
        <thead>
          <tr>
            ${[words.day, words.result, words.interval, words.joined].map(
              ({ text }) => html`<th scope="col" class="quiet">${text}</th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ when, value, interval, joined }) =>
              html`<tr>
                <th scope="row">${when}</th>
                <td>${value}</td>
                <td class="quiet">${interval}</td>
                <td>${joined}</td>
              </tr>`,
          )}
        </tbody>
      </table>
      ${lines.length === 0 ? nothing : trendRest(words.rest.text, lines)}
    `;
  }

  private morning(): TemplateResult {
    const words = TREND_WORDS;
    const leg = (side: 'left' | 'right'): string => fill(words.pain, { leg: AXIS_WORDS[side].text });
    return html`
      ${morningSentences(this.mornings).map((line) => html`<p>${line}</p>`)}
      ${trendFigure(morningPicture(this.mornings), words['mornings-note'].text)}
      ${trendTable(
        words['mornings-table'].text,
        [words.day.text, leg('left'), leg('right'), words.stiffness.text],
        morningRows(this.mornings).map(({ when, left, right, stiffness }) => [when, left, right, stiffness]),
      )}
    `;
  }
}
