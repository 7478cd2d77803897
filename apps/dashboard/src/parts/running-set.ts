import { consume } from '@lit/context';
import type { LiveState } from '@surae/analysis';
import type { SampleBlock } from '@surae/sensors';
import { type CriterionId, TEST_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
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
  storeContext,
} from '../contexts/capabilities.ts';
import type { Person } from '../journey/person.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { FlatWatch } from '../live/flat-watch.ts';
import { type LastVerdict, lastVerdict } from '../live/last-verdict.ts';
import { ScreenWake } from '../live/screen-wake.ts';
import { setNotes } from '../live/set-notes.ts';
import type { SetPlan } from '../live/set-plan.ts';
import { SetSession } from '../live/set-session.ts';
import { targetLine } from '../live/target-line.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './beat-pendulum.ts';
import './count-display.ts';
import type { CountDisplay } from './count-display.ts';
import './fault-marks.ts';
import './height-ruler.ts';
import type { HeightRuler } from './height-ruler.ts';
import './pain-scale.ts';
import { runningStyle } from './running-style.ts';
import './stop-bar.ts';
import type { RecordStore } from '@surae/storage';

const flatForS = 2;
const lookEveryMs = 250;

/** A set while it runs, and nothing else on the screen. */
@customElement('running-set')
export class RunningSet extends LitElement {
  static override styles = [base, runningStyle];

  @property({ attribute: false }) visitId = '';
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) plan!: SetPlan;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @consume({ context: soundContext }) private readonly sound!: BeatSound;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  @state() private verdict: LastVerdict | undefined;
  @state() private said = '';
  @state() private lines: readonly string[] = [];
  @state() private log: readonly string[] = [];
  @state() private prompts = 0;
  @state() private pain: number | null = null;
  @state() private isMuted = false;
  @query('count-display') private readonly count!: CountDisplay;
  @query('height-ruler') private readonly ruler!: HeightRuler;
  private session: SetSession | undefined;
  private readonly marks: { atS: number; criterion: CriterionId }[] = [];
  private readonly flat = new FlatWatch(flatForS);
  private readonly wake = new ScreenWake();
  private endLooks: () => void = () => {};
  private unsaved: string | null = null;
  private hiddenAtMs: number | undefined;
  private heightM = 0;
  private hasFrame = false;
  private isOver = false;
  private beatSinceMs = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: true, bubbles: true, composed: true }));
    document.addEventListener('visibilitychange', this.onVisibility);
    void this.wake.hold();
    this.beatSinceMs = this.clock.nowMs() - this.plan.beatFromMs;
  }

  override disconnectedCallback(): void {
    document.removeEventListener('visibilitychange', this.onVisibility);
    this.letGo();
    // left without a stop: what came is kept, and the page asks what to do with it when it is opened again
    if (!this.isOver) void this.session?.live.stop();
    this.isOver = true;
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    void this.begin();
  }

  private async begin(): Promise<void> {
    const { choice } = this.plan;
    const { book, store, clock, visitId } = this;
    const heelLeverM = this.person.heelLeverM;
    try {
      const sensor = this.sensors.make(choice);
      const session = await SetSession.begin(
        { book, store, clock, sensor, visitId, choice, heelLeverM },
        {
          onSamples: (live, block) => this.onSamples(live, block),
          onRaise: (_raise, count, block) => this.onRaise(count, block),
          onEnd: () => void this.stop(),
          onUnsaved: ({ message }) => {
            this.unsaved = message;
            this.look();
          },
        },
      );
      this.session = session;
      this.endLooks = clock.every(lookEveryMs, () => this.look());
      if (this.isOver) void session.live.stop();
    } catch (error) {
      this.isOver = true;
      this.letGo();
      const detail = error instanceof Error ? error.message : String(error);
      this.dispatchEvent(new CustomEvent('set-not-started', { detail }));
    }
  }

  private onSamples({ heightM }: LiveState, block: SampleBlock): void {
    this.heightM = heightM;
    this.flat.add(block);
    if (this.hasFrame) return;
    this.hasFrame = true;
    requestAnimationFrame(() => {
      this.hasFrame = false;
      this.ruler.draw(this.heightM);
    });
  }

  private onRaise(count: number, block: SampleBlock | undefined): void {
    this.count.show(count, block?.hostTimeMs);
    const { session, plan, person } = this;
    const raise = session?.live.raises.at(-1);
    if (session === undefined || raise === undefined) return;
    this.verdict = lastVerdict(count, raise, undefined);
    if (block === undefined) return;
    const { choice, protocol } = plan;
    const { bodyMassKg, heelLeverM } = person;
    const subject = { ...(bodyMassKg === null ? {} : { bodyMassKg }), ...(heelLeverM === null ? {} : { heelLeverM }) };
    const context = { marks: this.marks };
    const request = { placement: choice.placement, side: choice.side, protocol, subject, context };
    const asked = this.assessor.soFar({ groups: [session.live.log.group()] }, request);
    void asked.then(
      (report) => {
        if (report === undefined || session.live.raises.at(-1) !== raise) return;
        this.verdict = lastVerdict(count, raise, report);
        this.said = this.verdictText();
      },
      // a set so far can be too short to be judged: the count stands, and the whole set is judged at its end
      () => undefined,
    );
  }

  /** Stops the set. The first call counts: there is nothing to ask and nothing to undo. */
  private async stop(): Promise<void> {
    const { session } = this;
    if (session === undefined || this.isOver) return;
    this.isOver = true;
    this.letGo();
    const stopped = await session.live.stop();
    this.dispatchEvent(new CustomEvent('set-over', { detail: { session, stopped, reason: this.unsaved } }));
  }

  private letGo(): void {
    this.endLooks();
    this.sound.stop();
    this.wake.release();
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: false, bubbles: true, composed: true }));
  }

  private look(): void {
    const { session, prompts, pain, unsaved, plan } = this;
    const count = session?.live.raises.length ?? 0;
    const isFlat = this.flat.isFlat(this.clock.nowMs());
    const timeS = session?.timeS ?? 0;
    const lines = setNotes({ count, timeS, isFlat, pain, prompts, unsaved, parameters: plan.protocol.parameters });
    if (lines.join('\n') !== this.lines.join('\n')) this.lines = lines;
  }

  private readonly onVisibility = (): void => {
    const now = this.clock.nowMs();
    if (document.hidden) {
      this.hiddenAtMs = now;
      return;
    }
    void this.wake.hold();
    if (this.hiddenAtMs === undefined) return;
    const seconds = Math.round((now - this.hiddenAtMs) / 1000);
    const time = Math.max(0, (this.session?.timeS ?? 0) - seconds).toFixed(0);
    this.hiddenAtMs = undefined;
    this.log = [...this.log, fill(TEST_WORDS.hidden, { time, seconds })];
  };

  private async mark(criterion: CriterionId): Promise<void> {
    const { session } = this;
    if (session === undefined) return;
    try {
      const mark = await session.mark(criterion);
      this.marks.push(mark);
      const values = { time: mark.atS.toFixed(1), fault: TEST_WORDS[criterion as 'knee'].text };
      this.log = [...this.log, fill(TEST_WORDS.marked, values)];
    } catch (error) {
      this.unsaved = error instanceof Error ? error.message : String(error);
    }
    this.look();
  }

  private prompt(): void {
    this.prompts = (this.prompts + 1) % 3;
    this.look();
  }

  private say(pain: number): void {
    this.pain = pain;
    this.look();
  }

  private turnSound(): void {
    this.isMuted = !this.isMuted;
    const { beatsPerMinute } = this.plan;
    if (this.isMuted) this.sound.stop();
    else if (beatsPerMinute !== null) this.sound.start(beatsPerMinute);
  }

  private verdictText(): string {
    if (this.verdict === undefined) return TEST_WORDS.waiting.text;
    const { repetition, sentence } = this.verdict;
    return fill(TEST_WORDS.verdict, { n: repetition, verdict: sentence.text });
  }

  override render(): TemplateResult {
    const { choice, protocol } = this.plan;
    return html`
      <h1 class="head" tabindex="-1">
        <span class="side" data-side=${choice.side}>${TEST_WORDS[choice.side].text}</span>
        <span class="quiet">${protocol.title}</span>
      </h1>
      <count-display></count-display>
      <p class="verdict">${this.verdictText()}</p>
      <p class="unseen" aria-live="polite">${this.said}</p>
      ${this.scale()}
      <div class="controls">
        <div class="notes" role="status">${this.lines.map((line) => html`<p class="voice">${line}</p>`)}</div>
        ${this.log.length === 0 ? nothing : html`<p class="kept quiet">${this.log.at(-1)}</p>`}
        <fault-marks @fault-seen=${(event: CustomEvent<CriterionId>) => this.mark(event.detail)}></fault-marks>
        <pain-scale .value=${this.pain} @pain-said=${(event: CustomEvent<number>) => this.say(event.detail)}></pain-scale>
        <div class="row">
          <button
            type="button"
            aria-label=${fill(TEST_WORDS['prompts-label'], { used: this.prompts })}
            @click=${() => this.prompt()}
          >
            ${fill(TEST_WORDS.prompts, { used: this.prompts })}
          </button>
          ${
            this.plan.beatsPerMinute === null
              ? nothing
              : html`<button type="button" aria-pressed=${this.isMuted} @click=${() => this.turnSound()}>
                ${TEST_WORDS.mute.text}
              </button>`
          }
        </div>
      </div>
      ${
        this.plan.beatsPerMinute === null
          ? nothing
          : html`<beat-pendulum
            .beatsPerMinute=${this.plan.beatsPerMinute}
            .sinceMs=${this.beatSinceMs}
          ></beat-pendulum>`
      }
      <stop-bar @stop-set=${() => this.stop()}></stop-bar>
    `;
  }

  private scale(): TemplateResult {
    const { choice, protocol } = this.plan;
    const { parameters } = protocol;
    const line = targetLine(this.session?.live.raises ?? [], parameters);
    const percent = Math.round(100 * (parameters.heightFraction.value ?? 0));
    const caption =
      line === undefined
        ? fill(TEST_WORDS['no-target'], { n: parameters.referenceBest.value ?? 2 })
        : fill(TEST_WORDS['target-at'], { percent });
    const isHeel = choice.placement === 'heel' || choice.placement === 'foot';
    const hasScale = choice.placement === 'heel' || (choice.placement === 'foot' && this.person.heelLeverM !== null);
    return html`<height-ruler
      .targetM=${line?.targetM}
      .hasScale=${hasScale}
      .kind=${isHeel ? 'heel' : 'body'}
      .caption=${caption}
    ></height-ruler>`;
  }
}
