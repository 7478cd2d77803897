import { CHART_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult, unsafeCSS } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import uPlot from 'uplot';
import plotStyle from 'uplot/dist/uPlot.min.css?inline';
import { type Line, minMaxLine, type TimeWindow } from '../live/min-max.ts';
import { foldStyle } from '../parts/fold-style.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { chartStyle } from './chart-style.ts';
import { drawMarks } from './mark-notes.ts';
import { plotOptions } from './plot-options.ts';
import { type ChartMark, type ChartSeries, nextMark, spanOf, stretchWords, valueAt } from './readings.ts';
import { twinRows } from './table-twin.ts';

const tableRows = 40;
/** Steps of the cursor in the width of the picture. */
const cursorSteps = 200;

/** A picture of signals over time, with a cursor for the keyboard and a table that holds the same numbers. */
@customElement('signal-chart')
export class SignalChart extends LitElement {
  static override styles = [base, unsafeCSS(plotStyle), foldStyle, chartStyle];

  @property({ attribute: false }) label = '';
  @property({ attribute: false }) series: readonly ChartSeries[] = [];
  @property({ attribute: false }) marks: readonly ChartMark[] = [];
  /** redrawn while samples come: no axes, no cursor and no table, one picture point for each point of the page */
  @property({ attribute: false }) live = false;
  /** least difference of values that a live picture has room for, in the unit of the lines */
  @property({ attribute: false }) liveSpan = 1;
  @state() private cursorS: number | undefined;
  @query('.plot') private readonly place!: HTMLElement;
  private plot: uPlot | undefined;
  private readonly resized = new ResizeObserver(() => this.build());
  private readonly papered = new MutationObserver(() => this.build());
  private readonly night = matchMedia('(prefers-color-scheme: dark)');

  override connectedCallback(): void {
    super.connectedCallback();
    this.papered.observe(document.documentElement, { attributeFilter: ['data-paper'] });
    this.night.addEventListener('change', this.build);
    if (this.hasUpdated) this.resized.observe(this.place);
  }

  override disconnectedCallback(): void {
    this.resized.disconnect();
    this.papered.disconnect();
    this.night.removeEventListener('change', this.build);
    this.plot?.destroy();
    this.plot = undefined;
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.resized.observe(this.place);
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('series') || changed.has('marks') || changed.has('live')) this.build();
  }

  /** Shows other samples in the picture as it is: for a live trace, once a frame at most. */
  show(lines: readonly Line[], window: TimeWindow): void {
    const { plot } = this;
    if (plot === undefined || lines.length !== this.series.length) return;
    plot.batch(() => {
      plot.setData(joined(lines, window, plot.width), true);
      plot.setScale('x', { min: window.fromS, max: window.toS });
    });
  }

  private readonly build = (): void => {
    const span = spanOf(this.series) ?? { fromS: 0, toS: 1 };
    const width = this.place.clientWidth;
    const height = this.place.clientHeight;
    this.plot?.destroy();
    this.plot = undefined;
    if (width === 0 || height === 0 || this.series.length === 0) return;
    // drawn small and stretched: a live picture need not be finer than the page
    const stretch = this.live ? devicePixelRatio : 1;
    const inkOf = (name: string): string => {
      const probe = this.renderRoot.querySelector<HTMLElement>(`.ink-${name}`);
      return probe === null ? '' : getComputedStyle(probe).color;
    };
    const options = plotOptions(
      { width: width / stretch, height: height / stretch, live: this.live, liveSpan: this.liveSpan },
      this.series,
      inkOf,
    );
    const draw = (plot: uPlot): void => drawMarks(plot, this.series, this.marks, inkOf('ink'));
    const point = (plot: uPlot): void => this.point(plot);
    const lines = this.series.map(({ times, values }) => ({ timesS: times, values }));
    // half-open windows: the last sample is to be seen too
    const window = { fromS: span.fromS, toS: span.toS + 1e-6 };
    this.plot = new uPlot(
      { ...options, hooks: { draw: [draw], setCursor: [point] } },
      joined(lines, window, Math.round((width / stretch) * (this.live ? 1 : devicePixelRatio))),
      this.place,
    );
    this.plot.root.style.transformOrigin = '0 0';
    this.plot.root.style.transform = `scale(${stretch})`;
  };

  /** Follows the pointer. */
  private point(plot: uPlot): void {
    const { cursor } = plot;
    if (cursor.left === undefined || cursor.left < 0 || cursor.event == null) return;
    this.cursorS = plot.posToVal(cursor.left, 'x');
  }

  private readonly move = (event: KeyboardEvent): void => {
    const span = spanOf(this.series);
    if (span === undefined) return;
    const nowS = this.cursorS ?? span.fromS;
    const stepS = ((span.toS - span.fromS) / cursorSteps) * (event.shiftKey ? 10 : 1);
    const places: Record<string, () => number | undefined> = {
      ArrowLeft: () => nowS - stepS,
      ArrowRight: () => nowS + stepS,
      ArrowDown: () => nowS - stepS,
      ArrowUp: () => nowS + stepS,
      Home: () => span.fromS,
      End: () => span.toS,
      PageUp: () => nextMark(this.marks, nowS, -1)?.atS,
      PageDown: () => nextMark(this.marks, nowS, 1)?.atS,
    };
    const place = places[event.key];
    if (place === undefined) return;
    event.preventDefault();
    this.cursorS = Math.min(span.toS, Math.max(span.fromS, place() ?? nowS));
    this.plot?.setCursor({ left: this.plot.valToPos(this.cursorS, 'x'), top: 0 }, false);
  };

  private reading(timeS: number): string {
    const mark = this.marks.find(({ atS }) => Math.abs(atS - timeS) < 1e-6);
    const time = timeS.toFixed(2);
    const at =
      mark === undefined ? fill(CHART_WORDS.at, { time }) : fill(CHART_WORDS['at-mark'], { time, mark: mark.label });
    const values = this.series.map((one) => {
      const value = valueAt(one, timeS);
      if (value === undefined) return fill(CHART_WORDS['no-reading'], { label: one.label });
      return fill(CHART_WORDS.reading, { label: one.label, value: decimal(value, one.decimals), unit: one.unit });
    });
    return [at, ...values].join('; ');
  }

  override render(): TemplateResult {
    const inks = ['ink', 'quiet-ink', 'hairline', 'left', 'right'];
    const picture = html`<div class="plot" dir="ltr"></div>
      ${inks.map((ink) => html`<i class="ink-${ink}" hidden></i>`)}`;
    if (this.live) return html`<figure class="live" aria-label=${this.label}>${picture}</figure>`;
    return html`<figure aria-label=${this.label}>
      ${this.key()}
      <div
        class="stage"
        tabindex="0"
        role="slider"
        aria-orientation="horizontal"
        aria-label=${fill(CHART_WORDS['cursor-label'], { label: this.label })}
        aria-valuemin=${spanOf(this.series)?.fromS ?? 0}
        aria-valuemax=${spanOf(this.series)?.toS ?? 0}
        aria-valuenow=${this.cursorS ?? spanOf(this.series)?.fromS ?? 0}
        aria-valuetext=${this.reading(this.cursorS ?? spanOf(this.series)?.fromS ?? 0)}
        @keydown=${this.move}
      >
        ${picture}
      </div>
      <figcaption class="quiet">${this.cursorS === undefined ? CHART_WORDS.hint.text : this.reading(this.cursorS)}</figcaption>
      ${this.table()}
    </figure>`;
  }

  /** Which line is which: a piece of each, with its name. */
  private key(): TemplateResult {
    return html`<ul class="key">
      ${this.series.map(
        ({ label, unit, dash, side }) =>
          html`<li class="ink-${side ?? 'ink'}">
            <svg width="48" height="12" aria-hidden="true">
              <line x1="0" x2="48" y1="6" y2="6" stroke="currentColor" stroke-width="3" stroke-dasharray=${dash.join(' ')} />
            </svg>
            ${label}<span class="quiet"> [${unit}]</span>
          </li>`,
      )}
    </ul>`;
  }

  private table(): TemplateResult {
    const rows = twinRows(this.series, this.marks, tableRows);
    const cell = (value: number | undefined, line: number): string =>
      value === undefined ? CHART_WORDS['not-measured'].text : decimal(value, this.series[line]?.decimals ?? 0);
    return html`<details>
      <summary>${CHART_WORDS.table.text}</summary>
      <div class="scroll" tabindex="0" role="group" aria-label=${CHART_WORDS.table.text}>
        <table>
          <thead>
            <tr>
              <th scope="col">${CHART_WORDS['from-to'].text}</th>
              ${this.series.map(
                ({ label, unit }) =>
                  html`<th scope="col">${fill(CHART_WORDS.least, { label, unit })}</th>
                    <th scope="col">${fill(CHART_WORDS.greatest, { label, unit })}</th>`,
              )}
              ${this.marks.length === 0 ? nothing : html`<th scope="col">${CHART_WORDS.marks.text}</th>`}
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              ({ fromS, toS, ranges, marks }) =>
                html`<tr>
                  <th scope="row">${stretchWords(fromS, toS)}</th>
                  ${ranges.map((range, line) => html`<td>${cell(range?.least, line)}</td><td>${cell(range?.greatest, line)}</td>`)}
                  ${this.marks.length === 0 ? nothing : html`<td>${marks.join(', ')}</td>`}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </details>`;
  }
}

/** Lines on one time axis, each with the least and the greatest of every column of the picture. */
function joined(lines: readonly Line[], window: TimeWindow, columns: number): uPlot.AlignedData {
  const tables = lines.map((line): uPlot.AlignedData => {
    const { timesS, values } = minMaxLine(line, window, columns);
    // a hole is no value at all to what draws
    return [
      timesS,
      values.some(Number.isNaN) ? Array.from(values, (value) => (Number.isNaN(value) ? null : value)) : values,
    ];
  });
  const [only] = tables;
  return tables.length === 1 && only !== undefined ? only : uPlot.join(tables);
}
