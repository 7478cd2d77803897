import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { figurePicture } from '../design/figure-picture.ts';
import { base } from '../styles/base.ts';
import { drawnPicture } from './drawn-picture.ts';

/**
 * A figure as the file has it, drawn in paper and ink of the page. Its words are those of the file and are not translated; what it shows
 * is told by its name and description.
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
    return html`<div class="figure" translate="no" lang="en">${drawnPicture(figurePicture(this.svg))}</div>`;
  }
}
