import { consume } from '@lit/context';
import type { HandedAs, Visit } from '@surae/casebook';
import { CALENDAR_WORDS, HAND_OVER_WORDS, MORNING_CHOICES, MORNINGS_IN_WORDS, STEP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import { handoutOf } from '../home/handout-of.ts';
import type { PlanEntry } from '../journey/person-notes.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import '../parts/save-calendar.ts';
import { planAfterVisit, planPlacesBefore } from '../plan/plan-so-far.ts';
import { planLineText } from '../plan/plan-words.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';

/** What can be given; the first is the main one. */
const ways = ['print', 'file', 'code'] as const satisfies readonly HandedAs[];

/** Ends the visit with one press, which says how somebody was given what was found. */
@customElement('hand-over-step')
export class HandOverStep extends LitElement {
  static override styles = [
    base,
    css`
      h2 {
        font-size: var(--size-2);
      }
      ul {
        margin: 0 0 var(--gap-6);
        padding-inline-start: 1.2em;
      }
      .legend {
        font-weight: 600;
      }
      .choices button {
        font-size: var(--size-1);
        text-align: start;
      }
      .choices + .quiet {
        margin-block: var(--gap-3) var(--gap-6);
      }
      .aside {
        margin-block: var(--gap-6) 0;
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
  @state() private plan: readonly PlanEntry[] = [];
  /** lines that an earlier calendar file may hold */
  @state() private places = 0;
  /** codes of the sentences for the mornings that are confirmed */
  @state() private lines: readonly string[] = [];
  @state() private failed = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('visit')) void this.read();
  }

  private async read(): Promise<void> {
    const documents = await this.book.log.documents(this.visit.personId);
    this.plan = planAfterVisit(documents, this.visit);
    this.places = planPlacesBefore(documents, this.visit);
  }

  override render(): TemplateResult {
    const words = HAND_OVER_WORDS;
    return html`
      <h1>${words.title.text}</h1>
      <h2>${words.plan.text}</h2>
      ${
        this.plan.length === 0
          ? html`<p>${words['no-plan'].text}</p>`
          : html`<ul>
              ${this.plan.map(({ body }) => html`<li>${planLineText(body)}</li>`)}
            </ul>`
      }
      <p class="legend" id="confirm">${MORNINGS_IN_WORDS.confirm.text}</p>
      <div class="choices" role="group" aria-labelledby="confirm">
        ${Object.entries(MORNING_CHOICES).map(
          ([code, { text }]) =>
            html`<button type="button" aria-pressed=${this.lines.includes(code)} @click=${() => this.turn(code)}>
              ${text}
            </button>`,
        )}
      </div>
      <p class="quiet">${this.lines.length === 0 ? MORNINGS_IN_WORDS['confirm-none'].text : nothing}</p>
      <div class="go">
        <p>${words.explain.text}</p>
        ${this.failed ? html`<p class="voice" role="alert">${STEP_WORDS['not-kept'].text}</p>` : nothing}
        ${ways.map(
          (how, at) =>
            html`<button class=${at === 0 ? 'main' : ''} type="button" @click=${() => void this.end(how)}>
              ${words[how].text}
            </button>`,
        )}
        <button type="button" @click=${() => void this.end('nothing')}>${words.nothing.text}</button>
        <p class="aside quiet">${CALENDAR_WORDS['goes-on'].text}</p>
        <save-calendar
          .handout=${handoutOf(this.visit, null, this.plan)}
          day=${this.clock.isoNow().slice(0, 10)}
          places=${this.places}
        ></save-calendar>
      </div>
    `;
  }

  private turn(code: string): void {
    this.lines = this.lines.includes(code) ? this.lines.filter((one) => one !== code) : [...this.lines, code];
  }

  /** Closed first, and shown then: the page for the patient stands on a closed visit. */
  private async end(how: HandedAs): Promise<void> {
    const { id: visitId } = this.visit;
    try {
      await this.book.record(visitId, { kind: 'visit-closed', how, lines: this.lines });
    } catch {
      this.failed = true;
      return;
    }
    if (how === 'nothing') this.dispatchEvent(new CustomEvent('visit-moved', { bubbles: true, composed: true }));
    else location.hash = hashOf({ page: 'legs', visitId, at: how });
  }
}
