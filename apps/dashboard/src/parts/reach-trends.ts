import { AXIS_WORDS, REACH_WORDS, TREND_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawnReach, type ReachLine } from '../course/reach-lines.ts';
import { reachRest, reachRows, reachSentences } from '../course/reach-words.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { twoLines } from '../legs/two-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';
import { trendFigure, trendRest, trendTable } from './trend-parts.ts';
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
      ${trendFigure(picture, REACH_WORDS.band.text)} ${lines.map((line) => this.table(line))}
      ${trendRest(REACH_WORDS.rest.text, reachRest(unit))}
    </section>`;
  }

  private table(line: ReachLine): TemplateResult {
    return trendTable(
      fill(REACH_WORDS['table-of'], { leg: AXIS_WORDS[line.side].text }),
      [TREND_WORDS.day.text, TREND_WORDS.result.text, REACH_WORDS.trials.text],
      reachRows(line).map(({ when, value, trials }) => [when, value, trials]),
    );
  }
}
