import { consume } from '@lit/context';
import type { TestKind } from '@surae/casebook';
import type { SensorPlacement } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { ChartSeries } from '../charts/readings.ts';
import type { SignalChart } from '../charts/signal-chart.ts';
import { clockContext, type HostClock, shelfContext } from '../contexts/capabilities.ts';
import type { HeldSensor } from '../devices/held-sensor.ts';
import { offerFor } from '../devices/offer-fit.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import { type HeldFact, heldFacts } from '../live/held-facts.ts';
import { type PictureChannel, pictureChannels } from '../live/picture-channels.ts';
import { SensorWatch } from '../live/sensor-watch.ts';
import type { SetUpLight } from '../live/set-up-light.ts';
import { sourceWords } from '../live/source-words.ts';
import { watchWords } from '../live/watch-words.ts';
import { base } from '../styles/base.ts';
import './light-list.ts';
import type { SensorLooked } from './set-up-check.ts';

const pictureS = 8;
const drawEveryMs = 50;
const factsEveryMs = 500;
const none = new Float64Array(0);
const dashes = [[], [8, 5], [2, 4]] as const;

/** The sensor that is connected, seen live: its last seconds, how it streams, and what was lost. Nothing of it is recorded. Tells `sensor-looked-at`. */
@customElement('live-sensor')
export class LiveSensor extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        --chart-height: 9rem;
        min-inline-size: 0;
      }
      :host([brief]) {
        --chart-height: 6rem;
      }
      .state {
        font-size: var(--size-2);
      }
      dl {
        display: grid;
        grid-template-columns: fit-content(40%) minmax(0, 1fr);
        margin: 0;
      }
      dt,
      dd {
        border-block-start: 1px solid var(--hairline);
        margin: 0;
        padding-block: var(--gap-2);
      }
      dt {
        padding-inline-end: var(--gap-6);
      }
      dd {
        overflow-wrap: anywhere;
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-6);
        list-style: none;
        margin: 0 0 var(--gap-2);
        padding: 0;
      }
      .key svg {
        vertical-align: middle;
      }
      signal-chart {
        overflow: hidden;
      }
      .hole {
        font-size: var(--size-1);
        margin-block: var(--gap-1) var(--gap-4);
      }
    `,
  ];

  /** where it is worn, so that what is shown is what would be recorded; undefined shows the first that it sends */
  @property({ attribute: false }) placement: SensorPlacement | undefined;
  @property({ attribute: false }) test: TestKind = 'heel-raise';
  @property({ attribute: false }) lights: readonly SetUpLight[] = [];
  /** the picture and its state alone */
  @property({ type: Boolean, reflect: true }) brief = false;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private said = '';
  @state() private isOver = false;
  @state() private isToMind = false;
  @state() private facts: readonly HeldFact[] = [];
  @state() private channels: readonly PictureChannel[] = [];
  @query('signal-chart') private readonly chart!: SignalChart | null;
  private watch: SensorWatch | undefined;
  private watched: HeldSensor | undefined;
  private offer = 0;
  private series: readonly ChartSeries[] = [];
  private readonly ends: (() => void)[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.shelf.addEventListener('shelf-changed', this.begin);
    this.ends.push(this.clock.every(drawEveryMs, () => this.draw()));
    this.ends.push(this.clock.every(factsEveryMs, () => this.look()));
    this.begin();
    void import('../charts/signal-chart.ts');
  }

  override disconnectedCallback(): void {
    this.shelf.removeEventListener('shelf-changed', this.begin);
    for (const end of this.ends.splice(0)) end();
    this.end();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('placement') && changed.get('placement') !== undefined) this.begin();
  }

  private readonly begin = (): void => {
    const { held } = this.shelf;
    this.end();
    if (held === undefined) return;
    const { placement, test } = this;
    const offer = placement === undefined ? 0 : offerFor(held.offers, placement, test);
    if (offer === undefined) return;
    this.watched = held;
    this.offer = offer;
    this.channels = pictureChannels(held.offers[offer] ?? []);
    this.series = this.channels.map(({ label, unit }, i) => ({
      label,
      unit,
      times: none,
      values: none,
      decimals: 2,
      dash: [...(dashes[i] ?? [])],
      side: null,
    }));
    // the place says nothing of the samples: a source is asked for one all the same
    this.watch = new SensorWatch(held.makeSensor(offer, placement ?? held.placement ?? 'inline'), this.clock, pictureS);
    this.isOver = false;
    void this.watch.start().then(() => this.look());
    this.look();
  };

  private end(): void {
    this.watch?.stop();
    this.watch = undefined;
    this.watched = undefined;
  }

  private draw(): void {
    const { watch, chart, channels } = this;
    if (watch === undefined || chart === null || chart.isUpdatePending !== false) return;
    if (watch.history.channels.length === 0) return;
    const { history } = watch;
    chart.show(
      channels.map(({ index }) => history.line(index)),
      history.window,
    );
  }

  private look(): void {
    const { watch, watched } = this;
    if (watch === undefined || watched === undefined) return;
    const { state: now } = watch;
    this.isOver = now.kind === 'over';
    this.isToMind = ['over', 'unread', 'silent'].includes(now.kind);
    this.said = watchWords(now, watch.back, sourceWords);
    this.facts = heldFacts(watched, this.offer, watch.summary, watch.history);
    const silentS = now.kind === 'streaming' ? 0 : now.kind === 'silent' ? now.forS : null;
    const detail: SensorLooked = { history: watch.history, silentS };
    this.dispatchEvent(new CustomEvent('sensor-looked-at', { detail, bubbles: true, composed: true }));
  }

  override render(): TemplateResult | typeof nothing {
    if (this.watch === undefined) return nothing;
    return html`<p class="state ${this.isToMind ? 'voice' : ''}" role="status">${this.said}</p>
      ${
        this.isOver
          ? html`<button type="button" @click=${() => this.begin()}>${HELD_WORDS.again.text}</button>`
          : this.picture()
      }
      ${this.lights.length === 0 ? nothing : html`<light-list .lights=${this.lights}></light-list>`}
      ${this.brief ? nothing : this.table()}`;
  }

  private picture(): TemplateResult {
    return html`<ul class="key">
        ${this.channels.map(
          ({ label, unit }, i) =>
            html`<li>
              <svg width="48" height="12" aria-hidden="true">
                <line x1="0" x2="48" y1="6" y2="6" stroke="currentColor" stroke-width="3" stroke-dasharray=${(dashes[i] ?? []).join(' ')} />
              </svg>
              ${label} <span class="quiet">[${unit}]</span>
            </li>`,
        )}
      </ul>
      <signal-chart
        .label=${HELD_WORDS.picture.text}
        .series=${this.series}
        .live=${true}
        .liveSpan=${this.channels[0]?.leastSpan ?? 1}
      ></signal-chart>
      <p class="quiet hole">${HELD_WORDS.picture.text}. ${HELD_WORDS['picture-help'].text}</p>`;
  }

  private table(): TemplateResult {
    return html`<dl>
      ${this.facts.map(
        ({ name, text, isToMind }) =>
          html`<dt class="quiet">${name}</dt><dd class=${isToMind ? 'voice' : ''}>${text}</dd>`,
      )}
    </dl>`;
  }
}
