import type { PlanFacts, PlanItem, Visit } from '@surae/casebook';
import { numbersInUse } from '@surae/guidance';
import { EXERCISE_WORDS, GUIDANCE_RULES, type GuidanceRule, PLAN_ADVICE_CHOICES, PLAN_WORDS } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { adviceLine, exerciseLine, planPainLimit, planSide, runLine } from '../plan/plan-draft.ts';
import { planStepStyle } from '../plan/plan-step-style.ts';
import { base } from '../styles/base.ts';

/** A line was chosen to be added to a plan. */
export type LineChosen = CustomEvent<PlanItem>;

/** A line of advice was chosen to go again: its place in the plan. */
export type LineDropped = CustomEvent<number>;

/** What can be added to a plan by one press: exercises, a limit for runs, advice. Tells `line-chosen` and `line-dropped`. */
@customElement('plan-choices')
export class PlanChoices extends LitElement {
  static override styles = [base, planStepStyle];

  @property({ attribute: false }) visit!: Visit;
  /** what stands against lines */
  @property({ attribute: false }) facts!: PlanFacts;
  /** rules as the clinic has them: a line begins from their limit of pain */
  @property({ attribute: false }) rules: readonly GuidanceRule[] = GUIDANCE_RULES;
  /** lines that are in the plan */
  @property({ attribute: false }) items: readonly PlanItem[] = [];
  /** the day here */
  @property() today = '';

  override render(): TemplateResult {
    const words = PLAN_WORDS;
    const { visit, facts, items, today: from } = this;
    const [side, limit] = [planSide(visit), planPainLimit(visit, numbersInUse(this.rules))];
    const isLocked = facts.safetyLocked || facts.suddenLoss;
    const exercises = Object.entries(EXERCISE_WORDS) as [keyof typeof EXERCISE_WORDS, { text: string }][];
    const advice = Object.entries(PLAN_ADVICE_CHOICES) as [keyof typeof PLAN_ADVICE_CHOICES, { text: string }][];
    const hasRuns = items.some(({ of }) => of === 'running');
    return html`
      <section aria-labelledby="add">
        <h2 id="add">${words.add.text}</h2>
        <p class="quiet" id="add-explain">${words['add-explain'].text}</p>
        <div class="choices" role="group" aria-labelledby="add" aria-describedby="add-explain">
          ${exercises.map(([code, { text }]) =>
            this.adding(text, isLocked, () => exerciseLine(code, side, from, limit, facts)),
          )}
        </div>
      </section>
      <section aria-labelledby="add-run">
        <h2 id="add-run">${words['add-run'].text}</h2>
        <div class="choices" role="group" aria-labelledby="add-run">
          ${this.adding(words['by-time'].text, isLocked || hasRuns, () => runLine('time', from, limit))}
          ${this.adding(words['by-way'].text, isLocked || hasRuns, () => runLine('way', from, limit))}
        </div>
      </section>
      <section aria-labelledby="advice">
        <h2 id="advice">${words.advice.text}</h2>
        <div class="choices" role="group" aria-labelledby="advice">
          ${advice.map(([code, { text }]) => {
            const at = items.findIndex((one) => one.of === 'advice' && one.code === code);
            return html`<button
              type="button"
              aria-pressed=${at >= 0}
              @click=${() => {
                if (at >= 0) this.dispatchEvent(new CustomEvent('line-dropped', { detail: at }) satisfies LineDropped);
                else this.choose(adviceLine(code, side, from));
              }}
            >
              ${text}
            </button>`;
          })}
        </div>
      </section>
    `;
  }

  private adding(text: string, isLocked: boolean, line: () => PlanItem): TemplateResult {
    return html`<button type="button" ?disabled=${isLocked} @click=${() => this.choose(line())}>${text}</button>`;
  }

  private choose(line: PlanItem): void {
    this.dispatchEvent(new CustomEvent('line-chosen', { detail: line }) satisfies LineChosen);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'plan-choices': PlanChoices;
  }
}
