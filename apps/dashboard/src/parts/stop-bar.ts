import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { presenterAct } from '../journey/presenter-keys.ts';
import { base } from '../styles/base.ts';

/**
 * Stop: a bar along the whole bottom; the space bar, and the key by which a presenter makes the screen dark, whatever has the
 * focus. It never asks back. No other key of a presenter moves or reloads the page meanwhile.
 */
@customElement('stop-bar')
export class StopBar extends LitElement {
  static override styles = [
    base,
    css`
      button {
        background: var(--ink);
        border: 0;
        border-radius: 0;
        color: var(--paper);
        display: grid;
        font-size: var(--size-4);
        font-weight: 600;
        gap: 0;
        inline-size: 100%;
        line-height: 1.1;
        min-block-size: 96px;
        place-content: center;
      }
      small {
        font-size: var(--size-1);
        font-weight: 400;
      }
      :focus-visible {
        outline-offset: -6px;
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.onKey, { capture: true });
    document.addEventListener('keyup', this.onKey, { capture: true });
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.onKey, { capture: true });
    document.removeEventListener('keyup', this.onKey, { capture: true });
    super.disconnectedCallback();
  }

  /** Before anything else on the page: the key presses no button and writes no space. */
  private readonly onKey = (event: KeyboardEvent): void => {
    const act = presenterAct(event);
    if (act !== undefined) event.preventDefault();
    if (event.key !== ' ' && act !== 'stop') return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (event.type === 'keydown' && !event.repeat) this.stop();
  };

  private stop(): void {
    this.dispatchEvent(new CustomEvent('stop-set'));
  }

  override render(): TemplateResult {
    return html`<button type="button" @click=${() => this.stop()}>
      ${TEST_WORDS.stop.text}<small>${TEST_WORDS['stop-hint'].text}</small>
    </button>`;
  }
}
