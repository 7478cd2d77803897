import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import {
  endedWithPop,
  isUntested,
  noOwnErrors,
  type OwnErrorsInUse,
  openTest,
  type Person,
  type PullSet,
  poppedSide,
  pullSetOf,
  setOf,
  testsOf,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import {
  COMPARISON_RULES,
  COURSE_WORDS,
  LEGS_WORDS,
  MORNINGS_IN_PLACE,
  REPORT_PLACE,
  RESULT_WORDS,
  SCOPE_SENTENCES,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type Assessor, assessorContext, storeContext } from '../contexts/capabilities.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import '../parts/ladder-lines.ts';
import '../parts/comparison-list.ts';
import '../parts/legs-swap.ts';
import '../parts/new-start.ts';
import '../parts/pull-result.ts';
import '../parts/two-legs-axis.ts';
import './pull-detail.ts';
import { assessmentProgress } from '../parts/assessment-progress.ts';
import { assessSet, setsToAssess } from '../result/assessment.ts';
import { Assessments } from '../result/assessments.ts';
import { cautions, legName } from '../result/cautions.ts';
import { comparisonsOf } from '../result/comparisons.ts';
import { handSentences } from '../result/hand-verdicts.ts';
import { liveDifference } from '../result/live-difference.ts';
import { practiceAgain } from '../result/practice-again.ts';
import { assessPullSet, pullsToAssess } from '../result/pull-assessment.ts';
import { pullResult } from '../result/pull-kept.ts';
import { pullCautions } from '../result/pull-sentences.ts';
import { referenceLines } from '../result/reference-lines.ts';
import { setResult } from '../result/set-result.ts';
import { attemptedSentence, summarySentence } from '../result/summary-sentence.ts';
import { twoLegFigures } from '../result/two-legs.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import './set-detail.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** How a person and the final pass count, where a person judged by hand. */
function handLine(set: VisitSet): string[] {
  const said = handSentences(set);
  return said.length === 0 ? [] : [`${legName(set.choice.side)}: ${said.join(' ')}`];
}

/** What the two legs did: a sentence first, then both on one axis, then what it takes to judge that for oneself. */
@customElement('result-step')
export class ResultStep extends LitElement {
  static override styles = [
    base,
    css`
      .sentence {
        font-size: var(--size-3);
        line-height: 1.25;
        max-inline-size: 40ch;
        text-wrap: balance;
        margin-block-end: var(--gap-6);
      }
      .axes {
        display: grid;
        gap: 0 var(--gap-8);
        grid-template-columns: minmax(0, 1fr);
        margin-block: var(--gap-6);
      }
      .progress button {
        margin-block-end: var(--gap-6);
      }
      @media (min-width: 40rem) {
        .axes {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
        .axes > :first-child {
          grid-column: 1 / -1;
        }
      }
      @media (min-width: 64rem) {
        .axes {
          grid-template-columns: repeat(3, minmax(0, 1fr));
        }
        .axes > :first-child {
          grid-column: auto;
        }
      }
      section {
        margin-block: var(--gap-6);
      }
      h2 {
        font-size: var(--size-2);
      }
      ul {
        margin: 0;
        padding-inline-start: 1.2em;
      }
      li {
        margin-block-end: var(--gap-2);
        max-inline-size: var(--line);
      }
      .end {
        display: grid;
        gap: var(--gap-3);
        margin-block-start: var(--gap-8);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  /** errors of measurement that the clinic found itself */
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  private readonly assessments = new Assessments<VisitSet>(this, (set) => this.assess(set));

  private readonly pullAssessments = new Assessments<PullSet>(this, (set) => this.assessPushes(set));

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit')) return;
    this.assessments.begin(setsToAssess(this.visit));
    this.pullAssessments.begin(pullsToAssess(this.visit));
  }

  private async assess(set: VisitSet): Promise<void> {
    const bytes = await this.store.bytes(set.bytesId);
    const final: Assessor['final'] = (trace, request) => this.assessor.final(trace, request);
    const practice = await practiceAgain(this.visit, set, this.person, (id) => this.store.bytes(id), final);
    const report = await assessSet(set, this.person, bytes, final, { practice });
    this.dispatchEvent(visitEvent(setResult(set.id, report)));
  }

  private async assessPushes(set: PullSet): Promise<void> {
    const report = await assessPullSet(
      set,
      this.person,
      (id) => this.store.bytes(id),
      (trace, request) => this.assessor.pulls(trace, request),
    );
    this.dispatchEvent(visitEvent(pullResult(set.id, report)));
  }

  override render(): TemplateResult {
    const { visit } = this;
    const sets = sides.flatMap((side) => setOf(visit, side) ?? []);
    const tests = isUntested(visit) ? [] : testsOf(visit);
    return html`
      <h1 tabindex="-1">${RESULT_WORDS.title.text}</h1>
      ${tests.length === 0 ? html`<p class="sentence">${RESULT_WORDS.untested.text}</p>` : nothing}
      ${tests.map((test) =>
        test === 'heel-raise'
          ? this.raises(sets)
          : html`<pull-result
              .visit=${visit}
              .person=${this.person}
              .earlier=${this.earlier}
              .own=${this.own}
              .assessments=${this.pullAssessments}
            ></pull-result>`,
      )}
      <ladder-lines .visit=${visit}></ladder-lines>
      ${this.references()} ${this.cautions()} ${tests.map((test) => (test === 'heel-raise' ? this.details(sets) : this.pullDetails()))}
      ${this.end(sets)}
    `;
  }

  private references(): TemplateResult {
    const { each, lower } = referenceLines(this.visit);
    return html`${each.map((line) => html`<p class="quiet">${line}</p>`)}
    ${lower.map((line) => html`<p class="voice">${line}</p>`)}`;
  }

  private raises(sets: readonly VisitSet[]): TemplateResult {
    const { visit } = this;
    return html`
      <p class="sentence">${summarySentence(visit)}</p>
      <div class="progress" role="status">${sets.map((set) => assessmentProgress(this.assessments, set))}</div>
      <div class="axes">
        ${twoLegFigures(visit).map((figures) => html`<two-legs-axis .figures=${figures}></two-legs-axis>`)}
      </div>
      <legs-swap .visit=${visit} test="heel-raise"></legs-swap>
      <new-start .visit=${visit} .person=${this.person} .earlier=${this.earlier} .own=${this.own}></new-start>
      ${this.compared(sets)} ${this.explained(sets)}
    `;
  }

  private details(sets: readonly VisitSet[]): TemplateResult[] {
    return sets
      .filter(({ stoppedAt }) => stoppedAt !== null)
      .map(
        (set) => html`<set-detail
            .set=${set}
            .visit=${this.visit}
            .heelLeverM=${this.person.heelLeverM}
            .person=${this.person}
            .earlier=${this.earlier}
            .own=${this.own}
          ></set-detail>`,
      );
  }

  private pushes(): readonly PullSet[] {
    return sides.flatMap((side) => pullSetOf(this.visit, side) ?? []);
  }

  private pullDetails(): TemplateResult[] {
    return this.pushes().map((set) => html`<pull-detail .set=${set} .visit=${this.visit}></pull-detail>`);
  }

  private explained(tested: readonly VisitSet[]): TemplateResult {
    // of what a pop ended nothing is counted up
    const sets = tested.filter((set) => !endedWithPop(set));
    const lines = [
      ...sets.flatMap(({ choice, report }) => (report && attemptedSentence(choice.side, report)) ?? []),
      ...sets.flatMap((set) => liveDifference(set).join(' ') || []),
      ...sets.flatMap((set) => handLine(set)),
    ];
    if (lines.length === 0) return html``;
    return html`<section>
      <h2>${RESULT_WORDS.counted.text}</h2>
      ${lines.map((line) => html`<p>${line}</p>`)}
    </section>`;
  }

  private cautions(): TemplateResult {
    return html`<section>
      <h2>${RESULT_WORDS.cautions.text}</h2>
      <ul>
        ${[...cautions(this.visit), ...pullCautions(this.visit, COMPARISON_RULES.restLeast.value)].map(
          ({ side, text }) =>
            html`<li>
              ${side === null ? nothing : html`<span class="side" data-side=${side}>${legName(side)}</span>: `}${text}
            </li>`,
        )}
        <li>${SCOPE_SENTENCES.scope.text}</li>
      </ul>
    </section>`;
  }

  /** What is known of both legs, once nothing is left to be assessed. */
  private compared(sets: readonly VisitSet[]): TemplateResult | typeof nothing {
    if (this.assessments.isAnyRunning(sets) || sets.every(({ report }) => report === null)) return nothing;
    const comparisons = comparisonsOf(this.visit, this.person, this.earlier, this.own);
    return html`<comparison-list .comparisons=${comparisons}></comparison-list>`;
  }

  private end(sets: readonly VisitSet[]): TemplateResult {
    const allPeople = html`<a class="button" href=${hashOf({ page: 'start' })}>${RESULT_WORDS['all-people'].text}</a>`;
    if (this.visit.closed)
      return html`<div class="end">
        <p class="quiet">${RESULT_WORDS.closed.text}</p>
        <a class="button" href=${hashOf({ page: 'legs', visitId: this.visit.id })}>${LEGS_WORDS.show.text}</a>
        <a class="button" href=${hashOf({ page: 'report', visitId: this.visit.id })}>${REPORT_PLACE.link.text}</a>
        <a class="button" href=${hashOf({ page: 'course', personId: this.visit.personId })}>${COURSE_WORDS['from-result'].text}</a>
        <a class="button" href=${hashOf({ page: 'mornings', personId: this.visit.personId })}>
          ${MORNINGS_IN_PLACE.link.text}
        </a>
        ${allPeople}
      </div>`;
    // one goes on from what was found, by either test
    const waiting = this.assessments.isAnyRunning(sets) || this.pullAssessments.isAnyRunning(this.pushes());
    return html`<div class="end">
      <button class="main" type="button" ?disabled=${waiting} @click=${() => this.goOn()}>
        ${RESULT_WORDS.close.text}
      </button>
      ${this.anotherTest()}
    </div>`;
  }

  private anotherTest(): TemplateResult | typeof nothing {
    const test = openTest(this.visit);
    if (test === null || poppedSide(this.visit) !== null) return nothing;
    return html`<button type="button" @click=${() => this.dispatchEvent(visitEvent({ kind: 'visit-test', test }))}>
      ${TEST_CHOICE_WORDS[`add-${test}`].text}
    </button>`;
  }

  private goOn(): void {
    this.dispatchEvent(visitEvent({ kind: 'result-seen' }));
  }
}
