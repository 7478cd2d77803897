import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, query } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** The count, as large as the screen allows. Its text changes at once, without waiting for the rest of the page. */
@customElement('count-display')
export class CountDisplay extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        place-content: center;
      }
      output {
        font-size: min(var(--size-count), 54vw);
        font-weight: 600;
        letter-spacing: -0.03em;
        line-height: 0.95;
        text-align: center;
      }
      output.long {
        font-size: min(var(--size-count), 34vw);
      }
    `,
  ];

  @query('output') private readonly shown!: HTMLOutputElement;

  /** Shows a count and marks how long it took since the block with the last sample of it came. */
  show(count: number, hostTimeMs: number | undefined): void {
    this.shown.textContent = String(count);
    if (count === 100) this.shown.classList.add('long');
    if (hostTimeMs === undefined) return;
    requestAnimationFrame(() => {
      performance.measure('surae-count', { start: hostTimeMs, end: performance.now() });
    });
  }

  override render(): TemplateResult {
    // said with each verdict, so that it is not announced twice
    return html`<output aria-live="off" aria-label=${TEST_WORDS.count.text}>0</output>`;
  }
}
