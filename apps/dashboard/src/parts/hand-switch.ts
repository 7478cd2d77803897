import { HAND_SWITCH_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { type Hand, keepHand, keptHand } from '../journey/thumb-side.ts';
import { base } from '../styles/base.ts';

/** Puts what is pressed on the thumb side of one hand or the other, in one press. Legs keep their places. */
@customElement('hand-switch')
export class HandSwitch extends LitElement {
  static override styles = [
    base,
    css`
      button.plain {
        color: var(--ink-quiet);
        font-size: var(--size-1);
        padding-inline: 0;
      }
    `,
  ];

  @state() private hand: Hand = 'right';

  override connectedCallback(): void {
    super.connectedCallback();
    const kept = keptHand(localStorage);
    this.hand = kept ?? 'right';
    if (kept !== undefined) document.documentElement.dataset['hand'] = kept;
  }

  private turn(): void {
    this.hand = this.hand === 'right' ? 'left' : 'right';
    keepHand(localStorage, this.hand);
    document.documentElement.dataset['hand'] = this.hand;
  }

  override render(): TemplateResult {
    return html`<button class="plain" type="button" @click=${() => this.turn()}>
      ${HAND_SWITCH_WORDS[`for-${this.hand}`].text}
    </button>`;
  }
}
