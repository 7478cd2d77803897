import type { Visit } from '@surae/casebook';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { ladderLines } from '../journey/ladder-lines.ts';
import { base } from '../styles/base.ts';

/** What each leg bore before the tests, one line a leg; nothing where none was tried. */
@customElement('ladder-lines')
export class LadderLines extends LitElement {
  static override styles = [
    base,
    css`
      p {
        margin-block: 0 var(--gap-1);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;

  override render(): TemplateResult[] {
    return ladderLines(this.visit).map(
      ({ side, text }) => html`<p><span class="side" data-side=${side}>${text}</span></p>`,
    );
  }
}
