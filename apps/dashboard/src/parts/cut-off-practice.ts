import { consume } from '@lit/context';
import type { PracticeSet } from '@surae/casebook';
import { PRACTICE_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeContext } from '../contexts/capabilities.ts';
import { errorWords } from '../live/error-words.ts';
import { keptSet } from '../live/kept-set.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** A practice during which the page was closed or left: what is kept of it, and that it counts for nothing. */
@customElement('cut-off-practice')
export class CutOffPractice extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) practice!: PracticeSet;
  @property({ attribute: false }) heelLeverM: number | null = null;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @state() private line = '';

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('practice') && changed.get('practice')?.id !== this.practice.id) void this.look();
  }

  private async look(): Promise<void> {
    const { id, bytesId, choice } = this.practice;
    const line = await this.store
      .bytes(bytesId)
      .then((bytes) => {
        const { keptS } = keptSet(bytes?.pieces ?? [], choice.placement, this.heelLeverM, choice.setUp?.readAs);
        return keptS === 0
          ? PRACTICE_WORDS['cut-off-empty'].text
          : fill(PRACTICE_WORDS['cut-off'], { seconds: keptS.toFixed(1) });
      })
      .catch((error: unknown) => fill(PRACTICE_WORDS['cut-off-unreadable'], { reason: errorWords(error) }));
    if (this.practice.id === id) this.line = line;
  }

  override render(): TemplateResult | typeof nothing {
    return this.line === '' ? nothing : html`<p class="voice" role="status">${this.line}</p>`;
  }
}
