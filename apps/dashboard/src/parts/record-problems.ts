import { consume } from '@lit/context';
import { CLINIC_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { RecordCheck } from '../clinic/record-check.ts';
import { storeContext } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Looks through the whole record when it is asked to, and lists what cannot be read. */
@customElement('record-problems')
export class RecordProblems extends LitElement {
  static override styles = [
    base,
    css`
      ul {
        overflow-wrap: anywhere;
      }
    `,
  ];

  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @state() private check: RecordCheck | undefined;
  @state() private busy = false;
  @state() private refusal = '';

  private async look(): Promise<void> {
    this.busy = true;
    this.refusal = '';
    try {
      // the schemas of all kinds come only with this look
      const { checkedRecord } = await import('../clinic/record-check.ts');
      this.check = await checkedRecord(this.store);
    } catch (error) {
      this.refusal = storeWords(error);
    }
    this.busy = false;
  }

  override render(): TemplateResult {
    return html`
      <button type="button" ?disabled=${this.busy} @click=${() => void this.look()}>
        ${CLINIC_WORDS[this.busy ? 'problems-looking' : 'problems-look'].text}
      </button>
      <p role="alert" class="voice">${this.refusal}</p>
      <div role="status">${this.check === undefined ? nothing : this.found(this.check)}</div>
    `;
  }

  private found({ entries, lines }: RecordCheck): TemplateResult {
    if (lines.length === 0) return html`<p>${fill(CLINIC_WORDS['problems-none'], { count: entries })}</p>`;
    return html`<p class="voice">${fill(CLINIC_WORDS['problems-some'], { count: lines.length })}</p>
      <ul>
        ${lines.map((line) => html`<li>${line}</li>`)}
      </ul>`;
  }
}
