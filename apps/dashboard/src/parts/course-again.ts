import { type CasebookVisit, noOwnErrors, type OwnErrorsInUse } from '@surae/casebook';
import { LOG_WORDS, RECOUNT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { testWords } from '../course/test-words.ts';
import { base } from '../styles/base.ts';
import './set-recount.ts';

/** A set of an earlier visit that is counted again from the line of time. Tells `again-left`. */
@customElement('course-again')
export class CourseAgain extends LitElement {
  static override styles = [
    base,
    css`
      section {
        border-block: 1px solid var(--hairline);
        margin-block-end: var(--gap-6);
        padding-block: var(--gap-4);
      }
      h2 {
        font-size: var(--size-2);
      }
    `,
  ];

  /** in the order in which they were begun */
  @property({ attribute: false }) visits: readonly CasebookVisit[] = [];
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  @property({ attribute: false }) setId = '';

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('setId')) return;
    const heading = this.renderRoot.querySelector('h2');
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }

  override render(): TemplateResult | typeof nothing {
    const at = this.visits.findIndex(({ visit }) => visit.sets.some(({ id }) => id === this.setId));
    const found = this.visits[at];
    const set = found?.visit.sets.find(({ id }) => id === this.setId);
    if (found === undefined || set === undefined) return nothing;
    return html`<section>
      <h2 tabindex="-1">${RECOUNT_WORDS.title.text}</h2>
      <p>${testWords(set).join(' ')}</p>
      <set-recount
        .set=${set}
        .visit=${found.visit}
        .person=${found.person}
        .earlier=${this.visits.slice(0, at).map(({ visit }) => visit)}
        .own=${this.own}
      ></set-recount>
      <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('again-left'))}>
        ${LOG_WORDS.cancel.text}
      </button>
    </section>`;
  }
}
