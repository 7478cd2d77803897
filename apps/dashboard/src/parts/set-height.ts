import type { LiveState, ProvisionalRaise } from '@surae/analysis';
import type { Person } from '@surae/casebook';
import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { ChartSeries } from '../charts/readings.ts';
import type { SignalChart } from '../charts/signal-chart.ts';
import { HeightHistory } from '../live/height-history.ts';
import type { SetPlan } from '../live/set-plan.ts';
import { targetLine } from '../live/target-line.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './height-ruler.ts';
import type { HeightRuler } from './height-ruler.ts';

const historyS = 8;
/** A foot at rest shows as a flat line [m]; ours. */
const liveSpanM = 0.05;
const none = new Float64Array(0);

/** The height of a running set: the ruler, and where there is room the last seconds under it. */
@customElement('set-height')
export class SetHeight extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-2);
        grid-template: 1fr auto / minmax(0, 1fr);
        --chart-height: 5rem;
      }
      /* a window that got small in a set has no room for it any more */
      @media (max-width: 47.99rem), (max-height: 39.99rem) {
        signal-chart {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) plan!: SetPlan;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) raises: readonly ProvisionalRaise[] = [];
  @state() private hasRoom = matchMedia('(min-width: 48rem) and (min-height: 40rem)').matches;
  @query('height-ruler') private readonly ruler!: HeightRuler;
  @query('signal-chart') private readonly chart!: SignalChart | null;
  private readonly history = new HeightHistory(historyS);
  private readonly series: readonly ChartSeries[] = [
    { label: TEST_WORDS.trace.text, unit: 'm', times: none, values: none, decimals: 3, dash: [], side: null },
  ];

  protected override firstUpdated(): void {
    if (this.hasRoom) void import('../charts/signal-chart.ts').catch(() => (this.hasRoom = false));
  }

  /** Draws the height now, after a hole where samples are missing before it; to be called once a frame at most. */
  draw({ heightM, timeS }: LiveState, afterHole: boolean): void {
    this.ruler.draw(heightM);
    if (timeS === undefined || !this.hasRoom) return;
    this.history.add(timeS, heightM, afterHole);
    // the chart comes a moment later than the set, and is not waited for
    if (this.chart?.isUpdatePending === false) this.chart.show([this.history.line], this.history.window);
  }

  override render(): TemplateResult {
    const { placement } = this.plan.choice;
    const { parameters } = this.plan.protocol;
    const line = targetLine(this.raises, parameters, this.plan.practice);
    const percent = Math.round(100 * (parameters.heightFraction.value ?? 0));
    const caption =
      line === undefined
        ? fill(TEST_WORDS['no-target'], { n: parameters.referenceBest.value ?? 2 })
        : fill(TEST_WORDS[this.plan.practice === undefined ? 'target-at' : 'target-practice'], { percent });
    const isHeel = placement === 'heel' || placement === 'foot';
    return html`<height-ruler
        .targetM=${line?.targetM}
        .hasScale=${placement === 'heel' || (placement === 'foot' && this.person.heelLeverM !== null)}
        .kind=${isHeel ? 'heel' : 'body'}
        .caption=${caption}
      ></height-ruler>
      ${
        this.hasRoom
          ? html`<signal-chart .label=${TEST_WORDS.trace.text} .series=${this.series} .live=${true} .liveSpan=${liveSpanM}></signal-chart>`
          : nothing
      }`;
  }
}
