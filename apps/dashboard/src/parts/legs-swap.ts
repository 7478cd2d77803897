import type { Side } from '@surae/analysis';
import { pullSetOf, setOf, swappedAt, type TestKind, type Visit } from '@surae/casebook';
import { SUMMARY_WORDS, SWAP_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { recordedLegs } from '../journey/recorded-legs.ts';
import { otherSide } from '../journey/steps.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { base } from '../styles/base.ts';
import { timeOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { plainPressStyle } from './plain-press-style.ts';
import './same-leg.ts';

/** Where the wrong leg was named: what was recorded gets the name of the other one, in one press, and back in another. */
@customElement('legs-swap')
export class LegsSwap extends LitElement {
  static override styles = [base, plainPressStyle];

  @property({ attribute: false }) visit!: Visit;
  @property() test: TestKind = 'heel-raise';

  override render(): TemplateResult | typeof nothing {
    const legs = recordedLegs(this.visit, this.test);
    const [first] = legs;
    if (first === undefined) return nothing;
    const at = swappedAt(this.visit, this.test);
    return html`
      <p class="voice" role="status">${at === null ? '' : fill(SWAP_WORDS.done, { time: timeOf(at) })}</p>
      <button
        class="plain"
        type="button"
        @click=${() => this.dispatchEvent(visitEvent({ kind: 'legs-swapped', test: this.test }))}
      >
        ${this.press(legs, first)}
      </button>
      <same-leg .visit=${this.visit} test=${this.test}></same-leg>
    `;
  }

  private press(legs: readonly Side[], first: Side): string {
    const of = this.test === 'heel-raise' ? setOf : pullSetOf;
    if (legs.every((side) => of(this.visit, side)?.swapped === true)) return SWAP_WORDS.back.text;
    if (legs.length > 1) return SWAP_WORDS.both.text;
    return fill(SWAP_WORDS.one, { leg: SUMMARY_WORDS[first].text, other: SUMMARY_WORDS[otherSide(first)].text });
  }
}
