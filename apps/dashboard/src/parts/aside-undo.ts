import type { Side } from '@surae/analysis';
import { ENDING_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { undoing } from '../journey/removal-request.ts';
import { base } from '../styles/base.ts';

/** What was tested of a leg, as far as it can be taken back. */
interface Tested {
  readonly choice: { readonly side: Side };
  readonly setAside: boolean;
  readonly setAsideBy?: string;
}

/** A leg that was set aside a moment ago, and the way back: nothing asks whether one is sure. */
@customElement('aside-undo')
export class AsideUndo extends LitElement {
  static override styles = [
    base,
    css`
      p {
        margin-block-end: 0;
      }
      div {
        margin-block-end: var(--gap-4);
      }
      button {
        padding-inline: 0;
      }
    `,
  ];

  @property({ attribute: false }) sets: readonly Tested[] = [];
  @property() side: Side = 'left';

  override render(): TemplateResult | typeof nothing {
    const last = this.sets.filter(({ choice }) => choice.side === this.side).at(-1);
    const by = last?.setAsideBy;
    if (last?.setAside !== true || by === undefined) return nothing;
    return html`<div>
      <p class="voice" role="status">${ENDING_WORDS[`redo-undo-${this.side}`].text}</p>
      <button class="plain" type="button" @click=${() => this.dispatchEvent(undoing([by]))}>
        ${ENDING_WORDS['redo-undo'].text}
      </button>
    </div>`;
  }
}
