import { LOG_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { LogEntry } from '../course/log-entry.ts';
import type { LogQuestion } from '../course/log-questions.ts';
import { logWords } from '../course/log-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Keep it as it is, correct the one that is there already, or change the day. */
export type LogAnswer = CustomEvent<'keep' | 'correct' | 'change'>;

/** What is odd about an entry is asked; every answer keeps what was written, on this day or another. Tells `log-answer`. */
@customElement('log-asked')
export class LogAsked extends LitElement {
  static override styles = [
    base,
    css`
      section {
        border-block: 1px solid var(--hairline);
        margin-block: var(--gap-4) var(--gap-6);
        padding-block: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) entry!: LogEntry;
  @property({ attribute: false }) questions: readonly LogQuestion[] = [];

  override render(): TemplateResult {
    const { questions } = this;
    const isTwice = questions.some(({ code }) => code === 'twice');
    return html`<section>
      ${questions.map((one) => this.question(one))}
      <div class="choices">
        ${isTwice ? this.button('correct', 'answer-correct') : nothing}
        ${this.button('keep', isTwice && questions.length === 1 ? 'answer-second' : 'answer-keep-day')}
        ${this.button('change', 'answer-change')}
      </div>
    </section>`;
  }

  private question(one: LogQuestion): TemplateResult {
    const blanks = {
      day: dayOf(this.entry.body.on),
      first: one.code === 'before-first' ? dayOf(one.firstDay) : '',
      what: one.code === 'twice' ? logWords(one.other) : '',
    };
    return html`<p class="voice" role="alert">${fill(LOG_WORDS[`ask-${one.code}`], blanks)}</p>`;
  }

  private button(
    answer: LogAnswer['detail'],
    code: 'answer-correct' | 'answer-second' | 'answer-keep-day' | 'answer-change',
  ): TemplateResult {
    return html`<button
      type="button"
      @click=${() => this.dispatchEvent(new CustomEvent('log-answer', { detail: answer }))}
    >
      ${LOG_WORDS[code].text}
    </button>`;
  }
}
