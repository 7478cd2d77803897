import { KEEP_WORDS, type Sentence } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SetChoice } from '../journey/visit.ts';
import { savedFile } from '../live/saved-file.ts';
import type { SetSession } from '../live/set-session.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** A set that has stopped and could not be stored whole: it is held here, can be tried again, and saved as a file. */
@customElement('unstored-set')
export class UnstoredSet extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) session!: SetSession;
  @property({ attribute: false }) choice!: SetChoice;
  @property({ attribute: false }) reason = '';

  private save(): void {
    const { side, placement } = this.choice;
    const text = savedFile(this.session.live.log, side, placement);
    if (text === undefined) return;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    link.download = fill(KEEP_WORDS['saved-name'], { side });
    link.click();
    URL.revokeObjectURL(link.href);
  }

  override render(): TemplateResult {
    const { live, timeS } = this.session;
    const values = { count: live.raises.length, seconds: timeS.toFixed(0), reason: this.reason };
    const button = (words: Sentence, act: () => void, look = ''): TemplateResult =>
      html`<button type="button" class=${look} @click=${act}>${words.text}</button>`;
    return html`<div class="column" role="alert">
      <h1 tabindex="-1">${KEEP_WORDS['unsaved-title'].text}</h1>
      <p>${fill(KEEP_WORDS['unsaved-explain'], values)}</p>
      ${button(KEEP_WORDS.save, () => this.save())}
      ${button(KEEP_WORDS.again, () => this.dispatchEvent(new CustomEvent('try-again')), 'main')}
    </div>`;
  }
}
