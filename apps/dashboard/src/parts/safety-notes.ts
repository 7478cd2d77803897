import { consume } from '@lit/context';
import { locksOf, mayTest, notesOf, type SafetyAnswer, type Visit } from '@surae/casebook';
import { LOCK_WORDS, SAFETY_BLOCK_SENTENCES, SAFETY_REASONS, type SafetyEntry } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { base } from '../styles/base.ts';
import { entryWords } from '../words/entry-words.ts';

/** What the safety list leaves to know where a test starts and on the result: the lock with its next step, and the notes. */
@customElement('safety-notes')
export class SafetyNotes extends LitElement {
  static override styles = [
    base,
    css`
      section {
        border-inline-start: 3px solid var(--voice);
        margin-block-end: var(--gap-6);
        max-inline-size: 44rem;
        padding-inline-start: var(--gap-4);
      }
      h2 {
        font-size: var(--size-2);
      }
      p,
      ul {
        margin-block: 0 var(--gap-2);
      }
      ul {
        padding-inline-start: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  /** the page around it has the heading of the lock */
  @property({ type: Boolean }) headed = false;
  @consume({ context: clockContext }) private readonly clock!: HostClock;

  override render(): TemplateResult {
    const { safety } = this.visit;
    return html`${this.lock(safety)} ${safety === null ? null : this.notes(safety)}`;
  }

  private lock(safety: SafetyAnswer | null): TemplateResult | null {
    const { why } = mayTest('live', safety, this.clock.isoNow());
    if (why.length === 0) return null;
    const locks = safety === null ? [] : locksOf(safety);
    return html`<section class="lock">
      ${this.headed ? null : html`<h2 class="voice">${LOCK_WORDS.locked.text}</h2>`}
      ${why.map((code) => html`<p>${SAFETY_BLOCK_SENTENCES[code].text}</p>`)}
      ${locks.length === 0 ? null : html`<ul>${locks.map((line) => html`<li>${entryWords(line, 'ask')} <strong>${entryWords(line, 'next')}</strong></li>`)}</ul>`}
      ${this.headed ? null : html`<p>${LOCK_WORDS['tests-nobody'].text}</p>`}
    </section>`;
  }

  private notes(safety: SafetyAnswer): TemplateResult | null {
    const notes = notesOf(safety);
    if (notes.length === 0) return null;
    const why = new Map(safety.overridden.map(({ id, reason }) => [id, reason]));
    const reasonOf = ({ id }: SafetyEntry): string => {
      const code = why.get(id);
      return code === undefined ? '' : (SAFETY_REASONS[code as keyof typeof SAFETY_REASONS]?.text ?? code);
    };
    return html`<section>
      <h2>${LOCK_WORDS.notes.text}</h2>
      <ul>
        ${notes.map((line) => html`<li>${entryWords(line, 'ask')} <span class="quiet">${reasonOf(line) || entryWords(line, 'next')}</span></li>`)}
      </ul>
    </section>`;
  }
}
