import { SIDE_WORDS } from '@surae/shared';
import { css, html, LitElement, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { axisScale } from '../result/axis-scale.ts';
import type { RatioMark } from '../result/side-view.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { legMarkStyle } from './leg-mark-style.ts';

const rowY = 34;
const axisY = 56;

/** One leg as a share of the other: a mark with its interval, beside the line that was chosen and the place where legs are equal. */
@customElement('ratio-axis')
export class RatioAxis extends LitElement {
  static override styles = [
    base,
    legMarkStyle,
    css`
      :host {
        direction: ltr;
        margin-block-end: var(--gap-3);
        max-inline-size: 44rem;
      }
      .title {
        font-weight: 600;
        margin: 0 0 var(--gap-2);
      }
      svg {
        block-size: calc(64px + 1rem);
        display: block;
        inline-size: 100%;
        overflow: visible;
      }
      text {
        fill: var(--ink-quiet);
        font-size: 0.875rem;
        text-anchor: middle;
      }
      .axis {
        stroke: var(--ink-quiet);
      }
      .line {
        stroke: var(--voice);
        stroke-dasharray: 4 3;
      }
      .line-name {
        fill: var(--voice);
        text-anchor: end;
      }
      .equal {
        stroke: var(--ink);
      }
      .equal-name {
        fill: var(--ink);
        text-anchor: start;
      }
    `,
  ];

  @property({ attribute: false }) ratio!: RatioMark;

  override render(): TemplateResult {
    const { title, over, percent, low, high, linePercent } = this.ratio;
    const figure = { kind: 'measured', value: percent, low, high: Math.max(high, 110), atLeast: false } as const;
    const { ticks, percentOf } = axisScale([figure], 10);
    const at = (value: number): string => `${percentOf(value)}%`;
    return html`
      <p class="title">${title}</p>
      <svg aria-hidden="true">
        <line class="axis" x1=${at(0)} x2=${at(ticks.at(-1) ?? 0)} y1=${axisY} y2=${axisY} />
        ${ticks.map(
          (tick) =>
            svg`<line class="axis" x1=${at(tick)} x2=${at(tick)} y1=${axisY} y2=${axisY + 5} />
              <text x=${at(tick)} y=${axisY + 8} dominant-baseline="hanging">${inDigits(String(tick))}</text>`,
        )}
        <line class="line" x1=${at(linePercent)} x2=${at(linePercent)} y1="14" y2=${axisY} />
        <text class="line-name" x=${at(linePercent)} y="10" dx="2">${fill(SIDE_WORDS['line-name'], { line: linePercent })}</text>
        <line class="equal" x1=${at(100)} x2=${at(100)} y1="14" y2=${axisY} />
        <text class="equal-name" x=${at(100)} y="10" dx="-2">${SIDE_WORDS['equal-name'].text}</text>
        <g class=${over}>
          <linearGradient id="fade" gradientUnits="userSpaceOnUse" x1=${at(low)} x2=${at(high)} y1=${rowY} y2=${rowY}>
            <stop offset="0" stop-opacity="0.1" /><stop offset="0.2" stop-opacity="1" />
            <stop offset="0.8" stop-opacity="1" /><stop offset="1" stop-opacity="0.1" />
          </linearGradient>
          <line class="interval" x1=${at(low)} x2=${at(high)} y1=${rowY} y2=${rowY} stroke="url(#fade)" />
          <svg x=${at(percent)} y=${rowY} overflow="visible">
            ${
              over === 'left'
                ? svg`<circle class="mark" r="8" />`
                : svg`<path class="mark" d="M0-10 10 0 0 10-10 0z" />`
            }
          </svg>
        </g>
      </svg>
    `;
  }
}
