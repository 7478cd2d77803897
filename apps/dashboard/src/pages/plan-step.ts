import { consume } from '@lit/context';
import {
  type CasebookPerson,
  type PlanFacts,
  type PlanItem,
  type PlanOfDay,
  planFacts,
  type Visit,
} from '@surae/casebook';
import { EXERCISE_WORDS, type GuidanceRule, PLAN_ADVICE_CHOICES, PLAN_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Activity, activityFor } from '../advice/activity-cards.ts';
import { type Advice, adviceFor } from '../advice/advice-cards.ts';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { ActivityBack, ActivityTaken, RunsNoted, RunsNotNoted } from '../parts/activity-part.ts';
import '../parts/activity-part.ts';
import type { AdviceBack, AdviceTaken } from '../parts/advice-part.ts';
import '../parts/advice-part.ts';
import type { LineChanged } from '../parts/plan-line-form.ts';
import '../parts/plan-line-form.ts';
import {
  added,
  adviceLine,
  changed,
  draftProblem,
  emptyDraft,
  exerciseLine,
  type PlanDraft,
  planLinesMost,
  planPainLimit,
  planSide,
  removed,
  runLine,
  standsAgainst,
  taken,
  typedLines,
  undone,
  withActivity,
  without,
  wordsLine,
} from '../plan/plan-draft.ts';
import { personIn, planSoFar, unchangedWords } from '../plan/plan-so-far.ts';
import { planStepStyle } from '../plan/plan-step-style.ts';
import { planLineText } from '../plan/plan-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** The plan as the clinician writes it: exercises with their numbers, a limit for runs, advice. What rules propose stands beside, and none of it is chosen. */
@customElement('plan-step')
export class PlanStep extends LitElement {
  static override styles = [base, planStepStyle];

  @property({ attribute: false }) visit!: Visit;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private draft: PlanDraft = emptyDraft;
  @state() private typed = '';
  @state() private soFar: PlanOfDay | null = null;
  @state() private advice: Advice | null = null;
  /** what proposals are made of beside the visit; null until it was read */
  private ground: { readonly person: CasebookPerson; readonly rules: readonly GuidanceRule[] } | null = null;
  @state() private activity: Activity | null = null;
  /** the line that stands open */
  @state() private opened = -1;
  @state() private failed = false;

  /** A plan that was kept in this visit already stands there again; of another visit nothing stays. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit')) return;
    if (changed.get('visit')?.id === this.visit.id) {
      // what was told since may change what is proposed
      this.proposeNow();
      return;
    }
    this.draft = emptyDraft;
    this.typed = '';
    this.soFar = null;
    this.advice = null;
    this.ground = null;
    this.activity = null;
    this.opened = -1;
    void this.noted(this.visit);
  }

  private async noted(visit: Visit): Promise<void> {
    const { plan = [], personId } = visit;
    const [items, documents, { rules }] = await Promise.all([
      this.book.notes.plan(personId, plan),
      this.book.log.documents(personId),
      this.book.ownRules.rules(),
    ]);
    if (visit.id !== this.visit.id) return;
    this.soFar = planSoFar(documents, visit, this.today());
    const person = personIn(documents, personId);
    this.ground = person === undefined ? null : { person, rules };
    this.proposeNow();
    if (items.length === 0 || this.draft.items.length > 0) return;
    const lines = items.map(({ body }) => body);
    this.draft = { items: lines.filter(({ of }) => of !== 'words'), before: [] };
    this.typed = lines.flatMap(({ of, what }) => (of === 'words' ? [what] : [])).join('\n');
  }

  private proposeNow(): void {
    const { ground, visit } = this;
    const today = this.today();
    this.advice = ground === null ? null : adviceFor(ground.person, visit, today, ground.rules);
    this.activity = ground === null ? null : activityFor(ground.person, visit, today, ground.rules);
  }

  private readonly facts = (): PlanFacts => planFacts(this.visit, this.ground?.person.person.demo);

  private today(): string {
    return this.clock.isoNow().slice(0, 10);
  }

  /** What would be kept: lines from chips, then lines that were typed. */
  private items(): readonly PlanItem[] {
    const side = planSide(this.visit);
    return [
      ...this.draft.items,
      ...[...new Set(typedLines(this.typed))].map((what) => wordsLine(what, side, this.today())),
    ];
  }

  override render(): TemplateResult {
    const words = PLAN_WORDS;
    const [facts, items] = [this.facts(), this.items()];
    const against = standsAgainst(facts);
    const problem = draftProblem(items, facts);
    return html`
      <h1>${words.title.text}</h1>
      <p>${words.explain.text}</p>
      ${against === null ? nothing : html`<p class="voice" role="alert">${words[against].text}</p>`}
      ${this.soFarLines()}
      <section aria-labelledby="today">
        <h2 id="today">${words.today.text}</h2>
        ${this.draft.items.length === 0 ? html`<p class="quiet">${words.empty.text}</p>` : nothing}
        ${this.draft.items.map(
          (item, at) =>
            html`<plan-line-form
              .item=${item}
              .facts=${facts}
              ?opened=${at === this.opened}
              @line-changed=${({ detail }: LineChanged) => this.set(changed(this.draft, at, detail), at)}
              @line-removed=${() => this.set(removed(this.draft, at), -1)}
            ></plan-line-form>`,
        )}
        ${
          this.draft.before.length === 0
            ? nothing
            : html`<button class="plain" type="button" @click=${() => this.set(undone(this.draft), this.opened)}>
                ${words.undo.text}
              </button>`
        }
      </section>
      ${this.proposed()} ${this.proposedActivity()}
      ${this.choices()}
      <div class="go">
        ${this.problemWords(problem)}
        ${this.failed ? html`<p class="voice" role="alert">${words['not-kept'].text}</p>` : nothing}
        <button class="main" type="button" ?disabled=${problem !== null} @click=${() => void this.keep(items)}>
          ${words.keep.text}
        </button>
        <button type="button" @click=${() => void this.keep([])}>
          ${unchangedWords(this.soFar)}
        </button>
      </div>
    `;
  }

  private problemWords(problem: ReturnType<typeof draftProblem>): TemplateResult | typeof nothing {
    if (problem === null || problem === 'nothing') return nothing;
    return html`<p class="voice" role="status">${fill(PLAN_WORDS[problem], { most: planLinesMost })}</p>`;
  }

  private proposed(): TemplateResult | typeof nothing {
    if (this.advice === null) return nothing;
    return html`<advice-part
      .advice=${this.advice}
      .items=${this.draft.items}
      .visit=${this.visit}
      @advice-taken=${({ detail }: AdviceTaken) => this.set(taken(this.draft, detail, this.today()), -1)}
      @advice-back=${({ detail }: AdviceBack) => this.set(without(this.draft, detail), -1)}
    ></advice-part>`;
  }

  private proposedActivity(): TemplateResult | typeof nothing {
    if (this.activity === null) return nothing;
    return html`<activity-part
      .activity=${this.activity}
      .items=${this.draft.items}
      .visit=${this.visit}
      @activity-taken=${({ detail }: ActivityTaken) => this.set(withActivity(this.draft, detail), -1)}
      @activity-back=${({ detail }: ActivityBack) => this.set(without(this.draft, detail), -1)}
      @runs-whole=${({ detail }: RunsNoted) => this.note((log) => log.add(this.visit.personId, { kind: 'runs-whole', body: detail }))}
      @runs-not-whole=${({ detail }: RunsNotNoted) => this.note((log) => log.takeOut(detail, 'not-known'))}
    ></activity-part>`;
  }

  /** Writes down about the person, and reads what follows from it. */
  private async note(write: (log: VisitBook['log']) => Promise<unknown>): Promise<void> {
    try {
      await write(this.book.log);
      this.failed = false;
      await this.noted(this.visit);
    } catch {
      this.failed = true;
    }
  }

  private soFarLines(): TemplateResult | typeof nothing {
    const { soFar } = this;
    if (soFar === null) return nothing;
    const items = soFar.items.map(({ body }) => body);
    return html`<section aria-labelledby="so-far">
      <h2 id="so-far">${fill(PLAN_WORDS['so-far'], { day: dayOf(soFar.since) })}</h2>
      <ul>
        ${items.map((item) => html`<li>${planLineText(item)}</li>`)}
      </ul>
      ${
        soFar.held.length === 0
          ? nothing
          : html`<p class="voice" id="held">${PLAN_WORDS.held.text}</p>
              <ul aria-labelledby="held">
                ${soFar.held.map(({ item: { body } }) => html`<li>${planLineText(body)}</li>`)}
              </ul>`
      }
      <div class="choices">
        <button
          type="button"
          ?disabled=${items.length === 0}
          @click=${() => this.set(taken(this.draft, items, this.today()), -1)}
        >
          ${PLAN_WORDS['take-over'].text}
        </button>
        <button type="button" @click=${() => void this.keep([], true)}>${PLAN_WORDS['end-plan'].text}</button>
      </div>
    </section>`;
  }

  private choices(): TemplateResult {
    const words = PLAN_WORDS;
    const facts = this.facts();
    const [side, limit, from] = [planSide(this.visit), planPainLimit(this.visit), this.today()];
    const isLocked = facts.safetyLocked || facts.suddenLoss;
    const exercises = Object.entries(EXERCISE_WORDS) as [keyof typeof EXERCISE_WORDS, { text: string }][];
    const advice = Object.entries(PLAN_ADVICE_CHOICES) as [keyof typeof PLAN_ADVICE_CHOICES, { text: string }][];
    const hasRuns = this.draft.items.some(({ of }) => of === 'running');
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
            const at = this.draft.items.findIndex((one) => one.of === 'advice' && one.code === code);
            return html`<button
              type="button"
              aria-pressed=${at >= 0}
              @click=${() =>
                this.set(at >= 0 ? removed(this.draft, at) : added(this.draft, adviceLine(code, side, from)), -1)}
            >
              ${text}
            </button>`;
          })}
        </div>
      </section>
      <section>
        <label for="own">${words.own.text}</label>
        <textarea
          id="own"
          rows="2"
          aria-describedby="own-help"
          .value=${this.typed}
          @input=${(event: Event) => (this.typed = (event.target as HTMLTextAreaElement).value)}
        ></textarea>
        <p class="quiet" id="own-help">${fill(words['own-help'], { most: planLinesMost })}</p>
      </section>
    `;
  }

  private adding(text: string, isLocked: boolean, line: () => PlanItem): TemplateResult {
    return html`<button
      type="button"
      ?disabled=${isLocked}
      @click=${() => this.set(added(this.draft, line()), this.draft.items.length)}
    >
      ${text}
    </button>`;
  }

  private set(draft: PlanDraft, opened: number): void {
    this.draft = draft;
    this.opened = opened;
  }

  private async keep(items: readonly PlanItem[], ended = false): Promise<void> {
    try {
      const planItemIds = await this.book.notes.keepPlan(this.visit, items);
      this.failed = false;
      this.dispatchEvent(visitEvent({ kind: 'visit-plan', planItemIds, ...(ended ? { ended } : {}) }));
    } catch {
      this.failed = true;
    }
  }
}
