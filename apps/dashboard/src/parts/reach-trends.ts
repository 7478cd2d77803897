import { AXIS_WORDS, REACH_WORDS, TREND_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawnReach, type ReachLine } from '../course/reach-lines.ts';
import { reachRest, reachRows, reachSentences } from '../course/reach-words.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { twoLines } from '../legs/two-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { drawnPicture } from './drawn-picture.ts';
import { foldStyle } from './fold-style.ts';
import { trendTableStyle } from './trend-table-style.ts';

/** How far the shank of each leg leant over its foot, over time. */
@customElement('reach-trends')
export class ReachTrends extends LitElement {
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

  /** both legs in one unit each */
  @property({ attribute: false }) units: readonly (readonly ReachLine[])[] = [];

  override render(): TemplateResult {
    return html`${this.units.map((lines) => this.one(lines))}`;
  }

  private one(lines: readonly ReachLine[]): TemplateResult | typeof nothing {
    const unit = lines[0]?.unit;
    if (unit === undefined) return nothing;
    const words = { unit, decimals: unit === 'cm' ? 1 : 0, isCount: false };
    const picture = twoLines(
      lines.map((line) => drawnReach(line)),
      words,
    );
    return html`<section>
      <h2>${REACH_WORDS[unit === 'cm' ? 'title' : 'title-deg'].text}</h2>
      ${lines.map((line) => html`<p>${reachSentences(line).join(' ')}</p>`)}
      ${
        picture === null
          ? nothing
          : html`<figure>
              ${drawnPicture(picture)}
              <p class="quiet">${REACH_WORDS.band.text}</p>
            </figure>`
      }
      ${lines.map((line) => this.table(line))}
      <details>
        <summary>${REACH_WORDS.rest.text}</summary>
        <ul>
          ${reachRest(unit).map((line) => html`<li>${line}</li>`)}
        </ul>
      </details>
    </section>`;
  }

  private table(line: ReachLine): TemplateResult {
    return html`<details>
      <summary>${fill(REACH_WORDS['table-of'], { leg: AXIS_WORDS[line.side].text })}</summary>
      <table>
        <thead>
          <tr>
            ${[TREND_WORDS.day, TREND_WORDS.result, REACH_WORDS.trials].map(
              ({ text }) => html`<th scope="col" class="quiet">${text}</th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${reachRows(line).map(
            ({ when, value, trials }) =>
              html`<tr>
                <th scope="row">${when}</th>
                <td>${value}</td>
                <td class="quiet">${trials}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </details>`;
  }
}
