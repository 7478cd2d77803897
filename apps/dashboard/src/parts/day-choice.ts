import { LOG_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { dayBefore } from '../course/day-before.ts';
import { base } from '../styles/base.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import { fieldStyle } from './field-style.ts';

/** A day of the calendar: today and yesterday in one press, any other one by its date. Tells `day-chosen`. */
@customElement('day-choice')
export class DayChoice extends LitElement {
  static override shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    base,
    fieldStyle,
    css`
      .date {
        margin-block-start: var(--gap-3);
      }
      input {
        max-inline-size: 16rem;
      }
    `,
  ];

  @property({ attribute: false }) today = '';
  @property({ attribute: false }) day = '';
  @state() private other = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('today') && !this.hasUpdated) return;
    if (changed.has('day') && this.day !== '' && !this.other) this.other = this.chosen() === 'other-day';
  }

  private chosen(): 'today' | 'yesterday' | 'other-day' {
    if (this.day === this.today) return 'today';
    return this.day === dayBefore(this.today) ? 'yesterday' : 'other-day';
  }

  override render(): TemplateResult {
    const chips = (['today', 'yesterday', 'other-day'] as const).map((value) => ({
      value,
      text: LOG_WORDS[value].text,
    }));
    return html`
      <chip-choice
        legend=${LOG_WORDS.day.text}
        .chips=${chips}
        .value=${this.other ? 'other-day' : this.chosen()}
        @chip-chosen=${this.choose}
      ></chip-choice>
      ${
        this.other
          ? html`<div class="date">
              <label for="date">${LOG_WORDS['day-field'].text}</label>
              <input
                id="date"
                type="date"
                .value=${this.day}
                @input=${(event: InputEvent) => this.tell((event.target as HTMLInputElement).value)}
              />
            </div>`
          : nothing
      }
    `;
  }

  private readonly choose = ({ detail }: ChipChosen): void => {
    this.other = detail === 'other-day';
    if (detail === 'today') this.tell(this.today);
    if (detail === 'yesterday') this.tell(dayBefore(this.today));
  };

  private tell(day: string): void {
    this.day = day;
    this.dispatchEvent(new CustomEvent('day-chosen', { detail: day }));
  }
}
