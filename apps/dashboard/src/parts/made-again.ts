import { STUDY_RESULT_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';

/** How a figure or a table is made again: the command, what made it, and the hashes of what goes in and what comes out. */
@customElement('made-again')
export class MadeAgain extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      code {
        background: var(--raised);
        border: 1px solid var(--hairline);
        display: block;
        direction: ltr;
        font-size: var(--size-1);
        margin-block-end: var(--gap-3);
        overflow-wrap: anywhere;
        padding: var(--gap-3);
        white-space: pre-wrap;
      }
      li {
        overflow-wrap: anywhere;
        font-size: var(--size-1);
      }
      ul {
        padding-inline-start: 1.2em;
      }
    `,
  ];

  @property() command = '';
  @property() software = '';
  @property() explain = '';
  /** hashes of what went in and what came out, and where the settings stand: a line each */
  @property({ attribute: false }) lines: readonly string[] = [];

  @state() private said = '';

  override render(): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    return html`<details>
      <summary>${words.again.text}</summary>
      <p class="quiet">${this.explain}</p>
      <code translate="no">${this.command}</code>
      <button type="button" @click=${() => void this.copy()}>${words.copy.text}</button>
      <span role="status">${this.said}</span>
      <p class="quiet">${fill(words['made-by'], { software: this.software })}</p>
      <ul class="quiet">
        ${this.lines.map((line) => html`<li>${line}</li>`)}
      </ul>
    </details>`;
  }

  private async copy(): Promise<void> {
    await navigator.clipboard.writeText(this.command);
    this.said = STUDY_RESULT_WORDS.copied.text;
  }
}
