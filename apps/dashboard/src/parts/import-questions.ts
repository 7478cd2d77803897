import type { Question } from '@surae/records';
import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { answerWords, becauseWords, questionWords } from '../import/import-words.ts';
import { rateOf } from '../import/typed-rate.ts';
import { base } from '../styles/base.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';
import { fieldStyle } from './field-style.ts';

/** An answer to one question. */
export type QuestionAnswered = CustomEvent<{ readonly id: string; readonly answer: string }>;

/** What only a person can say about a file, each question with what speaks for which answer. Tells `question-answered`. */
@customElement('import-questions')
export class ImportQuestions extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      ol {
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: minmax(0, 1fr);
        list-style: none;
        margin: 0;
        padding: 0;
      }
      p {
        margin-block: var(--gap-2) 0;
      }
      form {
        align-items: end;
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) questions: readonly Question[] = [];
  @state() private rate = '';
  @state() private wrong = false;

  override render(): TemplateResult {
    return html`<ol>
      ${repeat(
        this.questions,
        ({ id }) => id,
        (question) => html`<li>${this.question(question)}</li>`,
      )}
    </ol>`;
  }

  private question(question: Question): TemplateResult {
    const because = html`<p class="quiet">${becauseWords(question.evidence)}</p>`;
    if (question.topic === 'rate') return html`${this.rateForm(question)}${because}`;
    const chips = question.options.map(({ answer }) => ({
      value: answer === '\t' ? 'tab' : answer === ' ' ? 'blank' : answer,
      text: answerWords(answer),
    }));
    return html`<chip-choice
        .legend=${questionWords(question)}
        .chips=${chips}
        @chip-chosen=${({ detail }: ChipChosen) => this.answer(question.id, detail)}
      ></chip-choice>${because}`;
  }

  private rateForm({ id }: Question): TemplateResult {
    return html`<form
      novalidate
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const rate = rateOf(this.rate);
        this.wrong = rate === undefined;
        if (rate !== undefined) this.answer(id, String(rate));
      }}
    >
      <div>
        <label for="rate">${IMPORT_WORDS.rate.text}</label>
        <input
          id="rate"
          inputmode="decimal"
          autocomplete="off"
          aria-describedby=${this.wrong ? 'rate-wrong' : nothing}
          aria-invalid=${this.wrong ? 'true' : 'false'}
          .value=${this.rate}
          @input=${(event: Event) => (this.rate = (event.target as HTMLInputElement).value)}
        />
        ${this.wrong ? html`<p id="rate-wrong" class="voice" role="alert">${IMPORT_WORDS['rate-range'].text}</p>` : nothing}
      </div>
      <button type="submit">${IMPORT_WORDS['set-rate'].text}</button>
    </form>`;
  }

  private answer(id: string, answer: string): void {
    this.dispatchEvent(new CustomEvent('question-answered', { detail: { id, answer }, bubbles: true, composed: true }));
  }
}
