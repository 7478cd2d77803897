import { consume } from '@lit/context';
import type { VisitSet } from '@surae/casebook';
import { KEEP_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeContext } from '../contexts/capabilities.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { errorWords } from '../live/error-words.ts';
import { type KeptSet, keptSet } from '../live/kept-set.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** A set during which the page was closed: use what was kept of it, or do it again. */
@customElement('cut-off-set')
export class CutOffSet extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) set!: VisitSet;
  @property({ attribute: false }) heelLeverM: number | null = null;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @state() private kept: KeptSet | undefined;
  @state() private reason = '';

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
    void this.look();
  }

  private async look(): Promise<void> {
    try {
      const bytes = await this.store.bytes(this.set.bytesId);
      const { placement, setUp } = this.set.choice;
      this.kept = keptSet(bytes?.pieces ?? [], placement, this.heelLeverM, setUp?.readAs);
    } catch (error) {
      this.reason = errorWords(error);
    }
  }

  private use({ count }: KeptSet): void {
    this.dispatchEvent(visitEvent({ kind: 'set-stopped', setId: this.set.id, liveCount: count }));
  }

  private redo(): void {
    this.dispatchEvent(visitEvent({ kind: 'set-aside', setId: this.set.id, why: 'cut-off' }));
  }

  private explain(): string {
    const { kept, reason } = this;
    if (reason !== '') return fill(KEEP_WORDS['cut-off-unreadable'], { reason });
    if (kept === undefined) return KEEP_WORDS.looking.text;
    if (kept.keptS === 0) return KEEP_WORDS['cut-off-empty'].text;
    const values = { seconds: kept.keptS.toFixed(1), count: kept.count };
    return fill(KEEP_WORDS[`cut-off-${this.set.choice.side}`], values);
  }

  override render(): TemplateResult {
    const { kept } = this;
    return html`<div class="column">
      <h1 tabindex="-1">${KEEP_WORDS['cut-off-title'].text}</h1>
      <p role="status">${this.explain()}</p>
      <p class="quiet">${KEEP_WORDS['redo-explain'].text}</p>
      ${
        kept === undefined || kept.keptS === 0
          ? nothing
          : html`<button type="button" @click=${() => this.use(kept)}>${KEEP_WORDS.use.text}</button>`
      }
      <button type="button" class="main" @click=${() => this.redo()}>${KEEP_WORDS.redo.text}</button>
    </div>`;
  }
}
