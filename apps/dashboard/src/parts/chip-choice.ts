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
export type ChipChosen = CustomEvent<string>;

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
    `,
  ];

  @property() legend = '';
  @property({ attribute: false }) chips: readonly Chip[] = [];
  @property({ attribute: false }) value: string | null = null;

  override render(): TemplateResult {
    const at = this.chips.findIndex(({ value }) => value === this.value);
    return html`
      <p class="legend" id="legend">${this.legend}</p>
      <div class="choices" role="radiogroup" aria-labelledby="legend" @keydown=${this.rove}>
        ${this.chips.map(
          ({ value, text }, place) =>
            html`<button
              type="button"
              role="radio"
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

  private choose(value: string): void {
    this.value = value;
    this.dispatchEvent(new CustomEvent('chip-chosen', { detail: value }));
  }

  private readonly rove = (event: KeyboardEvent): void => {
    const buttons = [...this.renderRoot.querySelectorAll('button')];
    const at = buttons.indexOf(event.target as HTMLButtonElement);
    const to = roved(event.key, at, buttons.length);
    if (to === undefined) return;
    event.preventDefault();
    this.choose(this.chips[to]!.value);
    buttons[to]!.focus();
  };
}
