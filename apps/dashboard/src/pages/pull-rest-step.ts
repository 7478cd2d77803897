import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { type Person, type PullSet, pullSetOf, type Visit } from '@surae/casebook';
import { COMPARISON_RULES, PULL_REST_WORDS, REST_WORDS, SAME_LEG_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
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
import { forceWords } from '../result/trial-verdicts.ts';
import '../parts/legs-swap.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { restStyle } from './rest-style.ts';
import { restTime } from './rest-time.ts';

const wholeS = COMPARISON_RULES.restLeast.value;
const whole = minutesAndSeconds(wholeS);

/** The rest between the two legs of the isometric test: it runs from the end of the first leg, also over a reload. */
@customElement('pull-rest-step')
export class PullRestStep extends LitElement {
  static override styles = [base, restStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** the side that comes after the rest */
  @property({ attribute: false }) side!: Side;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  private readonly rest = new SideRest(this, {
    wholeS,
    clock: () => this.clock,
    // also one that does not count was work
    stoppedAt: () => this.visit.pulls?.findLast(({ choice }) => choice.side === otherSide(this.side))?.stoppedAt,
  });

  protected override firstUpdated(): void {
    const first = this.first;
    if (first?.report === null && first.trials.length > 0) void this.assess(first);
  }

  private get first(): PullSet | undefined {
    return pullSetOf(this.visit, otherSide(this.side));
  }

  /** The final pass over the first leg, while there is time; what is not ready when the rest ends is done with the result. */
  private async assess(set: PullSet): Promise<void> {
    const [{ assessPullSet }, { pullResult }] = await Promise.all([
      import('../result/pull-assessment.ts'),
      import('../result/pull-kept.ts'),
    ]);
    try {
      const report = await assessPullSet(
        set,
        this.person,
        (id) => this.store.bytes(id),
        (trace, request) => this.assessor.pulls(trace, request),
      );
      this.dispatchEvent(visitEvent(pullResult(set.id, report)));
    } catch {
      // the page of the result tries again, and says why where it cannot
    }
  }

  override render(): TemplateResult {
    const { side } = this;
    const over = this.rest.leftS === 0;
    return html`
      <h1>${REST_WORDS[over ? 'title-over' : 'title'].text}</h1>
      <p><span class="side" data-side=${side}>${REST_WORDS[`next-${side}`].text}</span></p>
      ${restTime(this.rest.leftS, wholeS)}
      <p class="unseen" aria-live="polite">${this.rest.news === undefined ? '' : REST_WORDS[this.rest.news].text}</p>
      ${this.firstLeg()}
      <div class="go">
        <p>${SAME_LEG_WORDS[`rest-${side}`].text}</p>
        ${over ? nothing : html`<p class="voice">${fill(PULL_REST_WORDS['early-price'], { whole })}</p>`}
        <button class=${over ? 'main' : ''} type="button" @click=${() => this.goOn()}>
          ${REST_WORDS[over ? (`go-on-${side}` as const) : 'end-early'].text}
        </button>
      </div>
      <legs-swap .visit=${this.visit} test="isometric"></legs-swap>
    `;
  }

  private firstLeg(): TemplateResult {
    const first = otherSide(this.side);
    const report = this.first?.report;
    const net = report?.score.net ?? null;
    return html`<section class="first" aria-label=${REST_WORDS[`first-${first}`].text}>
      <p><span class="side" data-side=${first}>${REST_WORDS[`first-${first}`].text}</span></p>
      ${
        report == null || net === null
          ? html`<p class="quiet">${REST_WORDS['not-counted'].text}</p>`
          : html`<p><span class="number">${forceWords(net.value, report.unit)}</span></p>
              <p class="quiet">${PULL_REST_WORDS['first-leg'].text}</p>`
      }
    </section>`;
  }

  private goOn(): void {
    // what is not known counts as no rest: it is then said with the result, and never keeps from going on
    const restS = Math.max(0, this.rest.restedS() ?? 0);
    this.dispatchEvent(visitEvent({ kind: 'pull-rest-over', restS }));
  }
}
