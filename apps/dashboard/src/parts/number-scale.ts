import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { roved } from './roving.ts';

/** A step of the scale; null is not asked. */
export type ScaleChosen = CustomEvent<number | null>;

const steps: readonly (number | null)[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, null];

/** A whole number from 0 to 10 with words at both ends, or not asked. Tells `scale-chosen`. */
@customElement('number-scale')
export class NumberScale extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        container-type: inline-size;
      }
      .legend {
        font-size: var(--size-2);
        font-weight: 600;
        margin-block-end: var(--gap-3);
      }
      .scale {
        direction: ltr;
        display: grid;
        gap: var(--gap-2);
        grid-template-columns: repeat(6, minmax(0, 1fr));
      }
      button {
        min-inline-size: 0;
        padding-inline: var(--gap-1);
      }
      .ends {
        color: var(--ink-quiet);
        direction: ltr;
        display: flex;
        justify-content: space-between;
        margin-block: var(--gap-2) 0;
        max-inline-size: none;
      }
      .open {
        border-style: dashed;
        grid-column: 1 / -1;
        justify-self: start;
        padding-inline: var(--gap-4);
      }
      .open[aria-checked='true'] {
        background: transparent;
        color: inherit;
        border: 3px double var(--ink);
      }
      /* in one row where there is room for it: the page may be wide and its column narrow */
      @container (min-width: 54rem) {
        .scale {
          grid-template-columns: repeat(11, minmax(var(--target), 1fr)) auto;
        }
        .open {
          grid-column: auto;
        }
      }
    `,
  ];

  @property() legend = '';
  @property() low = '';
  @property() high = '';
  @property() open = '';
  @property({ attribute: false }) value: number | null = null;

  override render(): TemplateResult {
    return html`
      <p class="legend" id="legend">${this.legend}</p>
      <div class="scale" role="radiogroup" aria-labelledby="legend" aria-describedby="ends" @keydown=${this.rove}>
        ${this.steps().map(
          (step) =>
            html`<button
              type="button"
              role="radio"
              class=${step === null ? 'open' : 'step'}
              aria-checked=${step === this.value}
              tabindex=${step === (this.value ?? (this.open === '' ? 0 : null)) ? 0 : -1}
              @click=${() => this.choose(step)}
            >
              ${step ?? this.open}
            </button>`,
        )}
      </div>
      <p class="ends" id="ends"><span>0 ${this.low}</span> <span>10 ${this.high}</span></p>
    `;
  }

  /** Without words for it nothing is left open here: an answer is asked for. */
  private steps(): readonly (number | null)[] {
    return this.open === '' ? steps.filter((step) => step !== null) : steps;
  }

  private choose(step: number | null): void {
    this.value = step;
    this.dispatchEvent(new CustomEvent('scale-chosen', { detail: step }));
  }

  private readonly rove = (event: KeyboardEvent): void => {
    const buttons = [...this.renderRoot.querySelectorAll('button')];
    const to = roved(event.key, buttons.indexOf(event.target as HTMLButtonElement), buttons.length);
    if (to === undefined) return;
    event.preventDefault();
    this.choose(this.steps()[to]!);
    buttons[to]!.focus();
  };
}
