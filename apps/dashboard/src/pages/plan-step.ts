import { consume } from '@lit/context';
import {
  type BegunPlan,
  type CasebookPerson,
  type PlanFacts,
  type PlanItem,
  type PlanOfDay,
  planFacts,
  type Visit,
} from '@surae/casebook';
import { GUIDANCE_RULES, type GuidanceRule, PLAN_WORDS } from '@surae/shared';
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
import type { LineChosen, LineDropped } from '../parts/plan-choices.ts';
import '../parts/plan-choices.ts';
import type { LineChanged } from '../parts/plan-line-form.ts';
import '../parts/plan-line-form.ts';
import type { SoFarTaken } from '../parts/plan-so-far-part.ts';
import '../parts/plan-so-far-part.ts';
import { begunDraft } from '../plan/begun-draft.ts';
import { BegunKeeper } from '../plan/begun-keeper.ts';
import {
  added,
  changed,
  draftProblem,
  emptied,
  emptyDraft,
  type PlanDraft,
  planLinesMost,
  planSide,
  removed,
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
  /** when the lines that stand here were begun, where they were found again */
  @state() private begunAt: string | null = null;
  private keeper = this.keeperOf('');

  /** Lines of one visit are written down for it, whichever is shown when that is done. */
  private keeperOf(visitId: string): BegunKeeper {
    return new BegunKeeper(
      (plan) => this.book.notes.keepBegunPlan(visitId, plan),
      () => (this.failed = true),
    );
  }

  private readonly flush = (): void => void this.keeper.flush();

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('pagehide', this.flush);
    document.addEventListener('visibilitychange', this.flush);
  }

  override disconnectedCallback(): void {
    removeEventListener('pagehide', this.flush);
    document.removeEventListener('visibilitychange', this.flush);
    this.flush();
    super.disconnectedCallback();
  }

  /** A plan that was kept in this visit already stands there again; of another visit nothing stays. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit')) return;
    if (changed.get('visit')?.id === this.visit.id) {
      // what was told since may change what is proposed
      this.proposeNow();
      return;
    }
    this.flush();
    this.keeper = this.keeperOf(this.visit.id);
    this.draft = emptyDraft;
    this.typed = '';
    this.begunAt = null;
    this.soFar = null;
    this.advice = null;
    this.ground = null;
    this.activity = null;
    this.opened = -1;
    void this.noted(this.visit);
  }

  private async noted(visit: Visit): Promise<void> {
    const { plan = [], personId } = visit;
    const [begun, items, documents, { rules }] = await Promise.all([
      this.book.notes.begunPlan(visit.id),
      this.book.notes.plan(personId, plan),
      this.book.log.documents(personId),
      this.book.ownRules.rules(),
    ]);
    if (visit.id !== this.visit.id) return;
    this.soFar = planSoFar(documents, visit, this.today());
    const person = personIn(documents, personId);
    this.ground = person === undefined ? null : { person, rules };
    this.proposeNow();
    if (this.draft !== emptyDraft || this.typed !== '') return;
    if (begun !== null) {
      this.draft = begunDraft(begun.items, this.today());
      this.typed = begun.typed;
      this.begunAt = begun.at.slice(0, 10);
      return;
    }
    if (items.length === 0) return;
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
        ${this.begunLine()}
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

  /** Lines that were found again are looked through, or go by one press. */
  private begunLine(): TemplateResult | typeof nothing {
    if (this.begunAt === null) return nothing;
    return html`<p class="voice" role="status">${fill(PLAN_WORDS.begun, { day: dayOf(this.begunAt) })}</p>
      <button
        type="button"
        @click=${() => {
          this.begunAt = null;
          this.typed = '';
          this.set(emptied(this.draft), -1);
        }}
      >
        ${PLAN_WORDS['take-away'].text}
      </button>`;
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
    if (this.soFar === null) return nothing;
    return html`<plan-so-far-part
      .plan=${this.soFar}
      @so-far-taken=${({ detail }: SoFarTaken) => this.set(taken(this.draft, detail, this.today()), -1)}
      @so-far-ended=${() => void this.keep([], true)}
    ></plan-so-far-part>`;
  }

  private choices(): TemplateResult {
    const words = PLAN_WORDS;
    return html`
      <plan-choices
        .visit=${this.visit}
        .facts=${this.facts()}
        .items=${this.draft.items}
        .rules=${this.ground?.rules ?? GUIDANCE_RULES}
        today=${this.today()}
        @line-chosen=${({ detail }: LineChosen) => this.add(detail)}
        @line-dropped=${({ detail }: LineDropped) => this.set(removed(this.draft, detail), -1)}
      ></plan-choices>
      <section>
        <label for="own">${words.own.text}</label>
        <textarea
          id="own"
          rows="2"
          aria-describedby="own-help"
          .value=${this.typed}
          @input=${(event: Event) => {
            this.typed = (event.target as HTMLTextAreaElement).value;
            this.keeper.typed(this.begun());
          }}
        ></textarea>
        <p class="quiet" id="own-help">${fill(words['own-help'], { most: planLinesMost })}</p>
      </section>
    `;
  }

  /** What was added stands open where it has numbers to look at. */
  private add(line: PlanItem): void {
    this.set(added(this.draft, line), line.of === 'advice' ? -1 : this.draft.items.length);
  }

  private set(draft: PlanDraft, opened: number): void {
    this.draft = draft;
    this.opened = opened;
    this.keeper.pressed(this.begun());
  }

  /** What stands here, as it is written down to be here again after a reload. */
  private begun(): BegunPlan {
    return { items: this.draft.items, typed: this.typed };
  }

  private async keep(items: readonly PlanItem[], ended = false): Promise<void> {
    try {
      // what was begun comes before what is kept
      await this.keeper.flush();
      const planItemIds = await this.book.notes.keepPlan(this.visit, items);
      this.failed = false;
      this.dispatchEvent(visitEvent({ kind: 'visit-plan', planItemIds, ...(ended ? { ended } : {}) }));
    } catch {
      this.failed = true;
    }
  }
}
