import type { PullEnd } from '@surae/casebook';
import { END_CHOICES, ENDING_WORDS, type EndReason, type Sentence, STOP_STEPS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { endAnswered } from '../journey/ends.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import type { ScaleChosen } from './number-scale.ts';
import './number-scale.ts';
import type { DoneAgain } from './redo-choice.ts';
import './redo-choice.ts';

/** What the questions say of the test that ended; what is the same for every test is not among it. */
export type EndingWords = Readonly<Record<'reason' | 'pain' | 'tolerance' | 'accept' | 'redo-why', Sentence>> & {
  readonly 'redo-tired'?: Sentence;
};

/** How it ended, as the tester accepted it. */
export type EndAccepted = CustomEvent<PullEnd>;

const sharpness = (['yes', 'no'] as const).map((value) => ({ value, text: ENDING_WORDS[`sharp-${value}`].text }));

/**
 * The questions at the end of a test, whichever it was: why, how sore, how hard. Then it is accepted (`end-accepted`), or set
 * aside and done again (`done-again`), each with one press. That something gave way is told at once (`pop-told`).
 */
@customElement('ending-questions')
export class EndingQuestions extends LitElement {
  static override styles = [
    base,
    css`
      .parts {
        display: grid;
        gap: var(--gap-8);
        margin-block: var(--gap-6);
        max-inline-size: 56rem;
      }
      .note {
        margin-block: var(--gap-3) 0;
      }
      .stop {
        border-block: 3px solid var(--ink);
        font-size: var(--size-4);
        font-weight: 600;
        line-height: 1.25;
        margin-block: var(--gap-6) 0;
        padding-block: var(--gap-4);
        padding-inline: 1.5em 0;
      }
      .stop li + li {
        margin-block-start: var(--gap-3);
      }
      .go {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) words!: EndingWords;
  /** the ends that can be chosen */
  @property({ attribute: false }) ends: readonly EndReason[] = [];
  /** pain above which the protocol lets nobody go on, 0 to 10; null where it sets no limit */
  @property({ attribute: false }) painLimit: number | null = null;
  /** what is known already: read once, when the questions are first shown */
  @property({ attribute: false }) known: Partial<Pick<PullEnd, 'reason' | 'painPeak'>> = {};
  @state() private reason: EndReason | null = null;
  @state() private painPeak: number | null = null;
  @state() private painSharp: boolean | null = null;
  @state() private exertion: number | null = null;

  protected override willUpdate(): void {
    if (this.hasUpdated) return;
    this.reason = this.known.reason ?? null;
    this.painPeak = this.known.painPeak ?? null;
  }

  override render(): TemplateResult {
    const { words, reason } = this;
    const chips = [
      ...this.ends.map((value) => ({ value, text: END_CHOICES[value].text })),
      { value: 'pop', text: ENDING_WORDS.pop.text },
    ];
    return html`
      <div class="parts">
        <div>
          <chip-choice
            legend=${words.reason.text}
            .chips=${chips}
            .value=${reason}
            @chip-chosen=${({ detail }: ChipChosen) => this.choose(detail)}
          ></chip-choice>
          <div aria-live="polite">${this.consequence()}</div>
        </div>
        ${this.pain()}
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
        ${reason === null ? html`<p class="quiet">${ENDING_WORDS['tester-only'].text}</p>` : nothing}
        <button class="main" type="button" ?disabled=${reason === null} @click=${() => this.accept()}>
          ${words.accept.text}
        </button>
      </div>
      <redo-choice
        .why=${words['redo-why'].text}
        .tired=${words['redo-tired']?.text}
        @done-again=${({ detail }: DoneAgain) => this.dispatchEvent(new CustomEvent('done-again', { detail }))}
      ></redo-choice>
    `;
  }

  private pain(): TemplateResult {
    const { painLimit: limit, painPeak } = this;
    const isOver = limit !== null && painPeak !== null && painPeak > limit;
    return html`<div>
      <number-scale
        legend=${this.words.pain.text}
        low=${ENDING_WORDS['pain-low'].text}
        high=${ENDING_WORDS['pain-high'].text}
        open=${ENDING_WORDS['not-asked'].text}
        .value=${painPeak}
        @scale-chosen=${(event: ScaleChosen) => (this.painPeak = event.detail)}
      ></number-scale>
      <p class="quiet note">${ENDING_WORDS['pain-where'].text}</p>
      ${this.sharp()}
      <p class="voice" aria-live="polite">${isOver ? fill(ENDING_WORDS['pain-over'], { limit }) : ''}</p>
    </div>`;
  }

  private sharp(): TemplateResult | typeof nothing {
    if (this.painPeak === null || this.painPeak === 0) return nothing;
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
  private consequence(): TemplateResult | typeof nothing {
    if (this.reason === 'pain') return html`<p class="voice note">${this.words.tolerance.text}</p>`;
    if (this.reason !== 'safety') return nothing;
    return html`<ol class="stop">
      ${Object.values(STOP_STEPS).map(({ text }) => html`<li>${text}</li>`)}
    </ol>`;
  }

  private choose(chosen: string): void {
    if (chosen === 'pop') this.dispatchEvent(new CustomEvent('pop-told'));
    else this.reason = chosen as EndReason;
  }

  private accept(): void {
    const { reason, painPeak, exertion, painSharp } = this;
    if (reason === null) return;
    const detail = endAnswered(reason, { painPeak, exertion, painSharp });
    this.dispatchEvent(new CustomEvent<PullEnd>('end-accepted', { detail }));
  }
}
