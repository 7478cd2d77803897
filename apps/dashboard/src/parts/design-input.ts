import { DESIGN_WORDS } from '@surae/shared';
import type { DesignFaultCode, DesignInput } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { nothingTyped, type TypedInput } from '../design/design-form.ts';
import { inputName } from '../design/design-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { fieldBox } from './field-style.ts';

/** One field of an input with what was typed into it. */
export type DesignTyped = CustomEvent<{ readonly part: keyof TypedInput; readonly text: string }>;

/** What stands below an input; nothing for those that say it themselves. */
function helpOf({ key, kind }: DesignInput): string {
  const words = DESIGN_WORDS;
  if (key === 'difference') return words[kind === 'signed' ? 'help-difference-not-worse' : 'help-difference'].text;
  if (key === 'legs-alike') return words['help-alike'].text;
  if (key === 'above') return words['help-above'].text;
  if (key === 'drop-out') return words['help-drop-out'].text;
  if (kind === 'icc') return words['help-icc'].text;
  if (kind === 'share') return words['help-share'].text;
  return kind === 'size' ? words['help-unit'].text : '';
}

/** An input of a question: one number, or lowest, expected and highest, and of a spread how many people it was found in. Tells `design-typed`. */
@customElement('design-input')
export class DesignInputFields extends LitElement {
  static override styles = [
    base,
    css`
      fieldset {
        border: 0;
        margin: 0;
        min-inline-size: 0;
        padding: 0;
      }
      legend,
      .alone {
        display: block;
        font-weight: 600;
        margin-block-end: var(--gap-1);
        padding: 0;
      }
      .row {
        align-items: end;
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2) var(--gap-3);
      }
      .row > div {
        flex: 1 1 5.5rem;
        max-inline-size: 9rem;
        min-inline-size: 0;
      }
      .row > .people {
        flex-basis: 9rem;
        max-inline-size: 13rem;
      }
      .row label {
        color: var(--ink-quiet);
        display: block;
      }
      input {
        ${fieldBox}
      }
      .one input {
        max-inline-size: 9rem;
      }
      .help {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  @property({ attribute: false }) input!: DesignInput;
  @property({ attribute: false }) typed: TypedInput = nothingTyped;
  @property({ attribute: false }) fault: DesignFaultCode | undefined;

  /** Puts the cursor into the field that has to be told. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLInputElement>('#expected')?.focus();
  }

  override render(): TemplateResult {
    const { input, fault } = this;
    const name = inputName(input.key);
    const help = helpOf(input);
    const below = html`<p id="help" class="help quiet">${help}</p>
      <p id="fault" class="help voice" aria-live="polite">${fault === undefined ? '' : DESIGN_WORDS[`fault-${fault}`].text}</p>`;
    if (!input.isUncertain) {
      return html`<div class="one">
        <label class="alone" for="expected">${name}</label>
        ${this.field('expected', undefined)} ${below}
      </div>`;
    }
    const words = DESIGN_WORDS;
    return html`<fieldset aria-describedby="help">
      <legend>${name}</legend>
      <div class="row">
        <div>
          <label for="low">${words.low.text}</label>
          ${this.field('low', fill(words['low-of'], { input: name }))}
        </div>
        <div>
          <label for="expected">${words.expected.text}</label>
          ${this.field('expected', name)}
        </div>
        <div>
          <label for="high">${words.high.text}</label>
          ${this.field('high', fill(words['high-of'], { input: name }))}
        </div>
        ${
          input.hasPeople
            ? html`<div class="people">
                <label for="people">${words['found-in'].text}</label>
                ${this.field('people', fill(words['people-of'], { input: name }))}
              </div>`
            : nothing
        }
      </div>
      ${below}
    </fieldset>`;
  }

  private field(part: keyof TypedInput, label: string | undefined): TemplateResult {
    const { usual } = this.input;
    return html`<input
      id=${part}
      autocomplete="off"
      inputmode=${this.input.kind === 'signed' || this.input.kind === 'correlation' || this.input.kind === 'difference' ? 'text' : 'decimal'}
      placeholder=${part === 'expected' && usual !== null ? inDigits(String(usual)) : nothing}
      aria-label=${label ?? nothing}
      aria-describedby="help fault"
      aria-invalid=${this.fault === undefined ? nothing : 'true'}
      .value=${this.typed[part]}
      @input=${(event: InputEvent) => this.tell(part, (event.target as HTMLInputElement).value)}
    />`;
  }

  private tell(part: keyof TypedInput, text: string): void {
    this.dispatchEvent(new CustomEvent('design-typed', { detail: { part, text } }));
  }
}
