import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { codePath } from '../home/code-path.ts';
import { base } from '../styles/base.ts';

/** A text as a code for a camera, dark on light whatever the paper. */
@customElement('data-code')
export class DataCode extends LitElement {
  static override styles = [
    base,
    css`
      svg {
        background: #fff;
        block-size: auto;
        display: block;
        fill: #000;
        inline-size: min(100%, 22rem);
      }
    `,
  ];

  @property() text = '';
  @property() label = '';
  /** what stands there where it is too much for a code */
  @property({ attribute: 'too-long' }) tooLong = '';

  override render(): TemplateResult {
    const code = codePath(this.text);
    if (code === undefined) return html`<p>${this.tooLong}</p>`;
    const { size, path } = code;
    return html`<svg role="img" aria-label=${this.label} viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges">
      <path d=${path}></path>
    </svg>`;
  }
}
