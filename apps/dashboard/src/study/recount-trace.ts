import type { BlindVerdict } from '@surae/study';
import { css, html, LitElement, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { minMaxLine, type TimeWindow } from '../live/min-max.ts';
import { base } from '../styles/base.ts';
import { axisValues } from './axis-values.ts';
import type { ItemTrace } from './item-trace.ts';
import { windowAround, windowLengthS } from './trace-window.ts';

/** Marks that stand on a line of their own below the trace. */
export interface TraceLane {
  /** who marked; empty where it is said elsewhere */
  readonly name: string;
  readonly marks: readonly { readonly place: number; readonly atS: number; readonly verdict: BlindVerdict }[];
}

/** The pointer asks for a time. */
export type CursorAsked = CustomEvent<number>;

const HEIGHT = 260;
const [LEFT, RIGHT, TOP, BELOW, LANE, OVERVIEW] = [44, 8, 12, 24, 52, 44];

/** A stroke for what counts, a cross for what does not, a question for what nobody can tell, about a point. */
function glyph(verdict: BlindVerdict, x: number, y: number): SVGTemplateResult {
  switch (verdict) {
    case 'yes':
      return svg`<path class="mark" d="M${x} ${y - 8}V${y + 8}" />`;
    case 'no':
      return svg`<path class="mark" d="M${x - 6} ${y - 7}L${x + 6} ${y + 7}M${x + 6} ${y - 7}L${x - 6} ${y + 7}" />`;
    case 'cannot_tell':
      return svg`<path class="mark open" d="M${x - 4} ${y - 4}C${x - 4} ${y - 10} ${x + 5} ${y - 10} ${x + 5} ${y - 4}C${x + 5} ${y} ${x} ${y} ${x} ${y + 4}M${x} ${y + 7}V${y + 8.5}" />`;
  }
}

/** The line of one recording with marks below it: a stretch that follows the cursor, and the whole of it small. */
@customElement('recount-trace')
export class RecountTrace extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        min-inline-size: 0;
      }
      svg {
        display: block;
        inline-size: 100%;
        touch-action: pan-y;
      }
      .line,
      .mark {
        fill: none;
        stroke: var(--ink);
        stroke-linejoin: round;
        stroke-width: 2;
      }
      .mark.open {
        stroke: var(--voice);
      }
      .small {
        stroke-width: 1;
      }
      .hair {
        stroke: var(--hairline);
        stroke-width: 1;
      }
      .drop {
        stroke: var(--ink-quiet);
        stroke-dasharray: 1 4;
      }
      .cursor {
        stroke: var(--voice);
        stroke-width: 2;
      }
      .head {
        fill: var(--voice);
      }
      .shown {
        fill: none;
        stroke: var(--ink-quiet);
        stroke-width: 1.5;
      }
      text {
        fill: var(--ink-quiet);
        font: 0.875rem var(--font);
      }
      text.lane {
        paint-order: stroke;
        stroke: var(--paper);
        stroke-width: 5;
      }
      text.number {
        fill: var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) trace!: ItemTrace;
  @property({ attribute: false }) lanes: readonly TraceLane[] = [];
  /** null where there is no cursor [s] */
  @property({ attribute: false }) cursorS: number | null = null;
  @state() private width = 0;
  @query('.stage') private readonly stage!: HTMLElement;
  private shown: TimeWindow | undefined;
  private readonly resized = new ResizeObserver(([entry]) => {
    this.width = Math.floor(entry?.contentRect.width ?? 0);
  });

  override disconnectedCallback(): void {
    this.resized.disconnect();
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.resized.observe(this.stage);
  }

  private get span(): TimeWindow {
    const { timesS } = this.trace;
    return { fromS: timesS[0] ?? 0, toS: timesS.at(-1) ?? 1 };
  }

  override render(): TemplateResult {
    return html`<div class="stage" dir="ltr">${this.width === 0 ? nothing : [this.overview(), this.picture()]}</div>`;
  }

  /** Values from the least to the greatest, with some room. */
  private range(): { readonly least: number; readonly most: number } {
    let [least, most] = [Infinity, -Infinity];
    for (const value of this.trace.values) {
      if (value < least) least = value;
      if (value > most) most = value;
    }
    if (!(most > least))
      return { least: (least === Infinity ? 0 : least) - 1, most: (most === -Infinity ? 0 : most) + 1 };
    return { least: least - 0.04 * (most - least), most: most + 0.06 * (most - least) };
  }

  private path(
    window: TimeWindow,
    x: (timeS: number) => number,
    y: (value: number) => number,
    columns: number,
  ): string {
    const { timesS, values } = this.trace;
    const line = minMaxLine({ timesS, values }, { fromS: window.fromS, toS: window.toS + 1e-6 }, columns);
    let pen = 'M';
    let path = '';
    line.values.forEach((value, at) => {
      if (Number.isNaN(value)) {
        pen = 'M';
        return;
      }
      path += `${pen}${x(line.timesS[at]!).toFixed(1)} ${y(value).toFixed(1)}`;
      pen = 'L';
    });
    return path;
  }

  private picture(): TemplateResult {
    const { width, span, lanes, cursorS, trace } = this;
    const room = Math.max(1, width - LEFT - RIGHT);
    const lengthS = windowLengthS(span.toS - span.fromS, room);
    const shown = windowAround(cursorS ?? span.fromS, span, lengthS, this.shown);
    this.shown = shown;
    const { least, most } = this.range();
    const bottom = HEIGHT - BELOW;
    const x = (timeS: number): number => LEFT + ((timeS - shown.fromS) / (shown.toS - shown.fromS)) * room;
    const y = (value: number): number => bottom - ((value - least) / (most - least)) * (bottom - TOP);
    const height = HEIGHT + lanes.length * LANE;
    const inside = (timeS: number): boolean => timeS >= shown.fromS && timeS <= shown.toS;
    const heights = axisValues(least, most, 5);
    const seconds = axisValues(shown.fromS, shown.toS, Math.max(3, Math.floor(room / 80)));
    return html`<svg
      viewBox="0 0 ${width} ${height}"
      height=${height}
      aria-hidden="true"
      @pointerdown=${(event: PointerEvent) => this.ask(event, (px) => shown.fromS + ((px - LEFT) / room) * lengthS)}
    >
      <text x="0" y="12">${trace.unit}</text>
      ${heights.map(
        ({ value, text }) => svg`<line class="hair" x1=${LEFT} x2=${width - RIGHT} y1=${y(value)} y2=${y(value)} />
          ${y(value) < 26 ? nothing : svg`<text x=${LEFT - 6} y=${y(value) + 5} text-anchor="end">${text}</text>`}`,
      )}
      ${seconds.map(
        ({ value, text }) => svg`<line class="hair" x1=${x(value)} x2=${x(value)} y1=${bottom} y2=${bottom + 5} />
          <text x=${x(value)} y=${bottom + 20} text-anchor="middle">${text}</text>`,
      )}
      <path class="line" d=${this.path(shown, x, y, Math.round(room))} />
      ${lanes.map(({ name, marks }, at) => {
        const top = HEIGHT + at * LANE;
        return svg`<line class="hair" x1=${LEFT} x2=${width - RIGHT} y1=${top + 2} y2=${top + 2} />
          ${name === '' ? nothing : svg`<text class="lane" x=${LEFT} y=${top + 17}>${name}</text>`}
          ${marks
            .filter(({ atS }) => inside(atS))
            .map(
              ({ place, atS, verdict }) => svg`<line class="drop" x1=${x(atS)} x2=${x(atS)} y1=${TOP} y2=${top + 2} />
                ${glyph(verdict, x(atS), top + (name === '' ? 16 : 32))}
                ${name === '' ? svg`<text class="number" x=${x(atS)} y=${top + 44} text-anchor="middle">${place}</text>` : nothing}`,
            )}`;
      })}
      ${cursorS === null ? nothing : this.cursor(x(cursorS), height)}
    </svg>`;
  }

  private cursor(x: number, height: number): SVGTemplateResult {
    return svg`<line class="cursor" x1=${x} x2=${x} y1=${TOP - 4} y2=${height - (this.lanes.length > 0 ? 22 : BELOW)} />
      <path class="head" d="M${x - 6} 0H${x + 6}L${x} ${TOP - 2}Z" />`;
  }

  /** The whole recording small, so that one sees where one is; left out where all of it is shown anyway. */
  private overview(): TemplateResult | typeof nothing {
    const { width, span, lanes, cursorS } = this;
    const room = Math.max(1, width - LEFT - RIGHT);
    const all = span.toS - span.fromS;
    const lengthS = windowLengthS(all, room);
    if (lengthS >= all) return nothing;
    const shown = windowAround(cursorS ?? span.fromS, span, lengthS, this.shown);
    const { least, most } = this.range();
    const x = (timeS: number): number => LEFT + ((timeS - span.fromS) / all) * room;
    const y = (value: number): number => OVERVIEW - 10 - ((value - least) / (most - least)) * (OVERVIEW - 14);
    return html`<svg
      viewBox="0 0 ${width} ${OVERVIEW}"
      height=${OVERVIEW}
      aria-hidden="true"
      @pointerdown=${(event: PointerEvent) => this.ask(event, (px) => span.fromS + ((px - LEFT) / room) * all)}
    >
      <path class="line small" d=${this.path(span, x, y, Math.round(room / 2))} />
      ${(lanes[0]?.marks ?? []).map(
        ({ atS }) => svg`<line class="cursor" x1=${x(atS)} x2=${x(atS)} y1=${OVERVIEW - 7} y2=${OVERVIEW} />`,
      )}
      <rect class="shown" x=${x(shown.fromS)} y="1" width=${x(shown.toS) - x(shown.fromS)} height=${OVERVIEW - 2} />
    </svg>`;
  }

  private ask(event: PointerEvent, timeOf: (px: number) => number): void {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    this.dispatchEvent(new CustomEvent('cursor-asked', { detail: timeOf(event.clientX - box.left) }));
  }
}
