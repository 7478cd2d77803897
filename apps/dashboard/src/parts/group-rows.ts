import type { Side } from '@surae/analysis';
import { GROUP_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type AxisScale, axisScale } from '../result/axis-scale.ts';
import type { GroupRow, GroupView } from '../result/group-view.ts';
import { capital } from '../result/value-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { legMarkStyle } from './leg-mark-style.ts';
import { ruledListStyle } from './ruled-list-style.ts';

type Bounds = NonNullable<GroupView['value']>;

const rowY = { left: 14, right: 36 } as const satisfies Record<Side, number>;
const one = 28;
const both = 50;

/** The legs beside the middle of each group: a row a group, all on one axis; no group is averaged with another. */
@customElement('group-rows')
export class GroupRows extends LitElement {
  static override styles = [
    base,
    legMarkStyle,
    ruledListStyle,
    css`
      :host {
        direction: ltr;
        max-inline-size: 44rem;
      }
      li {
        padding-block: var(--gap-3);
      }
      p {
        margin: 0;
      }
      .values {
        margin-block-end: var(--gap-2);
      }
      .group {
        font-weight: 600;
      }
      svg.marks {
        display: block;
        inline-size: 100%;
        overflow: visible;
      }
      .axis {
        stroke: var(--hairline);
      }
      .middle {
        stroke: var(--ink);
        stroke-width: 2;
      }
    `,
  ];

  /** of the legs that have groups beside them */
  @property({ attribute: false }) groups: readonly GroupView[] = [];

  override render(): TemplateResult {
    const legs = this.groups.filter(({ value, rows }) => value !== null && rows.length > 0);
    const rows = [...new Map(legs.flatMap((leg) => leg.rows.map((row) => [row.id, row]))).values()];
    if (rows.length === 0) return html`${nothing}`;
    const measured = (bounds: Bounds) => ({ kind: 'measured' as const, atLeast: false, ...bounds });
    const middles = rows.map(({ middle }) => measured({ value: middle, low: middle, high: middle }));
    const scale = axisScale([...legs.flatMap(({ value }) => (value === null ? [] : measured(value))), ...middles], 1);
    return html`<p class="values quiet">${legs.map(({ title }) => title).join('. ')}.</p>
      <ul>
        ${rows.map((row, at) => this.row(row, at, legs, scale))}
      </ul>`;
  }

  private row(
    { id, who, middleWords, middle, source, notes }: GroupRow,
    at: number,
    legs: readonly GroupView[],
    scale: AxisScale,
  ): TemplateResult {
    const beside = legs.flatMap((leg) => {
      const row = leg.rows.find((other) => other.id === id);
      return row === undefined || leg.value === null ? [] : [{ leg, row, value: leg.value }];
    });
    const { percentOf, ticks } = scale;
    const tall = beside.length > 1 ? both : one;
    const y = (side: Side): number => (beside.length > 1 ? rowY[side] : rowY.left);
    return html`<li>
      <p class="group">${who}: ${middleWords}</p>
      <p>
        ${beside
          .map(({ leg: { side }, row }) =>
            fill(GROUP_WORDS.place, { leg: capital(SUMMARY_WORDS[side].text), place: row.placeWords }),
          )
          .join(' ')}
      </p>
      <svg class="marks" height=${tall} aria-hidden="true">
        ${beside.map(({ leg: { side }, value }) => {
          const ends = `${percentOf(0)}%`;
          return svg`<line class="axis" x1=${ends} x2="${percentOf(ticks.at(-1) ?? 0)}%" y1=${y(side)} y2=${y(side)} />
            ${this.mark(side, value, y(side), `fade-${at}-${side}`, scale)}`;
        })}
        <line class="middle" x1="${percentOf(middle)}%" x2="${percentOf(middle)}%" y1="0" y2=${tall} />
      </svg>
      <p class="quiet">${[source, ...notes].map(sentence).join(' ')}</p>
    </li>`;
  }

  private mark(
    side: Side,
    { value, low, high }: Bounds,
    y: number,
    fade: string,
    { percentOf }: AxisScale,
  ): SVGTemplateResult {
    const [from, to] = [`${percentOf(low)}%`, `${percentOf(high)}%`];
    return svg`<g class=${side}>
      <linearGradient id=${fade} gradientUnits="userSpaceOnUse" x1=${from} x2=${to} y1=${y} y2=${y}>
        <stop offset="0" stop-opacity="0.1" /><stop offset="0.2" stop-opacity="1" />
        <stop offset="0.8" stop-opacity="1" /><stop offset="1" stop-opacity="0.1" />
      </linearGradient>
      <line class="interval" x1=${from} x2=${to} y1=${y} y2=${y} stroke="url(#${fade})" />
      <svg x="${percentOf(value)}%" y=${y} overflow="visible">
        ${side === 'left' ? svg`<circle class="mark" r="8" />` : svg`<path class="mark" d="M0-10 10 0 0 10-10 0z" />`}
      </svg>
    </g>`;
  }
}

function sentence(text: string): string {
  return text.endsWith('.') ? text : `${text}.`;
}
