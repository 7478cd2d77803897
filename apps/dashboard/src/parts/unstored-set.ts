import type { SetChoice } from '@surae/casebook';
import { KEEP_WORDS, type Sentence, TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { OverSet } from '../live/over-set.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** A set that has stopped and is not yet stored whole: it is held here, can be stored again, and saved as a file. */
@customElement('unstored-set')
export class UnstoredSet extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        padding: var(--gap-4);
      }
      /* most sets are stored before anybody could read this */
      .column {
        animation: appear 0s 600ms both;
      }
      @keyframes appear {
        from {
          visibility: hidden;
        }
        to {
          visibility: visible;
        }
      }
    `,
  ];

  @property({ attribute: false }) over!: OverSet;
  @property({ attribute: false }) choice!: SetChoice;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('beforeunload', this.warn);
  }

  override disconnectedCallback(): void {
    removeEventListener('beforeunload', this.warn);
    super.disconnectedCallback();
  }

  /** The test is over, so the browser may ask: closing now would lose what could not be written. */
  private readonly warn = (event: Event): void => event.preventDefault();

  private async save(): Promise<void> {
    const { side, placement } = this.choice;
    const { savedFile } = await import('../live/saved-file.ts');
    const text = savedFile(this.over.session.live.log, side, placement);
    if (text === undefined) return;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    link.download = fill(KEEP_WORDS['saved-name'], { side });
    link.click();
    URL.revokeObjectURL(link.href);
  }

  override render(): TemplateResult {
    const { session, stopped, unsaved, failure } = this.over;
    const values = { count: stopped.count, seconds: session.timeS.toFixed(0) };
    const button = (words: Sentence, act: () => void, look = ''): TemplateResult =>
      html`<button type="button" class=${look} @click=${act}>${words.text}</button>`;
    const held =
      unsaved === null ? nothing : html`<p class="voice">${fill(KEEP_WORDS['not-written'], { reason: unsaved })}</p>`;
    return html`<div class="column" role="status">
      <h1 tabindex="-1">${KEEP_WORDS['unsaved-title'].text}</h1>
      ${failure === null ? nothing : html`<p class="voice">${fill(TEST_WORDS['source-failed'], { reason: failure })}</p>`}
      <p>${fill(KEEP_WORDS['unsaved-explain'], values)}</p>
      ${held} ${button(KEEP_WORDS.save, () => void this.save())}
      ${button(KEEP_WORDS.again, () => this.dispatchEvent(new CustomEvent('try-again')), 'main')}
    </div>`;
  }
}
