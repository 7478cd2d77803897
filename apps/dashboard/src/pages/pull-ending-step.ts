import type { Side } from '@surae/analysis';
import { END_CHOICES, ENDING_WORDS, type EndReason, PULL_ENDING_WORDS, REDO_REASONS, STOP_STEPS } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { pullSetOf } from '../journey/pull-events.ts';
import type { PullSet } from '../journey/pull-set.ts';
import type { Visit } from '../journey/visit.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { pullProtocolOf } from '../live/pull-choices.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/chip-choice.ts';
import type { ScaleChosen } from '../parts/number-scale.ts';
import '../parts/number-scale.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { endingStyle } from './ending-style.ts';

const sharpness = (['yes', 'no'] as const).map((value) => ({ value, text: ENDING_WORDS[`sharp-${value}`].text }));
const redoReasons = Object.entries(REDO_REASONS).map(([value, { text }]) => ({ value, text }));

/** How the isometric trials of a leg ended: why, how sore, how hard. Then they are accepted, or set aside and done again. */
@customElement('pull-ending-step')
export class PullEndingStep extends LitElement {
  static override styles = [base, endingStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) side!: Side;
  @state() private reason: EndReason | null = null;
  @state() private painPeak: number | null = null;
  @state() private painSharp: boolean | null = null;
  @state() private exertion: number | null = null;
  @state() private again = false;

  override render(): TemplateResult {
    const set = pullSetOf(this.visit, this.side);
    if (set === undefined) return html``;
    return html`
      <h1><span class="side" data-side=${this.side}>${PULL_ENDING_WORDS[`title-${this.side}`].text}</span></h1>
      ${this.again ? this.redo(set) : this.questions(set)}
    `;
  }

  private questions(set: PullSet): TemplateResult {
    const protocol = pullProtocolOf(set.choice.protocolId);
    const chips = (protocol?.endConditions ?? []).map((value) => ({ value, text: END_CHOICES[value].text }));
    const limit = protocol?.parameters.painLimit.value ?? null;
    const isOver = limit !== null && this.painPeak !== null && this.painPeak > limit;
    return html`
      <div class="parts">
        <div>
          <chip-choice
            legend=${PULL_ENDING_WORDS.reason.text}
            .chips=${chips}
            .value=${this.reason}
            @chip-chosen=${(event: ChipChosen) => (this.reason = event.detail as EndReason)}
          ></chip-choice>
          <div aria-live="polite">${this.consequence()}</div>
        </div>
        <div>
          <number-scale
            legend=${PULL_ENDING_WORDS.pain.text}
            low=${ENDING_WORDS['pain-low'].text}
            high=${ENDING_WORDS['pain-high'].text}
            open=${ENDING_WORDS['not-asked'].text}
            .value=${this.painPeak}
            @scale-chosen=${(event: ScaleChosen) => (this.painPeak = event.detail)}
          ></number-scale>
          <p class="quiet note">${ENDING_WORDS['pain-where'].text}</p>
          ${this.sharp()}
          <p class="voice" aria-live="polite">${isOver ? fill(ENDING_WORDS['pain-over'], { limit }) : ''}</p>
        </div>
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
        ${this.reason === null ? html`<p class="quiet">${ENDING_WORDS['tester-only'].text}</p>` : null}
        <button class="main" type="button" ?disabled=${this.reason === null} @click=${() => this.accept(set)}>
          ${PULL_ENDING_WORDS.accept.text}
        </button>
        <button class="plain" type="button" @click=${() => (this.again = true)}>${ENDING_WORDS.redo.text}</button>
      </div>
    `;
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
    if (this.reason === 'pain') return html`<p class="voice note">${PULL_ENDING_WORDS.tolerance.text}</p>`;
    if (this.reason !== 'safety') return null;
    return html`<ol class="stop">
      ${Object.values(STOP_STEPS).map(({ text }) => html`<li>${text}</li>`)}
    </ol>`;
  }

  private redo({ id }: PullSet): TemplateResult {
    return html`
      <div class="parts">
        <chip-choice
          legend=${PULL_ENDING_WORDS['redo-why'].text}
          .chips=${redoReasons}
          @chip-chosen=${(event: ChipChosen) =>
            this.dispatchEvent(visitEvent({ kind: 'pull-aside', setId: id, why: event.detail }))}
        ></chip-choice>
      </div>
      <button type="button" @click=${() => (this.again = false)}>${PULL_ENDING_WORDS['redo-cancel'].text}</button>
    `;
  }

  private accept({ id }: PullSet): void {
    const { reason, painPeak, exertion } = this;
    if (reason === null) return;
    // where there was no pain it was not sharp either, and nobody is asked
    const painSharp = painPeak === 0 ? false : this.painSharp;
    this.dispatchEvent(visitEvent({ kind: 'pull-end', setId: id, end: { reason, painPeak, exertion, painSharp } }));
  }
}
