import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Press } from '../plan/plan-numbers.ts';
import { base } from '../styles/base.ts';

/** What was pressed. */
export type Stepped = CustomEvent<Press>;

const keys: Readonly<Record<string, Press>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 5,
  PageDown: -5,
  Home: 'least',
  End: 'most',
};

/** A number that is set by presses: less, more, and on both the arrow keys, five at once, and to the ends. Tells `stepped`. */
@customElement('number-stepper')
export class NumberStepper extends LitElement {
  static override styles = [
    base,
    css`
      .legend {
        font-weight: 600;
        margin-block-end: var(--gap-1);
      }
      .stepper {
        align-items: center;
        direction: ltr;
        display: grid;
        gap: var(--gap-2);
        grid-template-columns: var(--target) minmax(0, 1fr) var(--target);
        max-inline-size: 20rem;
      }
      button {
        font-size: var(--size-3);
        padding: 0;
      }
      output {
        direction: var(--reading);
        font-size: var(--size-2);
        overflow-wrap: anywhere;
        text-align: center;
      }
    `,
  ];

  @property() legend = '';
  /** the number as it is read, with its unit */
  @property() told = '';
  @property() less = '';
  @property() more = '';
  @property({ type: Boolean, attribute: 'no-less' }) noLess = false;
  @property({ type: Boolean, attribute: 'no-more' }) noMore = false;

  /** a number that nobody changed is not said when its line opens: there are ten of them */
  @state() private pressed = false;

  override render(): TemplateResult {
    return html`
      <p class="legend" id="legend">${this.legend}</p>
      <div class="stepper" role="group" aria-labelledby="legend" @keydown=${this.byKey}>
        <button type="button" aria-label=${this.less} ?disabled=${this.noLess} @click=${() => this.tell(-1)}>&minus;</button>
        <output aria-live=${this.pressed ? 'polite' : 'off'}>${this.told}</output>
        <button type="button" aria-label=${this.more} ?disabled=${this.noMore} @click=${() => this.tell(1)}>+</button>
      </div>
    `;
  }

  private tell(press: Press): void {
    this.pressed = true;
    this.dispatchEvent(new CustomEvent('stepped', { detail: press }));
  }

  private readonly byKey = (event: KeyboardEvent): void => {
    const press = keys[event.key];
    if (press === undefined) return;
    event.preventDefault();
    this.tell(press);
  };
}
