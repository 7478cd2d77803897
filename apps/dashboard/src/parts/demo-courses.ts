import { consume } from '@lit/context';
import type { CaseloadEntry } from '@surae/casebook';
import { START_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Assessor, assessorContext, storeContext } from '../contexts/capabilities.ts';
import { coursePeople, isOfBeginning } from '../demo/clinic.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Invented people with twelve weeks behind them, for the demo clinic: offered while they are not all there. */
@customElement('demo-courses')
export class DemoCourses extends LitElement {
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
  /** the people that are being written, or that it went wrong */
  @state() private making: { readonly done: number; readonly of: number } | 'stopped' | undefined;

  override render(): TemplateResult | null {
    if (this.making === 'stopped')
      return html`<p class="voice" role="alert">${START_WORDS['courses-stopped'].text}</p>`;
    if (this.making !== undefined) {
      const { done, of } = this.making;
      return html`<p class="voice" role="status">${fill(START_WORDS['courses-running'], { done: done + 1, of })}</p>`;
    }
    const first = this.entries.filter(({ person }) => isOfBeginning(person)).length;
    const invented = this.entries.filter(({ person }) => person.demo).length;
    if (first === 0 || invented - first >= coursePeople) return null;
    return html`<button class="plain" type="button" @click=${() => void this.make()}>
      ${START_WORDS.courses.text}
    </button>`;
  }

  private async make(): Promise<void> {
    this.making = { done: 0, of: coursePeople };
    try {
      const { addCourses } = await import('../demo/courses/add-courses.ts');
      await addCourses({
        store: this.store,
        final: (trace, request) => this.assessor.final(trace, request),
        now: new Date(),
        told: (done, of) => (this.making = done < of ? { done, of } : undefined),
      });
    } catch {
      this.making = 'stopped';
    }
    this.dispatchEvent(new CustomEvent('courses-made'));
  }
}
