import { consume } from '@lit/context';
import type { Visit } from '@surae/casebook';
import { PLAN_CHOICES, PLAN_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import { type PlanSide, planItems, planLinesMost, planSide, typedLines } from '../journey/plan-lines.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/chip-choice.ts';
import { fieldBox } from '../parts/field-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

const sides = (['left', 'right', 'both'] as const).map((value) => ({ value, text: PLAN_WORDS[value].text }));
const choices = Object.values(PLAN_CHOICES).map(({ text }) => text);

/** What the clinician wants to note as the plan: a few lines from chips, or typed. Nothing is proposed. */
@customElement('plan-step')
export class PlanStep extends LitElement {
  static override styles = [
    base,
    css`
      .parts {
        display: grid;
        gap: var(--gap-6);
        margin-block: var(--gap-4) var(--gap-6);
        max-inline-size: 56rem;
      }
      .legend,
      label {
        display: block;
        font-size: var(--size-2);
        font-weight: 600;
        margin-block-end: var(--gap-3);
      }
      textarea {
        ${fieldBox}
        max-inline-size: 44rem;
        padding-block: var(--gap-2);
      }
      .go {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private chosen: readonly string[] = [];
  @state() private typed = '';
  @state() private side: PlanSide | undefined;
  @state() private failed = false;

  /** A plan that was noted already stands there again. */
  override connectedCallback(): void {
    super.connectedCallback();
    void this.noted();
  }

  private async noted(): Promise<void> {
    const { plan, personId } = this.visit;
    if (plan === undefined || plan.length === 0) return;
    const lines = (await this.book.notes.plan(personId, plan)).map(({ body }) => body);
    this.chosen = lines.map(({ what }) => what).filter((what) => choices.includes(what));
    this.typed = lines
      .map(({ what }) => what)
      .filter((what) => !choices.includes(what))
      .join('\n');
    this.side = lines[0]?.side;
  }

  override render(): TemplateResult {
    const words = PLAN_WORDS;
    const lines = this.lines();
    const isTooMany = lines.length > planLinesMost;
    return html`
      <h1>${words.title.text}</h1>
      <p>${words.explain.text}</p>
      <div class="parts">
        <div>
          <p class="legend" id="lines">${words.lines.text}</p>
          <div class="choices" role="group" aria-labelledby="lines">
            ${choices.map(
              (text) =>
                html`<button type="button" aria-pressed=${this.chosen.includes(text)} @click=${() => this.turn(text)}>
                  ${text}
                </button>`,
            )}
          </div>
        </div>
        <chip-choice
          legend=${words.side.text}
          .chips=${sides}
          .value=${this.side ?? planSide(this.visit)}
          @chip-chosen=${(event: ChipChosen) => (this.side = event.detail as PlanSide)}
        ></chip-choice>
        <div>
          <label for="own">${words.own.text}</label>
          <textarea
            id="own"
            rows="3"
            aria-describedby="own-help"
            .value=${this.typed}
            @input=${(event: Event) => (this.typed = (event.target as HTMLTextAreaElement).value)}
          ></textarea>
          <p class="quiet" id="own-help">${fill(words['own-help'], { most: planLinesMost })}</p>
        </div>
      </div>
      <div class="go">
        ${isTooMany ? html`<p class="voice" role="status">${fill(words['too-many'], { most: planLinesMost })}</p>` : nothing}
        ${this.failed ? html`<p class="voice" role="alert">${words['not-kept'].text}</p>` : nothing}
        <button
          class="main"
          type="button"
          ?disabled=${lines.length === 0 || isTooMany}
          @click=${() => void this.keep(lines)}
        >
          ${words.keep.text}
        </button>
        <button type="button" @click=${() => void this.keep([])}>${words.none.text}</button>
      </div>
    `;
  }

  private lines(): readonly string[] {
    return [...choices.filter((text) => this.chosen.includes(text)), ...typedLines(this.typed)];
  }

  private turn(text: string): void {
    this.chosen = this.chosen.includes(text) ? this.chosen.filter((one) => one !== text) : [...this.chosen, text];
  }

  private async keep(lines: readonly string[]): Promise<void> {
    const { personId, plan = [] } = this.visit;
    const items = planItems(lines, this.side ?? planSide(this.visit), this.clock.isoNow().slice(0, 10));
    try {
      const planItemIds = await this.book.notes.keepPlan(personId, items, plan);
      this.failed = false;
      this.dispatchEvent(visitEvent({ kind: 'visit-plan', planItemIds }));
    } catch {
      this.failed = true;
    }
  }
}
