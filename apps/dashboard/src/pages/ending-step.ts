import { consume } from '@lit/context';
import type { Report, Side } from '@surae/analysis';
import { type Person, setOf, type Visit } from '@surae/casebook';
import { ENDING_WORDS, HAND_WORDS, LIVE_WORDS, PROTOCOLS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Assessor, assessorContext, storeContext } from '../contexts/capabilities.ts';
import { endedByPop, endsOf, notedPainPeak, painLimitOf } from '../journey/ends.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { EndAccepted } from '../parts/ending-questions.ts';
import '../parts/ending-questions.ts';
import { PopTold } from '../parts/pop-told.ts';
import type { DoneAgain } from '../parts/redo-choice.ts';
import { earlyReport } from '../result/early-report.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** How a set ended: what was seen while it ran, and the questions of its end. */
@customElement('ending-step')
export class EndingStep extends LitElement {
  static override styles = base;

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property() side: Side = 'left';
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  /** kept nowhere: the one that is stored is made when the end is told */
  @state() private early: Report | null = null;
  private readonly earlyOf = new Set<string>();
  private readonly pop = new PopTold(this);

  protected override updated(): void {
    const set = setOf(this.visit, this.side);
    if (set === undefined || set.report !== null || this.earlyOf.has(set.id)) return;
    this.earlyOf.add(set.id);
    this.early = null;
    earlyReport(this.visit, set, this.person, this.store, this.assessor).then(
      (report) => (this.early = report),
      // the page of the result tries again, and says why where it cannot
      () => (this.early = null),
    );
  }

  override render(): TemplateResult {
    const set = setOf(this.visit, this.side);
    if (set === undefined) return html``;
    const { id: setId, liveCount, sourceLost, choice } = set;
    if (this.pop.isToldOf(setId))
      return this.pop.steps(this.side, this.visit.safety, {
        kind: 'set-end',
        setId,
        end: endedByPop(notedPainPeak(set)),
      });
    const protocol = PROTOCOLS.find(({ id }) => id === choice.protocolId);
    return html`
      <h1><span class="side" data-side=${this.side}>${ENDING_WORDS[`title-${this.side}`].text}</span></h1>
      ${
        liveCount === null
          ? nothing
          : html`<p class="quiet">${fill(
              choice.placement === 'hand' ? HAND_WORDS['ended-with'] : ENDING_WORDS['live-count'],
              { count: liveCount },
            )}</p>`
      }
      ${
        sourceLost === undefined
          ? nothing
          : html`<p class="voice" role="status">${fill(LIVE_WORDS.technical, { reason: sourceLost })}</p>`
      }
      <ending-questions
        .words=${ENDING_WORDS}
        .ends=${endsOf(protocol)}
        .painLimit=${painLimitOf(protocol)}
        .known=${{ painPeak: notedPainPeak(set), ...(sourceLost === undefined ? {} : { reason: 'technical' }) }}
        @pop-told=${() => this.pop.tell(setId)}
        @end-accepted=${({ detail: end }: EndAccepted) =>
          this.dispatchEvent(visitEvent({ kind: 'set-end', setId, end }))}
        @done-again=${({ detail: why }: DoneAgain) => this.dispatchEvent(visitEvent({ kind: 'set-aside', setId, why }))}
      ></ending-questions>
      ${this.early === null ? nothing : html`<set-verdicts .set=${set} .early=${this.early}></set-verdicts>`}
    `;
  }
}
