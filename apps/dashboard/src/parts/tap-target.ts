import { HAND_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { presenterAct } from '../journey/presenter-keys.ts';
import { base } from '../styles/base.ts';

/** The place that is tapped once for each raise: as large as the screen allows, the count inside it. A tap counts when the finger comes down; the keys of a presenter count and take back. */
@customElement('tap-target')
export class TapTarget extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        min-block-size: 14rem;
      }
      button {
        align-content: center;
        border-width: 2px;
        display: grid;
        gap: var(--gap-2);
        justify-items: center;
        min-inline-size: 0;
        touch-action: manipulation;
        user-select: none;
      }
      button:active {
        background: var(--ink);
        color: var(--paper);
      }
      .hint {
        font-size: var(--size-2);
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.onKey, { capture: true });
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.onKey, { capture: true });
    super.disconnectedCallback();
  }

  /** Whatever has the focus: nothing is typed while a set runs. A key that is held is one tap. */
  private readonly onKey = (event: KeyboardEvent): void => {
    const act = presenterAct(event);
    if (act !== 'forward' && act !== 'back') return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (event.repeat) return;
    if (act === 'forward') this.tap();
    else this.dispatchEvent(new CustomEvent('tap-taken-back'));
  };

  /** the finger is down, and its tap was counted */
  private isDown = false;

  /** At once, and not when the finger is lifted: a raise has its instant. */
  private press(event: PointerEvent): void {
    if (event.button !== 0) return;
    this.isDown = true;
    this.tap();
  }

  /** A key, or a program that reads the screen, presses without a finger. */
  private pressedOtherwise(event: MouseEvent): void {
    const isCounted = this.isDown && event.detail > 0;
    this.isDown = false;
    if (!isCounted) this.tap();
  }

  /** A key that is held down is one tap. */
  private readonly hold = (event: KeyboardEvent): void => {
    if (event.repeat) event.preventDefault();
  };

  private tap(): void {
    this.dispatchEvent(new CustomEvent('raise-tapped'));
  }

  override render(): TemplateResult {
    return html`<button
      type="button"
      aria-label=${HAND_WORDS['tap-label'].text}
      @pointerdown=${(event: PointerEvent) => this.press(event)}
      @click=${(event: MouseEvent) => this.pressedOtherwise(event)}
      @keydown=${this.hold}
    >
      <slot></slot>
      <span class="hint">${HAND_WORDS.tap.text}</span>
    </button>`;
  }
}
