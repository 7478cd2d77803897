import type { Side } from '@surae/analysis';
import {
  END_CHOICES,
  ENDING_WORDS,
  type EndReason,
  LIVE_WORDS,
  PROTOCOLS,
  REDO_REASONS,
  STOP_STEPS,
} from '@surae/shared';
import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { endsOf, notedPainPeak, painLimitOf } from '../journey/ends.ts';
import type { Person } from '../journey/person.ts';
import type { Visit, VisitSet } from '../journey/visit.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { setOf } from '../journey/visit-events.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/chip-choice.ts';
import type { ScaleChosen } from '../parts/number-scale.ts';
import '../parts/number-scale.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { endingStyle } from './ending-style.ts';

const redoReasons = Object.entries(REDO_REASONS).map(([value, { text }]) => ({ value, text }));
const sharpness = (['yes', 'no'] as const).map((value) => ({ value, text: ENDING_WORDS[`sharp-${value}`].text }));

/** How a set ended: why, how sore, how hard. Then it is accepted, or set aside and done again. */
@customElement('ending-step')
export class EndingStep extends LitElement {
  static override styles = [base, endingStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property() side: Side = 'left';
  @state() private reason: EndReason | null = null;
  @state() private painPeak: number | null = null;
  @state() private exertion: number | null = null;
  @state() private painSharp: boolean | null = null;
  @state() private again = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit') || changed.get('visit') !== undefined) return;
    const set = setOf(this.visit, this.side);
    if (set === undefined) return;
    this.painPeak = notedPainPeak(set);
    if (set.sourceLost !== undefined) this.reason = 'technical';
  }

  override render(): TemplateResult {
    const set = setOf(this.visit, this.side);
    if (set === undefined) return html``;
    return html`
      <h1><span class="side" data-side=${this.side}>${ENDING_WORDS[`title-${this.side}`].text}</span></h1>
      ${
        set.liveCount === null
          ? null
          : html`<p class="quiet">${fill(ENDING_WORDS['live-count'], { count: set.liveCount })}</p>`
      }
      ${
        set.sourceLost === undefined
          ? null
          : html`<p class="voice" role="status">${fill(LIVE_WORDS.technical, { reason: set.sourceLost })}</p>`
      }
      ${this.again ? this.redo(set) : this.questions(set)}
    `;
  }

  private questions(set: VisitSet): TemplateResult {
    const protocol = PROTOCOLS.find(({ id }) => id === set.choice.protocolId);
    const chips = endsOf(protocol).map((value) => ({ value, text: END_CHOICES[value].text }));
    return html`
      <div class="parts">
        <div>
          <chip-choice
            legend=${ENDING_WORDS.reason.text}
            .chips=${chips}
            .value=${this.reason}
            @chip-chosen=${(event: ChipChosen) => (this.reason = event.detail as EndReason)}
          ></chip-choice>
          <div aria-live="polite">${this.consequence()}</div>
        </div>
        ${this.painScale(painLimitOf(protocol))}
        <number-scale
          legend=${ENDING_WORDS.exertion.text}
          low=${ENDING_WORDS['exertion-low'].text}
          high=${ENDING_WORDS['exertion-high'].text}
          open=${ENDING_WORDS['not-asked'].text}
          .value=${this.exertion}
          @scale-chosen=${(event: ScaleChosen) => (this.exertion = event.detail)}
        ></number-scale>
      </div>
      <div class="go">
        ${this.reason === null ? html`<p class="quiet" id="missing">${ENDING_WORDS['tester-only'].text}</p>` : null}
        <button class="main" type="button" ?disabled=${this.reason === null} @click=${() => this.accept(set)}>
          ${ENDING_WORDS.accept.text}
        </button>
        <button class="plain" type="button" @click=${() => (this.again = true)}>${ENDING_WORDS.redo.text}</button>
      </div>
    `;
  }

  private painScale(limit: number | null): TemplateResult {
    const over = limit !== null && this.painPeak !== null && this.painPeak > limit;
    return html`<div>
      <number-scale
        legend=${ENDING_WORDS.pain.text}
        low=${ENDING_WORDS['pain-low'].text}
        high=${ENDING_WORDS['pain-high'].text}
        open=${ENDING_WORDS['not-asked'].text}
        .value=${this.painPeak}
        @scale-chosen=${(event: ScaleChosen) => (this.painPeak = event.detail)}
      ></number-scale>
      <p class="quiet note">${ENDING_WORDS['pain-where'].text}</p>
      ${this.sharp()}
      <p class="voice" aria-live="polite">${over ? fill(ENDING_WORDS['pain-over'], { limit }) : ''}</p>
    </div>`;
  }

  private sharp(): TemplateResult | null {
    if (this.painPeak === null || this.painPeak === 0) return null;
    return html`<chip-choice
      legend=${ENDING_WORDS.sharp.text}
      open=${ENDING_WORDS['not-asked'].text}
      .chips=${sharpness}
      .value=${this.painSharp === null ? null : this.painSharp ? 'yes' : 'no'}
      @chip-chosen=${(event: ChipChosen<string | null>) =>
        (this.painSharp = event.detail === null ? null : event.detail === 'yes')}
    ></chip-choice>`;
  }

  /** What the reason means for the result, and for the person. */
  private consequence(): TemplateResult | null {
    if (this.reason === 'pain') return html`<p class="voice note">${ENDING_WORDS.tolerance.text}</p>`;
    if (this.reason !== 'safety') return null;
    return html`<ol class="stop">
      ${Object.values(STOP_STEPS).map(({ text }) => html`<li>${text}</li>`)}
    </ol>`;
  }

  private redo(set: VisitSet): TemplateResult {
    return html`
      <div class="parts">
        <chip-choice
          legend=${ENDING_WORDS['redo-why'].text}
          .chips=${redoReasons}
          @chip-chosen=${(event: ChipChosen) => this.setAside(set, event.detail)}
        ></chip-choice>
        <p class="quiet">${ENDING_WORDS['redo-tired'].text}</p>
      </div>
      <button type="button" @click=${() => (this.again = false)}>${ENDING_WORDS['redo-cancel'].text}</button>
    `;
  }

  private accept({ id }: VisitSet): void {
    if (this.reason === null) return;
    const { reason, painPeak, exertion } = this;
    // where there was no pain it was not sharp either, and nobody is asked
    const painSharp = painPeak === 0 ? false : this.painSharp;
    this.dispatchEvent(visitEvent({ kind: 'set-end', setId: id, end: { reason, painPeak, exertion, painSharp } }));
  }

  private setAside({ id }: VisitSet, why: string): void {
    this.dispatchEvent(visitEvent({ kind: 'set-aside', setId: id, why }));
  }
}
