import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { type Person, setOf, type Visit, type VisitSet } from '@surae/casebook';
import { COMPARISON_RULES, ENDING_WORDS, HAND_WORDS, REST_WORDS, SAME_LEG_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  type Assessor,
  assessorContext,
  clockContext,
  type HostClock,
  storeContext,
} from '../contexts/capabilities.ts';
import { minutesAndSeconds } from '../journey/rest-news.ts';
import { otherSide } from '../journey/steps.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { SideRest } from '../live/side-rest.ts';
import type { DoneAgain } from '../parts/redo-choice.ts';
import '../parts/legs-swap.ts';
import '../parts/redo-choice.ts';
import { earlyReport } from '../result/early-report.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { restStyle } from './rest-style.ts';
import { restTime } from './rest-time.ts';

const wholeS = COMPARISON_RULES.restLeast.value;
const whole = minutesAndSeconds(wholeS);

/** The rest between the two sides: it runs from the stop of the first set, also over a reload. */
@customElement('rest-step')
export class RestStep extends LitElement {
  static override styles = [base, restStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** the side that comes after the rest */
  @property() side: Side = 'right';
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  private readonly rest = new SideRest(this, {
    wholeS,
    clock: () => this.clock,
    // also one that does not count was work
    stoppedAt: () => this.visit.sets.findLast(({ choice }) => choice.side === otherSide(this.side))?.stoppedAt,
  });

  protected override firstUpdated(): void {
    const first = setOf(this.visit, otherSide(this.side));
    if (first?.report === null) void this.assess(first);
  }

  /** The final pass over the first set, while there is time; what is not ready when the rest ends is done with the result. */
  private async assess(set: VisitSet): Promise<void> {
    const { setResult } = await import('../result/set-result.ts');
    try {
      const report = await earlyReport(this.visit, set, this.person, this.store, this.assessor);
      this.dispatchEvent(visitEvent(setResult(set.id, report)));
    } catch {
      // the page of the result tries again, and says why where it cannot
    }
  }

  override render(): TemplateResult {
    const over = this.rest.leftS === 0;
    return html`
      <h1>${REST_WORDS[over ? 'title-over' : 'title'].text}</h1>
      <p><span class="side" data-side=${this.side}>${REST_WORDS[`next-${this.side}`].text}</span></p>
      ${restTime(this.rest.leftS, wholeS)}
      <p class="unseen" aria-live="polite">${this.rest.news === undefined ? '' : REST_WORDS[this.rest.news].text}</p>
      ${this.firstResult()}
      <div class="go">
        <p>${SAME_LEG_WORDS[`rest-${this.side}`].text}</p>
        ${over ? null : html`<p class="voice" id="price">${fill(REST_WORDS['early-price'], { whole })}</p>`}
        <button class=${over ? 'main' : ''} type="button" @click=${() => this.goOn()}>
          ${REST_WORDS[over ? (`go-on-${this.side}` as const) : 'end-early'].text}
        </button>
      </div>
      <legs-swap .visit=${this.visit} test="heel-raise"></legs-swap>
      ${this.again()}
    `;
  }

  /** The count of the first side, while there is time to look at it. */
  private firstResult(): TemplateResult | null {
    const first = otherSide(this.side);
    const set = setOf(this.visit, first);
    if (set === undefined) return null;
    const count = set.report?.count;
    const number = count?.attempted ?? set.liveCount;
    const byHand = set.choice.placement === 'hand';
    return html`<section class="first" aria-label=${REST_WORDS[`first-${first}`].text}>
      <p><span class="side" data-side=${first}>${REST_WORDS[`first-${first}`].text}</span></p>
      ${
        number === null
          ? html`<p class="quiet">${REST_WORDS['not-counted'].text}</p>`
          : html`<p>
              <span class="number">${number}</span>
              <span class="quiet">${
                byHand ? HAND_WORDS.label.text : REST_WORDS[count === undefined ? 'counted' : 'attempted'].text
              }</span>
            </p>`
      }
      ${
        count === undefined
          ? null
          : html`<p class="quiet">${
              byHand
                ? fill(HAND_WORDS.between, { low: count.low, high: count.high })
                : fill(REST_WORDS.valid, { count: count.valid })
            }</p>`
      }
      ${set.report === null ? null : html`<set-verdicts .set=${set}></set-verdicts>`}
    </section>`;
  }

  /** What the verdicts show may be a reason to do it again. */
  private again(): TemplateResult | null {
    const set = setOf(this.visit, otherSide(this.side));
    if (set === undefined) return null;
    return html`<redo-choice
      side=${otherSide(this.side)}
      .why=${ENDING_WORDS['redo-why'].text}
      .tired=${ENDING_WORDS['redo-tired'].text}
      @done-again=${({ detail: why }: DoneAgain) =>
        this.dispatchEvent(visitEvent({ kind: 'set-aside', setId: set.id, why }))}
    ></redo-choice>`;
  }

  private goOn(): void {
    // what is not known counts as no rest: it then keeps from a ratio, and never from going on
    const restS = Math.max(0, this.rest.restedS() ?? 0);
    this.dispatchEvent(visitEvent({ kind: 'rest-over', restS }));
  }
}
