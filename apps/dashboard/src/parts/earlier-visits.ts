import { consume } from '@lit/context';
import type { CaseloadEntry } from '@surae/casebook';
import { START_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Assessor, assessorContext, storeContext } from '../contexts/capabilities.ts';
import { isOfBeginning } from '../demo/clinic.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Earlier visits for the invented people: simulated, then assessed as any recording is. Offered while none of them has one. */
@customElement('earlier-visits')
export class EarlierVisits extends LitElement {
  static override styles = [
    base,
    css`
      p,
      button {
        margin-block-end: var(--gap-6);
      }
      button {
        padding-inline: 0;
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly CaseloadEntry[] = [];
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  /** the visits that are being made, or that it went wrong */
  @state() private making: { readonly done: number; readonly of: number } | 'stopped' | undefined;

  override render(): TemplateResult | null {
    if (this.making === 'stopped')
      return html`<p class="voice" role="alert">${START_WORDS['earlier-stopped'].text}</p>`;
    if (this.making !== undefined) {
      const { done, of } = this.making;
      return html`<p class="voice" role="status">${fill(START_WORDS['earlier-running'], { done: done + 1, of })}</p>`;
    }
    const invented = this.entries.filter(({ person }) => isOfBeginning(person));
    if (invented.length === 0 || invented.some(({ visits }) => visits.length > 0)) return null;
    return html`<button class="plain" type="button" @click=${() => void this.make()}>
      ${START_WORDS['earlier-visits'].text}
    </button>`;
  }

  private async make(): Promise<void> {
    this.making = { done: 0, of: 1 };
    try {
      const { addEarlierVisits } = await import('../demo/earlier-visits.ts');
      await addEarlierVisits({
        store: this.store,
        final: (trace, request) => this.assessor.final(trace, request),
        pulls: (trace, request) => this.assessor.pulls(trace, request),
        now: new Date(),
        told: (done, of) => (this.making = done < of ? { done, of } : undefined),
      });
    } catch {
      this.making = 'stopped';
    }
    this.dispatchEvent(new CustomEvent('earlier-made'));
  }
}
