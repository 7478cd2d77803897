import { AXIS_WORDS, PAST_WORDS } from '@surae/shared';
import { css, html, LitElement, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { axisScale } from '../result/axis-scale.ts';
import type { CourseMarks, CoursePoint } from '../result/past-view.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';

const height = 170;
const top = 14;
const bottom = 138;

/** The same test of one leg over its visits: a mark a visit with its interval, by the calendar; below it the same as a table. */
@customElement('leg-course')
export class LegCourse extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        direction: ltr;
        margin-block-end: var(--gap-4);
        max-inline-size: 44rem;
      }
      svg.picture {
        block-size: 170px;
        display: block;
        inline-size: 100%;
        overflow: visible;
      }
      text {
        fill: var(--ink-quiet);
        font-size: 0.875rem;
      }
      .day {
        text-anchor: middle;
      }
      .first {
        text-anchor: start;
      }
      .last {
        text-anchor: end;
      }
      .hair {
        stroke: var(--hairline);
      }
      .left {
        --leg: var(--left);
      }
      .right {
        --leg: var(--right);
      }
      .join,
      .interval {
        fill: none;
        stroke: var(--leg);
      }
      .join {
        stroke-width: 1.5;
      }
      .right .join {
        stroke-dasharray: 7 4;
      }
      .interval {
        opacity: 0.5;
        stroke-width: 3;
      }
      .left .mark {
        fill: var(--paper);
        stroke: var(--leg);
        stroke-width: 3;
      }
      .right .mark {
        fill: var(--leg);
      }
      table {
        border-collapse: collapse;
      }
      caption {
        font-weight: 600;
        text-align: start;
      }
      th,
      td {
        font-weight: 400;
        overflow-wrap: anywhere;
        padding: var(--gap-1) var(--gap-3) var(--gap-1) 0;
        text-align: start;
      }
      @media (min-width: 40rem) {
        tbody th {
          white-space: nowrap;
        }
        th,
        td {
          padding-inline-end: var(--gap-8);
        }
      }
    `,
  ];

  @property({ attribute: false }) course!: CourseMarks;

  override render(): TemplateResult {
    const { points, title, side, words } = this.course;
    const number = (value: number): string => decimal(value, words.decimals);
    return html`
      <table>
        <caption>
          ${title}
        </caption>
        <thead>
          <tr>
            <th scope="col" class="quiet">${PAST_WORDS.day.text}</th>
            <th scope="col" class="quiet">
              ${words.isCount ? PAST_WORDS.value.text : fill(PAST_WORDS['value-net'], { unit: words.unit })}
            </th>
            <th scope="col" class="quiet">${AXIS_WORDS['interval-name'].text}</th>
          </tr>
        </thead>
        <tbody>
          ${points.map(
            ({ when, value, low, high }) =>
              html`<tr>
                <th scope="row">${when}</th>
                <td>${number(value)}</td>
                <td class="quiet">${fill(PAST_WORDS.range, { low: number(low), high: number(high) })}</td>
              </tr>`,
          )}
        </tbody>
      </table>
      <svg class="picture" aria-hidden="true"><g class=${side}>${this.marks(points)}</g></svg>
    `;
  }

  private marks(points: readonly CoursePoint[]): SVGTemplateResult {
    const days = points.map(({ day }) => day);
    const [from, to] = [Math.min(...days), Math.max(...days)];
    // the value axis is that of the legs, turned upright; numbers stand at its left
    const { ticks, percentOf } = axisScale(
      points.map((point) => ({ kind: 'measured', ...point, atLeast: false })),
      1,
    );
    const [zero, most] = [percentOf(0), percentOf(ticks.at(-1) ?? 1)];
    const y = (value: number): number => bottom - ((percentOf(value) - zero) / (most - zero)) * (bottom - top);
    const x = (day: number): number => 12 + (84 * (day - from)) / Math.max(1, to - from);
    const joins = points.slice(1).map((point, at) => {
      const before = points[at]!;
      return svg`<line class="join" x1="${x(before.day)}%" y1=${y(before.value)} x2="${x(point.day)}%" y2=${y(point.value)} />`;
    });
    return svg`
      ${ticks.map(
        (tick) => svg`<line class="hair" x1="8%" x2="100%" y1=${y(tick)} y2=${y(tick)} />
          <text x="0" y=${y(tick)} dominant-baseline="central">${inDigits(String(tick))}</text>`,
      )}
      ${joins}
      ${points.map(({ day, when, value, low, high }, at) => {
        const place = at === 0 ? 'first' : at === points.length - 1 ? 'last' : 'unseen';
        return svg`
          <line class="interval" x1="${x(day)}%" x2="${x(day)}%" y1=${y(low)} y2=${y(high)} />
          <svg x="${x(day)}%" y=${y(value)} overflow="visible">
            ${this.course.side === 'left' ? svg`<circle class="mark" r="6" />` : svg`<path class="mark" d="M0-8 8 0 0 8-8 0z" />`}
          </svg>
          ${place === 'unseen' ? null : svg`<text class=${place} x=${place === 'first' ? '8%' : '100%'} y=${height - 8}>${when}</text>`}`;
      })}`;
  }
}
