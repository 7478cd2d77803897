import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/**
 * A figure as the file has it, drawn in paper and ink of the page. Its words are those of the file and are not translated; what it shows
 * stands in its name and description for those who do not see it.
 */
@customElement('svg-figure')
export class SvgFigure extends LitElement {
  static override styles = [
    base,
    css`
      .figure {
        direction: ltr;
        max-inline-size: var(--figure-size, 34rem);
      }
      svg {
        block-size: auto;
        border: 1px solid var(--hairline);
        display: block;
        font-family: var(--font);
        font-variant-numeric: tabular-nums;
        inline-size: 100%;
      }
      .paper {
        fill: var(--paper);
      }
      .ink {
        stroke: var(--ink);
      }
      .word {
        fill: var(--ink);
      }
      .quiet {
        fill: var(--ink-quiet);
      }
      .hair {
        stroke: var(--ink-quiet);
      }
      .full {
        fill: var(--ink);
        stroke: var(--ink);
      }
      .open {
        fill: var(--paper);
        stroke: var(--ink);
      }
      .voice {
        fill: var(--voice);
        stroke: var(--voice);
      }
      text {
        stroke: none;
      }
    `,
  ];

  /** the text of the file */
  @property({ attribute: false }) svg = '';

  override render(): TemplateResult {
    return html`<div class="figure" translate="no" lang="en">${this.drawn()}</div>`;
  }

  /** Its own style is left out: the policy of the page takes none from markup, and the page has its own colours by day and night. */
  private drawn(): Element | null {
    const plain = this.svg.replace(/<style>[^<]*<\/style>/, '');
    const figure = new DOMParser().parseFromString(plain, 'image/svg+xml').documentElement;
    if (figure.localName !== 'svg') return null;
    for (const one of figure.querySelectorAll('metadata, script')) one.remove();
    return document.importNode(figure, true);
  }
}
