import type { OpenChoices, Window } from '@surae/records';
import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ReadChoice } from '../import/messages.ts';
import { rateOf } from '../import/typed-rate.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';
import { fieldStyle } from './field-style.ts';

export type ReadChosen = CustomEvent<ReadChoice>;

const whole = 'all';

/** What of a file is to be read: its part, its stretch, its leg, its rate. Tells `read-chosen`. */
@customElement('import-choices')
export class ImportChoices extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      :host {
        display: block;
        margin-block-start: var(--gap-6);
      }
      chip-choice,
      .rate {
        display: block;
        margin-block-end: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) parts: OpenChoices['parts'] = [];
  @property({ attribute: false }) isLong = false;
  @property({ attribute: false }) windows: readonly Window[] = [];
  @property({ attribute: false }) asksSide = false;
  @property({ attribute: false }) asksRate = false;
  /** something else has to be answered first */
  @property({ attribute: false }) blocked = false;
  @state() private chosenPart: number | undefined;
  @state() private window: string | undefined;
  @state() private side: string | null = null;
  @state() private rate = '';

  private get isReady(): boolean {
    if (this.blocked || (this.asksRate && rateOf(this.rate) === undefined)) return false;
    return (this.parts.length === 0 || this.chosenPart !== undefined) && (!this.isLong || this.window !== undefined);
  }

  override render(): TemplateResult {
    return html`${this.partChips()} ${this.windowChips()} ${this.sideChips()} ${this.rateField()}
      <button class="main" type="button" ?disabled=${!this.isReady} @click=${() => this.read()}>
        ${IMPORT_WORDS.read.text}
      </button>`;
  }

  private partChips(): TemplateResult | typeof nothing {
    if (this.parts.length === 0) return nothing;
    return html`<chip-choice
      .legend=${IMPORT_WORDS.part.text}
      .chips=${this.parts.slice(0, 24).map(({ label, fromLine, toLine }, i) => ({
        value: String(i + 1),
        text: fill(IMPORT_WORDS['part-option'], { label, from: fromLine, to: toLine }),
      }))}
      .value=${this.chosenPart === undefined ? null : String(this.chosenPart)}
      @chip-chosen=${({ detail }: ChipChosen) => (this.chosenPart = Number(detail))}
    ></chip-choice>`;
  }

  private windowChips(): TemplateResult | typeof nothing {
    if (!this.isLong) return nothing;
    return html`<chip-choice
      .legend=${IMPORT_WORDS.window.text}
      .chips=${[
        ...this.windows.slice(0, 8).map(({ fromS, toS }, i) => ({
          value: String(i),
          text: fill(IMPORT_WORDS['window-option'], { from: fromS.toFixed(0), to: toS.toFixed(0) }),
        })),
        { value: whole, text: IMPORT_WORDS.whole.text },
      ]}
      .value=${this.window ?? null}
      @chip-chosen=${({ detail }: ChipChosen) => (this.window = detail)}
    ></chip-choice>`;
  }

  private sideChips(): TemplateResult | typeof nothing {
    if (!this.asksSide) return nothing;
    return html`<chip-choice
      .legend=${IMPORT_WORDS.side.text}
      .chips=${[
        { value: 'left', text: IMPORT_WORDS['side-left'].text },
        { value: 'right', text: IMPORT_WORDS['side-right'].text },
      ]}
      .open=${IMPORT_WORDS['side-open'].text}
      .value=${this.side}
      @chip-chosen=${({ detail }: ChipChosen<string | null>) => (this.side = detail)}
    ></chip-choice>`;
  }

  private rateField(): TemplateResult | typeof nothing {
    if (!this.asksRate) return nothing;
    return html`<div class="rate">
      <label for="rate">${IMPORT_WORDS.rate.text}</label>
      <input
        id="rate"
        inputmode="decimal"
        autocomplete="off"
        .value=${this.rate}
        @input=${(event: Event) => (this.rate = (event.target as HTMLInputElement).value)}
      />
    </div>`;
  }

  private read(): void {
    const window = this.window === whole ? whole : this.windows[Number(this.window)];
    const rateHz = this.asksRate ? rateOf(this.rate) : undefined;
    const detail: ReadChoice = {
      ...(this.chosenPart === undefined ? {} : { part: this.chosenPart }),
      ...(this.window === undefined || window === undefined ? {} : { window }),
      ...(this.side === 'left' || this.side === 'right' ? { side: this.side } : {}),
      ...(rateHz === undefined ? {} : { rateHz }),
    };
    this.dispatchEvent(new CustomEvent('read-chosen', { detail, bubbles: true, composed: true }));
  }
}
