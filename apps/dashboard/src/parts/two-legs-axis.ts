import type { Side } from '@surae/analysis';
import { AXIS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type AxisScale, axisScale } from '../result/axis-scale.ts';
import { figureWords, intervalWords } from '../result/figure-words.ts';
import type { LegFigure } from '../result/leg-figure.ts';
import { legsShown, type TwoLegFigures } from '../result/two-legs.ts';
import { base } from '../styles/base.ts';
import { inDigits } from '../words/in-digits.ts';
import { legMarkStyle } from './leg-mark-style.ts';

const rowY = { left: 16, right: 46 } as const satisfies Record<Side, number>;
const axisY = 68;

/** The two legs on one axis in natural units: an open ring and a filled lozenge, each with its interval; above it the same as a table. */
@customElement('two-legs-axis')
export class TwoLegsAxis extends LitElement {
  static override styles = [
    base,
    legMarkStyle,
    css`
      :host {
        border-block-start: 1px solid var(--hairline);
        direction: ltr;
        padding-block: var(--gap-4) var(--gap-3);
      }
      table {
        border-collapse: collapse;
        inline-size: 100%;
        table-layout: fixed;
      }
      caption {
        font-weight: 600;
        padding-block-end: var(--gap-2);
        text-align: start;
      }
      th,
      td {
        font-weight: 400;
        hyphens: auto;
        overflow-wrap: anywhere;
        padding: 0 var(--gap-3) 0 0;
        text-align: start;
        vertical-align: baseline;
      }
      .name {
        inline-size: 0;
        padding: 0;
      }
      .value {
        font-size: var(--size-4);
        line-height: 1.1;
      }
      .value .quiet {
        font-size: var(--size-1);
      }
      .open {
        color: var(--voice);
        font-size: var(--size-2);
      }
      svg {
        block-size: calc(76px + 1rem);
        display: block;
        inline-size: 100%;
        overflow: visible;
      }
      text {
        fill: var(--ink-quiet);
        font-size: 0.875rem;
        text-anchor: middle;
      }
      .gap {
        fill: var(--voice);
      }
      .hair {
        stroke: var(--hairline);
      }
      .axis {
        stroke: var(--ink-quiet);
      }
    `,
  ];

  @property({ attribute: false }) figures!: TwoLegFigures;

  override render(): TemplateResult {
    const { left, right, decimals, title } = this.figures;
    const sides = legsShown(this.figures);
    const scale = axisScale([left, right], decimals === 0 ? 1 : 10 ** -decimals);
    return html`
      <table>
        <caption>
          ${title}
        </caption>
        <thead>
          <tr>
            <td class="name"></td>
            ${sides.map(
              (side) => html`<th scope="col"><span class="side" data-side=${side}>${AXIS_WORDS[side].text}</span></th>`,
            )}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th class="name" scope="row"><span class="unseen">${AXIS_WORDS.measure.text}</span></th>
            ${sides.map((side) => this.valueCell(this.figures[side]))}
          </tr>
          <tr>
            <th class="name" scope="row"><span class="unseen">${AXIS_WORDS['interval-name'].text}</span></th>
            ${sides.map((side) => html`<td class="quiet">${intervalWords(this.figures[side], decimals)}</td>`)}
          </tr>
        </tbody>
      </table>
      ${
        left.kind === 'open' && right.kind === 'open'
          ? nothing
          : html`<svg aria-hidden="true">${this.axis(scale)} ${sides.map((side) => this.leg(side, scale))}</svg>`
      }
    `;
  }

  private valueCell(figure: LegFigure): TemplateResult {
    const words = figureWords(figure, this.figures.decimals);
    return figure.kind === 'open'
      ? html`<td class="open">${words}</td>`
      : html`<td class="value">${words} <span class="quiet">${this.figures.unit}</span></td>`;
  }

  private axis({ ticks, percentOf }: AxisScale): SVGTemplateResult {
    return svg`
      <line class="axis" x1="${percentOf(0)}%" x2="${percentOf(ticks.at(-1) ?? 0)}%" y1=${axisY} y2=${axisY} />
      ${ticks.map((tick) => {
        const x = `${percentOf(tick)}%`;
        return svg`<line class="axis" x1=${x} x2=${x} y1=${axisY} y2=${axisY + 5} />
          <text x=${x} y=${axisY + 8} dominant-baseline="hanging">${inDigits(String(tick))}</text>`;
      })}`;
  }

  private leg(side: Side, { percentOf, ticks }: AxisScale): SVGTemplateResult {
    const figure = this.figures[side];
    const y = rowY[side];
    const from = percentOf(0);
    const to = percentOf(ticks.at(-1) ?? 0);
    if (figure.kind === 'open') {
      return svg`
        <line class="hair" x1="${from}%" x2="30%" y1=${y} y2=${y} />
        <text class="gap" x="50%" y=${y} dominant-baseline="central">${AXIS_WORDS.open.text}</text>
        <line class="hair" x1="70%" x2="${to}%" y1=${y} y2=${y} />`;
    }
    const low = `${percentOf(figure.low)}%`;
    const high = figure.atLeast ? `${to}%` : `${percentOf(figure.high)}%`;
    const mark =
      side === 'left' ? svg`<circle class="mark" r="8" />` : svg`<path class="mark" d="M0-10 10 0 0 10-10 0z" />`;
    return svg`<g class=${side}>
      <linearGradient id=${`fade-${side}`} gradientUnits="userSpaceOnUse" x1=${low} x2=${high} y1=${y} y2=${y}>
        <stop offset="0" stop-opacity="0.1" /><stop offset="0.2" stop-opacity="1" />
        <stop offset="0.8" stop-opacity="1" /><stop offset="1" stop-opacity="0.1" />
      </linearGradient>
      <line class="hair" x1="${from}%" x2="${to}%" y1=${y} y2=${y} />
      <line class="interval" x1=${low} x2=${high} y1=${y} y2=${y} stroke=${`url(#fade-${side})`} />
      <svg x="${percentOf(figure.value)}%" y=${y} overflow="visible">${mark}</svg>
    </g>`;
  }
}
