import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { roved } from './roving.ts';

/** One thing that can be chosen. */
export interface Chip {
  readonly value: string;
  readonly text: string;
}

/** What was chosen. */
export type ChipChosen<Value extends string | null = string> = CustomEvent<Value>;

/** One choice among a few, as big targets; arrows move it as in a group of radio buttons. Tells `chip-chosen`. */
@customElement('chip-choice')
export class ChipChoice extends LitElement {
  static override styles = [
    base,
    css`
      .legend {
        font-size: var(--size-2);
        font-weight: 600;
        margin-block-end: var(--gap-3);
      }
      button {
        text-align: start;
      }
      /* the left leg stays on the left in every language */
      .legs {
        direction: ltr;
        inline-size: fit-content;
      }
      .legs button {
        direction: var(--reading);
      }
      .open {
        border-style: dashed;
      }
      .open[aria-checked='true'] {
        background: transparent;
        border: 3px double var(--ink);
        color: inherit;
      }
    `,
  ];

  @property() legend = '';
  @property({ attribute: false }) chips: readonly Chip[] = [];
  @property({ attribute: false }) value: string | null = null;
  /** words of a last chip that takes the choice back to none; empty for none */
  @property() open = '';

  override render(): TemplateResult {
    const all = this.all();
    const at = all.findIndex(({ value }) => value === this.value);
    return html`
      <p class="legend" id="legend">${this.legend}</p>
      <div class=${this.isOfLegs ? 'choices legs' : 'choices'} role="radiogroup" aria-labelledby="legend" @keydown=${this.rove}>
        ${all.map(
          ({ value, text }, place) =>
            html`<button
              type="button"
              role="radio"
              class=${value === null ? 'open' : ''}
              aria-checked=${value === this.value}
              tabindex=${place === Math.max(at, 0) ? 0 : -1}
              @click=${() => this.choose(value)}
            >
              ${text}
            </button>`,
        )}
      </div>
    `;
  }

  private get isOfLegs(): boolean {
    return ['left', 'right'].every((side) => this.chips.some(({ value }) => value === side));
  }

  private all(): readonly { readonly value: string | null; readonly text: string }[] {
    return this.open === '' ? this.chips : [...this.chips, { value: null, text: this.open }];
  }

  private choose(value: string | null): void {
    this.value = value;
    this.dispatchEvent(new CustomEvent('chip-chosen', { detail: value }));
  }

  private readonly rove = (event: KeyboardEvent): void => {
    const buttons = [...this.renderRoot.querySelectorAll('button')];
    const at = buttons.indexOf(event.target as HTMLButtonElement);
    const to = roved(event.key, at, buttons.length);
    if (to === undefined) return;
    event.preventDefault();
    this.choose(this.all()[to]!.value);
    buttons[to]!.focus();
  };
}
