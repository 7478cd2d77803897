import { consume } from '@lit/context';
import type { PullReport } from '@surae/analysis';
import { type PullSet, secondsBetween } from '@surae/casebook';
import { LIVE_WORDS, PULL_WORDS, type PullProtocol } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { minutesAndSeconds } from '../journey/rest-news.ts';
import { nextTrial } from '../result/next-trial.ts';
import { effortVerdict, type TrialVerdict, trialVerdicts } from '../result/trial-verdicts.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { SpaceKey } from './space-key.ts';
import './sensor-in-hand.ts';
import './trial-list.ts';

/** What is known of the trials so far: being looked at, a report, or why there is none. */
export type SoFar = 'looking' | PullReport | { readonly why: string } | null;

/** Between two trials: what the last one gave, the rest, and what comes next. Tells `begin-trial` and `end-leg`. */
@customElement('pull-between')
export class PullBetween extends LitElement {
  static override styles = [
    base,
    css`
      .sheet {
        display: grid;
        gap: var(--gap-6) var(--gap-12);
        grid-template-columns: minmax(0, 1fr);
      }
      .verdict {
        font-size: var(--size-4);
        font-weight: 600;
        line-height: 1.15;
        margin-block-end: var(--gap-2);
      }
      .next {
        font-size: var(--size-2);
      }
      .left {
        font-size: var(--size-5);
        font-weight: 600;
        line-height: 1;
        margin: 0;
      }
      .go {
        align-content: start;
        display: grid;
        gap: var(--gap-3);
      }
      .go p {
        margin: 0;
      }
      h2 {
        font-size: var(--size-2);
      }
      @media (min-width: 60rem) {
        .sheet {
          grid-template-columns: var(--thumb-sheet, minmax(0, 3fr) minmax(0, 2fr));
        }
        .go {
          order: var(--thumb-order, 0);
        }
      }
    `,
  ];

  @property({ attribute: false }) visitId = '';
  @property({ attribute: false }) set!: PullSet;
  @property({ attribute: false }) protocol!: PullProtocol;
  @property({ attribute: false }) soFar: SoFar = null;
  /** why the last attempt to begin did nothing; empty when there was none */
  @property({ attribute: false }) problem = '';
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private leftS = 0;
  protected readonly space = new SpaceKey(
    this,
    () => this.begin(),
    () => this.leftS <= 0 && this.mayBegin,
  );
  private stopTicking: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.look();
    this.stopTicking = this.clock.every(250, () => this.look());
  }

  override disconnectedCallback(): void {
    this.stopTicking?.();
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
  }

  private get wholeS(): number {
    return this.protocol.parameters.rest.value ?? 0;
  }

  private get report(): PullReport | null {
    const { soFar } = this;
    return soFar !== null && soFar !== 'looking' && 'efforts' in soFar ? soFar : null;
  }

  /** A recording is played once; a leg of which nobody knows how it stands is not asked for more. */
  private get mayBegin(): boolean {
    return this.set.choice.origin !== 'replayed' && this.soFar !== 'looking';
  }

  private look(): void {
    const stoppedAt = this.set.trials.at(-1)?.stoppedAt ?? null;
    const restedS = stoppedAt === null ? null : secondsBetween(stoppedAt, this.clock.isoNow());
    // a clock that was set back cannot lengthen the rest
    const leftS = restedS === null ? 0 : Math.min(this.wholeS, Math.max(0, this.wholeS - restedS));
    if (Math.ceil(leftS) !== Math.ceil(this.leftS)) this.leftS = leftS;
  }

  private begin(): void {
    this.dispatchEvent(new CustomEvent('begin-trial'));
  }

  override render(): TemplateResult {
    const { set } = this;
    const { side } = set.choice;
    const least = this.protocol.parameters.leastTrials.value ?? 1;
    const done = set.trials.length;
    const title =
      done === 0
        ? fill(PULL_WORDS['trial-of'], { n: 1, least })
        : set.choice.origin === 'replayed'
          ? PULL_WORDS['of-recording'].text
          : fill(PULL_WORDS.trial, { n: done });
    return html`
      <h1 tabindex="-1">
        <span class="side" data-side=${side}>${PULL_WORDS[`title-${side}`].text}:</span> ${title}
      </h1>
      <div class="sheet">
        <div>
          ${done === 0 ? html`<p class="next">${PULL_WORDS.first.text}</p><p>${PULL_WORDS.breathe.text}</p>` : this.told()}
        </div>
        <div class="go">${this.next()}</div>
      </div>
    `;
  }

  private told(): TemplateResult {
    const { soFar, report, set } = this;
    const last = set.trials.at(-1)!;
    const notes = html`${last.cutOff ? html`<p class="voice">${PULL_WORDS['cut-off'].text}</p>` : nothing}
    ${
      last.hiddenForS === undefined
        ? nothing
        : html`<p class="voice">${fill(LIVE_WORDS['trial-hidden'], { seconds: last.hiddenForS.toFixed(0) })}</p>`
    }
    ${last.sourceLost === undefined ? nothing : html`<p class="voice">${fill(LIVE_WORDS['trial-lost'], { reason: last.sourceLost })}</p>`}
    ${last.suddenDrop ? html`<p class="voice">${PULL_WORDS.dropped.text}</p>` : nothing}`;
    if (report === null) {
      return html`${notes}
        <p class="voice" role="status">
          ${
            soFar === null || soFar === 'looking'
              ? PULL_WORDS.looking.text
              : fill(PULL_WORDS['not-looked'], { why: (soFar as { why: string }).why })
          }
        </p>`;
    }
    const isOfFile = set.choice.origin === 'replayed';
    const verdicts = trialVerdicts(report, last);
    const all = report.efforts.map((effort) => effortVerdict(effort, report.unit));
    return html`${notes}
      <div role="status">${isOfFile ? nothing : verdicts.map((verdict) => this.verdict(verdict))}</div>
      ${
        all.length === 0 || (all.length === 1 && !isOfFile)
          ? nothing
          : html`<h2>${PULL_WORDS['so-far'].text}</h2>
              <trial-list .verdicts=${all}></trial-list>`
      }`;
  }

  private verdict({ force, headline, reasons }: TrialVerdict): TemplateResult {
    return html`<p class="verdict">${force === null ? headline : `${headline}: ${force}`}</p>
      ${reasons.map((reason) => html`<p>${reason}</p>`)}`;
  }

  private next(): TemplateResult {
    const { set, leftS, wholeS } = this;
    const n = set.trials.length + 1;
    const resting = set.trials.length > 0 && leftS > 0 && this.mayBegin;
    const ended = this.isEnough();
    const endLeg = html`<button
      class=${ended ? 'main' : ''}
      type="button"
      @click=${() => this.dispatchEvent(new CustomEvent('end-leg'))}
    >
      ${PULL_WORDS[ended ? 'end-leg' : 'stop-leg'].text}
    </button>`;
    const beginNext = this.mayBegin
      ? html`<button class=${ended || resting ? '' : 'main'} type="button" @click=${() => this.begin()}>
          ${fill(PULL_WORDS[resting ? 'end-rest' : 'begin'], { n })}
        </button>`
      : nothing;
    return html`
      ${
        set.choice.origin === 'live'
          ? html`<sensor-in-hand
              .placement=${set.choice.placement}
              .test=${'isometric' as const}
              .visitId=${this.visitId}
            ></sensor-in-hand>`
          : nothing
      }
      ${this.problem === '' ? nothing : html`<p class="voice" role="alert">${this.problem}</p>`}
      <p class="next voice">${this.asked()}</p>
      ${
        resting && !ended
          ? html`<p class="left" role="timer" aria-live="off" aria-label=${minutesAndSeconds(leftS)}>${minutesAndSeconds(leftS)}</p>
              <p class="quiet">${fill(PULL_WORDS['rest-left'], { whole: minutesAndSeconds(wholeS) })}</p>`
          : nothing
      }
      ${set.trials.length > 0 && !resting && !ended && this.mayBegin ? html`<p role="status">${PULL_WORDS['rest-over'].text}</p>` : nothing}
      ${ended ? html`${endLeg} ${beginNext}` : html`${beginNext} ${resting ? nothing : html`<p class="quiet">${PULL_WORDS['begin-hint'].text}</p>`} ${endLeg}`}
    `;
  }

  private isEnough(): boolean {
    if (this.set.trials.length === 0 || this.soFar === 'looking') return false;
    if (this.set.choice.origin === 'replayed') return true;
    return this.report !== null && nextTrial(this.report, this.protocol.parameters).kind !== 'another';
  }

  /** Whether more is asked for, in words; nothing before the first trial. */
  private asked(): string {
    const { report, set, protocol } = this;
    if (set.trials.length === 0 || report === null) return '';
    if (set.choice.origin === 'replayed') return PULL_WORDS['recording-over'].text;
    const next = nextTrial(report, protocol.parameters);
    if (next.kind === 'enough') return PULL_WORDS.enough.text;
    if (next.kind === 'most-reached') return PULL_WORDS[`most-${next.why}`].text;
    const left = (protocol.parameters.leastTrials.value ?? 0) - (report.trials?.accepted.length ?? 0);
    return fill(PULL_WORDS[`ask-${next.why}`], { left });
  }
}
