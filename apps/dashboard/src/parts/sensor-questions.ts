import { cannotTell } from '@surae/casebook';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { openQuestions, questionKey, type SensorQuestion } from '../live/sensor-questions.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';
import { ruledListStyle } from './ruled-list-style.ts';

/** An answer to one of the questions. */
export type QuestionAnswered = CustomEvent<{ readonly question: SensorQuestion; readonly answer: string }>;

/**
 * What a sensor is found out to be: it asks where that is not sure, one question after the other, and lists what is known.
 * Tells `question-answered`, and `look-asked-for` when the last seconds are to be looked at.
 */
@customElement('sensor-questions')
export class SensorQuestions extends LitElement {
  static override styles = [
    base,
    foldStyle,
    ruledListStyle,
    css`
      :host {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-4);
        padding-block-start: var(--gap-4);
      }
      p {
        margin-block: 0 var(--gap-2);
      }
      .asked {
        border-inline-start: 3px solid var(--voice);
        margin-block: var(--gap-4);
        padding-inline-start: var(--gap-4);
      }
      h2 {
        font-size: var(--size-2);
      }
      .open {
        border-style: dashed;
      }
      li {
        align-items: center;
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        justify-content: space-between;
        padding-block: var(--gap-1);
      }
      li button {
        padding-inline: 0;
      }
      li span {
        flex: 1 1 16rem;
        min-inline-size: 0;
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) questions: readonly SensorQuestion[] = [];
  /** what is done before the last seconds are looked at, in a sentence */
  @property({ attribute: false }) explain = '';
  /** the last seconds were looked at, and showed nothing of what is still unseen */
  @property({ attribute: false }) sawNothing = false;
  /** a question that is answered though nothing asks for it */
  @state() private anew: string | undefined;

  private get asked(): SensorQuestion | undefined {
    const open = openQuestions(this.questions);
    return this.questions.find((one) => questionKey(one) === this.anew) ?? open[0];
  }

  private answer(question: SensorQuestion, answer: string): void {
    this.anew = undefined;
    this.dispatchEvent(new CustomEvent('question-answered', { detail: { question, answer } }));
  }

  override render(): TemplateResult | typeof nothing {
    const { questions, asked } = this;
    if (questions.length === 0) return nothing;
    const more = openQuestions(questions).filter((one) => one !== asked).length;
    return html`<h2>${SET_UP_WORDS['ask-title'].text}</h2>
      ${asked === undefined ? nothing : this.question(asked)}
      ${asked !== undefined && more > 0 ? html`<p class="quiet">${fill(SET_UP_WORDS['ask-more'], { count: more })}</p>` : nothing}
      ${questions.some((one) => one.state === 'unseen') ? this.look() : nothing} ${this.known(asked)}`;
  }

  private question(asked: SensorQuestion): TemplateResult {
    return html`<div class="asked" role="group" aria-labelledby="asked">
      <h3 id="asked">${asked.question}</h3>
      ${asked.said.map((text, i) => html`<p class=${i === 0 && asked.state === 'contradicted' ? 'voice' : ''}>${text}</p>`)}
      <div class="choices">
        ${asked.choices.map(
          ({ code, text }) =>
            html`<button
              type="button"
              class=${code === cannotTell ? 'open' : ''}
              @click=${() => this.answer(asked, code)}
            >
              ${text}
            </button>`,
        )}
      </div>
    </div>`;
  }

  private look(): TemplateResult {
    return html`<p>${this.explain}</p>
      <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('look-asked-for'))}>
        ${SET_UP_WORDS['ask-look'].text}
      </button>
      <p role="status" class="voice">${this.sawNothing ? SET_UP_WORDS['ask-nothing'].text : ''}</p>`;
  }

  private known(asked: SensorQuestion | undefined): TemplateResult | typeof nothing {
    const open = openQuestions(this.questions);
    const rest = this.questions.filter((one) => one !== asked && !open.includes(one));
    if (rest.length === 0) return nothing;
    return html`<details>
      <summary>${SET_UP_WORDS['ask-known'].text}</summary>
      <ul>
        ${rest.map(
          (one) =>
            html`<li>
              <span>${one.line}</span>
              <button type="button" class="plain" @click=${() => (this.anew = questionKey(one))}>
                ${SET_UP_WORDS[one.state === 'answered' ? 'ask-anew' : 'ask-answer'].text}
              </button>
            </li>`,
        )}
      </ul>
    </details>`;
  }
}
