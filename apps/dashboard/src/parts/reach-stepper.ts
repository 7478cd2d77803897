import { REACH_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { steppedTo } from '../course/stepped-to.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Where the stepper stands; null is not taken. */
export type Stepped = CustomEvent<number | null>;

/** A reach that is stepped to and not typed: fine and wide presses, and nothing is told before the first one. Tells `stepped`. */
@customElement('reach-stepper')
export class ReachStepper extends LitElement {
  static override styles = [
    base,
    css`
      .legend {
        font-weight: 600;
        margin-block-end: var(--gap-2);
      }
      .row {
        align-items: center;
        direction: ltr;
        display: grid;
        gap: var(--gap-2);
        grid-template-columns: repeat(2, var(--target)) minmax(5rem, 1fr) repeat(2, var(--target));
        max-inline-size: 28rem;
      }
      .row button {
        min-inline-size: 0;
        padding: 0;
      }
      output {
        font-size: var(--size-2);
        font-variant-numeric: tabular-nums;
        overflow-wrap: anywhere;
        text-align: center;
      }
      .back {
        margin-block-start: var(--gap-2);
      }
      @container (max-width: 24em) {
        .row {
          grid-template-columns: repeat(4, minmax(var(--target), 1fr));
        }
        output {
          grid-column: 1 / -1;
          grid-row: 1;
          text-align: start;
        }
      }
      @container (max-width: 12em) {
        .row {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      :host {
        container-type: inline-size;
        display: block;
      }
    `,
  ];

  @property() legend = '';
  @property({ attribute: false }) value: number | null = null;
  /** where the first press goes */
  @property({ attribute: false }) begin = 0;
  @property({ attribute: false }) step = 1;
  /** a press of the outer buttons */
  @property({ attribute: false }) stride = 5;
  @property({ attribute: false }) most = 100;
  /** a value as it is read, with its unit */
  @property({ attribute: false }) told: (value: number) => string = String;

  override render(): TemplateResult {
    const { value, step, stride } = this;
    return html`
      <div role="group" aria-labelledby="legend">
        <p class="legend" id="legend">${this.legend}</p>
        <div class="row">
          ${this.press(-stride)} ${this.press(-step)}
          <output class=${value === null ? 'quiet' : ''} aria-live="polite">
            ${value === null ? REACH_WORDS['open-value'].text : this.told(value)}
          </output>
          ${this.press(step)} ${this.press(stride)}
        </div>
        ${
          value === null
            ? nothing
            : html`<button type="button" class="back" @click=${() => this.tell(null)}>
                ${REACH_WORDS['take-back'].text}
              </button>`
        }
      </div>
    `;
  }

  private press(by: number): TemplateResult {
    const size = String(Math.abs(by));
    const label = fill(REACH_WORDS[by > 0 ? 'up' : 'down'], { value: size });
    return html`<button type="button" aria-label=${label} @click=${() => this.tell(steppedTo(this.value, by, this))}>
      <span aria-hidden="true">${by > 0 ? '+' : '−'}${fill({ text: '{size}' }, { size })}</span>
    </button>`;
  }

  private tell(value: number | null): void {
    this.value = value;
    this.dispatchEvent(new CustomEvent('stepped', { detail: value }));
  }
}
