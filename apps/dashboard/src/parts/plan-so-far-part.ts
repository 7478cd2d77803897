import type { PlanItem, PlanOfDay } from '@surae/casebook';
import { PLAN_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planStepStyle } from '../plan/plan-step-style.ts';
import { planLineText } from '../plan/plan-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Lines of the plan so far were taken over. */
export type SoFarTaken = CustomEvent<readonly PlanItem[]>;

/** The plan that holds before a visit is planned, and what of it is held back. Tells `so-far-taken` and `so-far-ended`. */
@customElement('plan-so-far-part')
export class PlanSoFarPart extends LitElement {
  static override styles = [base, planStepStyle];

  @property({ attribute: false }) plan!: PlanOfDay;

  override render(): TemplateResult {
    const { since, held } = this.plan;
    const items = this.plan.items.map(({ body }) => body);
    return html`<section aria-labelledby="so-far">
      <h2 id="so-far">${fill(PLAN_WORDS['so-far'], { day: dayOf(since) })}</h2>
      <ul>
        ${items.map((item) => html`<li>${planLineText(item)}</li>`)}
      </ul>
      ${
        held.length === 0
          ? nothing
          : html`<p class="voice" id="held">${PLAN_WORDS.held.text}</p>
              <ul aria-labelledby="held">
                ${held.map(({ item: { body } }) => html`<li>${planLineText(body)}</li>`)}
              </ul>`
      }
      <div class="choices">
        <button
          type="button"
          ?disabled=${items.length === 0}
          @click=${() => this.dispatchEvent(new CustomEvent('so-far-taken', { detail: items }) satisfies SoFarTaken)}
        >
          ${PLAN_WORDS['take-over'].text}
        </button>
        <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('so-far-ended'))}>
          ${PLAN_WORDS['end-plan'].text}
        </button>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'plan-so-far-part': PlanSoFarPart;
  }
}
