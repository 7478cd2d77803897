import { noOwnErrors, type OwnErrorsInUse, type Person, type TestKind, type Visit } from '@surae/casebook';
import { NEW_START_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { newStartView } from '../journey/new-start-view.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { comparedPushes, comparedRaises } from '../result/comparisons.ts';
import { capital } from '../result/value-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { plainPressStyle } from './plain-press-style.ts';

/** Against which earlier test later ones are held: another one is offered where the first was taken in a flare. */
@customElement('new-start')
export class NewStart extends LitElement {
  static override styles = [base, plainPressStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  @property() test: TestKind = 'heel-raise';

  override render(): TemplateResult | typeof nothing {
    const { visit, person, earlier, own, test } = this;
    if (earlier.length === 0) return nothing;
    const { pasts } = (test === 'heel-raise' ? comparedRaises : comparedPushes)(visit, person, earlier, own);
    const view = newStartView(visit, earlier, test, pasts);
    const words = NEW_START_WORDS;
    switch (view?.kind) {
      case 'taken':
        return html`<p class="voice" role="status">${words.taken.text}</p>
          ${this.press(words.back.text, false)}`;
      case 'offered':
        return html`${view.legs.map(
          ({ side, begunAt }) =>
            html`<p class="voice">
              ${fill(words.offered, { leg: capital(SUMMARY_WORDS[side].text), day: dayOf(begunAt) })}
            </p>`,
        )}
        ${this.press(words.take.text, true)}`;
      case 'held':
        return html`<p class="quiet">${fill(words.held, { day: dayOf(view.begunAt) })}</p>`;
      case undefined:
        return nothing;
    }
  }

  private press(text: string, taken: boolean): TemplateResult {
    const event = { kind: 'new-start', test: this.test, taken } as const;
    return html`<button class="plain" type="button" @click=${() => this.dispatchEvent(visitEvent(event))}>${text}</button>`;
  }
}
