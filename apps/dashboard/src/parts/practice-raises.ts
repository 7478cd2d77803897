import { consume } from '@lit/context';
import { cutOffPractice, type Person, practiceFor, type SetChoice, type Visit } from '@surae/casebook';
import { PRACTICE_WORDS, type Protocol, WARM_UP } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type Assessor,
  assessorContext,
  type BeatSound,
  bookContext,
  clockContext,
  type HostClock,
  type SensorMaker,
  sensorContext,
  soundContext,
} from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { PracticeSession } from '../live/practice-session.ts';
import { beatsPerMinute } from '../live/protocol-choices.ts';
import { setRequest } from '../live/set-request.ts';
import { sourceWords } from '../live/source-words.ts';
import { targetLine } from '../live/target-line.ts';
import { warmUpTime } from '../live/warm-up-time.ts';
import { practiceHeights, practiceMost } from '../result/practice-again.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './cut-off-practice.ts';
import { foldStyle } from './fold-style.ts';

/** Warm-up and practice before a set, folded away: whoever wants none of it presses nothing. */
@customElement('practice-raises')
export class PracticeRaises extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      .part {
        display: grid;
        gap: var(--gap-2);
        justify-items: start;
        margin-block: var(--gap-3);
      }
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) protocol!: Protocol;
  /** how the set after it would be begun */
  @property({ attribute: false }) choice!: SetChoice;
  /** the chosen source gives samples */
  @property({ attribute: false }) ready = false;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @consume({ context: soundContext }) private readonly sound!: BeatSound;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  @state() private doing: 'nothing' | 'starting' | 'raising' | 'looking' = 'nothing';
  @state() private count = 0;
  @state() private problem = '';
  @state() private warmUpFromMs: number | undefined;
  @state() private nowMs = 0;
  private session: PracticeSession | undefined;
  private stopTicking: (() => void) | undefined;

  override disconnectedCallback(): void {
    this.endWarmUp();
    // left without a stop: what came is kept, and counts for nothing
    void this.session?.live.stop();
    this.session = undefined;
    super.disconnectedCallback();
  }

  private get cycleS(): number {
    return this.protocol.parameters.cycleTarget.value ?? 2;
  }

  private beginWarmUp(): void {
    const beats = beatsPerMinute(this.protocol.parameters);
    if (beats !== null) this.sound.start(beats);
    this.warmUpFromMs = this.nowMs = this.clock.nowMs();
    this.stopTicking = this.clock.every(250, () => {
      this.nowMs = this.clock.nowMs();
      if (this.warmUp()?.phase !== 'raising') this.sound.stop();
      if (this.warmUp()?.phase === 'over') this.stopTicking?.();
    });
  }

  private endWarmUp(): void {
    this.stopTicking?.();
    if (this.warmUpFromMs !== undefined) this.sound.stop();
    this.warmUpFromMs = undefined;
  }

  private warmUp(): ReturnType<typeof warmUpTime> | undefined {
    if (this.warmUpFromMs === undefined) return undefined;
    return warmUpTime((this.nowMs - this.warmUpFromMs) / 1000, this.cycleS);
  }

  private async begin(): Promise<void> {
    const { book, clock, visit, choice, person } = this;
    this.endWarmUp();
    this.problem = '';
    this.count = 0;
    this.doing = 'starting';
    try {
      const sensor = this.sensors.make(choice, person);
      this.session = await PracticeSession.begin(
        { book, clock, sensor, visitId: visit.id, choice, heelLeverM: person.heelLeverM },
        {
          onRaise: (_raise, count) => {
            this.count = count;
            if (count >= practiceMost) void this.stop();
          },
          onEnd: () => void this.stop(),
        },
      );
      this.doing = 'raising';
    } catch (error) {
      this.doing = 'nothing';
      this.problem = fill(PRACTICE_WORDS['not-begun'], { reason: sourceWords(error as Error) });
    }
  }

  private async stop(): Promise<void> {
    const { session, choice, protocol, person } = this;
    if (session === undefined || this.doing === 'looking') return;
    this.doing = 'looking';
    await session.live.stop();
    const trace = { groups: [session.live.log.group()] };
    this.session = undefined;
    // heights that cannot be told are none; the bytes are kept either way
    const report = await this.assessor
      .final(trace, setRequest({ choice, protocol }, person, []))
      .catch(() => undefined);
    const raises = report === undefined ? [] : practiceHeights(report);
    this.dispatchEvent(visitEvent({ kind: 'practice-stopped', practiceId: session.practiceId, raises }));
    this.doing = 'nothing';
  }

  override render(): TemplateResult {
    return html`${this.cutOff()}<details>
      <summary>${PRACTICE_WORDS.fold.text}</summary>
      <div class="part">${this.warmUpPart()}</div>
      <div class="part">${this.practicePart()}</div>
    </details>`;
  }

  private cutOff(): TemplateResult | typeof nothing {
    // the one that is recorded now is not cut off
    const left = this.doing === 'nothing' ? cutOffPractice(this.visit, this.choice.side) : undefined;
    if (left === undefined) return nothing;
    return html`<cut-off-practice .practice=${left} .heelLeverM=${this.person.heelLeverM}></cut-off-practice>`;
  }

  private warmUpPart(): TemplateResult {
    const at = this.warmUp();
    if (at === undefined || at.phase === 'over') {
      return html`<p>${fill(PRACTICE_WORDS['warm-up'], { rest: WARM_UP.rest.value })}</p>
        ${at === undefined ? nothing : html`<p role="status">${PRACTICE_WORDS['warm-up-over'].text}</p>`}
        <button type="button" ?disabled=${this.doing !== 'nothing'} @click=${() => this.beginWarmUp()}>
          ${PRACTICE_WORDS['begin-warm-up'].text}
        </button>`;
    }
    const left = fill(PRACTICE_WORDS[at.phase], { left: at.leftS });
    return html`<p role="timer" aria-label=${left}>${left}</p>
      <button type="button" @click=${() => this.endWarmUp()}>${PRACTICE_WORDS['leave-out'].text}</button>`;
  }

  private practicePart(): TemplateResult {
    const n = practiceMost;
    if (this.choice.origin === 'replayed') return html`<p class="quiet">${PRACTICE_WORDS['not-live'].text}</p>`;
    if (this.doing === 'raising' || this.doing === 'starting') {
      return html`<p role="status">${fill(PRACTICE_WORDS.running, { count: this.count, n })}</p>
        <button type="button" ?disabled=${this.doing === 'starting'} @click=${() => void this.stop()}>
          ${PRACTICE_WORDS.stop.text}
        </button>`;
    }
    if (this.doing === 'looking') return html`<p role="status">${PRACTICE_WORDS.looking.text}</p>`;
    const done = (this.visit.practice ?? []).some(
      ({ choice, stoppedAt }) => choice.side === this.choice.side && stoppedAt !== null,
    );
    return html`<p>${fill(PRACTICE_WORDS.raises, { n })}</p>
      ${done ? html`<p role="status"><strong>${this.found()}</strong></p>` : nothing}
      ${this.problem === '' ? nothing : html`<p class="voice" role="alert">${this.problem}</p>`}
      <button type="button" ?disabled=${!this.ready} @click=${() => void this.begin()}>
        ${done ? PRACTICE_WORDS.again.text : fill(PRACTICE_WORDS.begin, { n })}
      </button>`;
  }

  /** The reference that the practice gives. */
  private found(): string {
    const raises = practiceFor(this.visit, this.choice)?.raises;
    const line = targetLine([], this.protocol.parameters, raises);
    if (raises === undefined || line === undefined) return PRACTICE_WORDS['reference-unknown'].text;
    return fill(PRACTICE_WORDS.reference, { height: (100 * line.referenceM).toFixed(1), n: raises.length });
  }
}
