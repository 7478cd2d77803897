import { READY_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type StringAsked, stringRangeCm } from '../live/string-length.ts';
import { leverStyle } from '../pages/ready-style.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Told with the length of the string as it stands in the field. */
export type StringTyped = CustomEvent<string>;

/** Asks how long the string at the heel is when the heel is down, and says why. Tells `string-typed`. */
@customElement('string-length')
export class StringLength extends LitElement {
  static override styles = [
    base,
    leverStyle,
    css`
      :host {
        display: block;
        margin-block-start: var(--gap-4);
      }
      p {
        margin-block: var(--gap-2) 0;
      }
    `,
  ];

  @property({ attribute: false }) asked!: StringAsked;

  override render(): TemplateResult {
    const { text, lengthM } = this.asked;
    const isBad = lengthM === undefined;
    const words = READY_WORDS;
    const bad = { least: stringRangeCm.least, most: stringRangeCm.most };
    return html`<label class="lever">
        <span>${words['string-length'].text}</span>
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          aria-describedby="string-help string-why"
          aria-invalid=${isBad}
          .value=${text}
          @input=${({ currentTarget }: Event) => this.tell((currentTarget as HTMLInputElement).value)}
        />
      </label>
      <p id="string-help" aria-live="polite" class=${isBad ? 'voice' : 'quiet'}>
        ${isBad ? fill(words['string-bad'], bad) : this.from()}
      </p>
      <p id="string-why" class="quiet">${words['string-why'].text}</p>`;
  }

  /** How it is measured, or where the length in the field comes from. */
  private from(): string {
    const { before } = this.asked;
    if (before === undefined) return READY_WORDS['string-how'].text;
    return before.at === null
      ? READY_WORDS['string-as-before'].text
      : fill(READY_WORDS['string-as-on'], { day: dayOf(before.at) });
  }

  private tell(detail: string): void {
    this.dispatchEvent(new CustomEvent('string-typed', { detail }));
  }
}
