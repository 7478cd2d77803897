import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** Height that fits on the ruler before any was seen [m]; ours: a common raise with room above it. */
const firstTopM = { heel: 0.12, body: 0.06 } as const;
const tickM = 0.01;

/** An upright ruler: the height now as a column of ink, the line to reach as a notch. */
@customElement('height-ruler')
export class HeightRuler extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-2);
        grid-template-rows: 1fr auto;
      }
      .ruler {
        border-block-end: 2px solid var(--ink);
        border-inline-start: 2px solid var(--ink);
        min-block-size: 6rem;
        position: relative;
      }
      .column {
        background: var(--ink);
        inset: 0 42% 0 16px;
        position: absolute;
        transform: scaleY(0);
        transform-origin: bottom;
      }
      .tick {
        border-block-start: 1px solid var(--ink-quiet);
        inline-size: 8px;
        inset-inline-start: 0;
        position: absolute;
      }
      .tick.long {
        border-block-start-width: 2px;
        inline-size: 14px;
      }
      .tick-value {
        color: var(--ink-quiet);
        inset-inline-end: 0;
        line-height: 1;
        position: absolute;
        translate: 0 50%;
      }
      .notch {
        block-size: 0;
        border-block-start: 4px solid var(--voice);
        inset-inline: 0 30px;
        position: absolute;
        transition: bottom var(--turn);
      }
      .notch::after {
        border: 9px solid transparent;
        border-inline-end-color: var(--voice);
        content: '';
        inset-block-start: -11px;
        inset-inline-end: 0;
        position: absolute;
      }
      .caption {
        font-size: var(--size-1);
        line-height: 1.2;
        text-align: center;
      }
    `,
  ];

  /** height to reach; undefined while there is none [m] */
  @property({ attribute: false }) targetM: number | undefined;
  /** whether the heights are metres, and not only as good as a lever that nobody measured */
  @property({ attribute: false }) hasScale = false;
  @property({ attribute: false }) kind: 'heel' | 'body' = 'heel';
  @property({ attribute: false }) caption = '';
  @state() private topM: number | undefined;
  @query('.column') private readonly column!: HTMLElement;

  private get rangeM(): number {
    return this.topM ?? firstTopM[this.kind];
  }

  /** Draws the height now; to be called once a frame at most. */
  draw(heightM: number): void {
    if (heightM * 1.1 > this.rangeM) this.topM = Math.ceil((heightM * 1.15) / tickM) * tickM;
    this.column.style.transform = `scaleY(${Math.min(1, Math.max(0, heightM / this.rangeM))})`;
  }

  private tick(centimetre: number): TemplateResult {
    const isLong = centimetre % 5 === 0;
    const place = `bottom: ${(100 * centimetre * tickM) / this.rangeM}%`;
    if (!isLong) return html`<div class="tick" .style=${place}></div>`;
    // the unit stands below the first number, where no number is
    return html`<div class="tick long" .style=${place}></div>
      ${centimetre === 0 ? nothing : html`<span class="tick-value" .style=${place}>${centimetre}</span>`}`;
  }

  override render(): TemplateResult {
    const count = this.hasScale ? Math.floor(this.rangeM / tickM + 1e-9) : 0;
    const { targetM } = this;
    const label = this.kind === 'heel' ? TEST_WORDS.ruler.text : TEST_WORDS['ruler-body'].text;
    const notch = targetM === undefined ? nothing : Math.min(100, (100 * targetM) / this.rangeM);
    return html`
      <div class="ruler" role="img" aria-label=${`${label}. ${this.caption}`}>
        <div class="column"></div>
        ${Array.from({ length: count + 1 }, (_, i) => this.tick(i))}
        ${
          this.hasScale
            ? html`<span class="tick-value" .style=${`bottom: ${(250 * tickM) / this.rangeM}%`}>${TEST_WORDS.centimetres.text}</span>`
            : nothing
        }
        ${notch === nothing ? nothing : html`<div class="notch" .style=${`bottom: ${String(notch)}%`}></div>`}
      </div>
      <div class="caption quiet">${this.caption}</div>
    `;
  }
}
