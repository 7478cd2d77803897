import { consume } from '@lit/context';
import type { LiveState } from '@surae/analysis';
import type { Person, SetNote } from '@surae/casebook';
import { HandCount, type SampleBlock, type Sensor } from '@surae/sensors';
import { type CriterionId, HAND_WORDS, LIVE_WORDS, TEST_WORDS } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
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
} from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { beatAheadMs } from '../live/beat-phase.ts';
import { BeatSwitch } from '../live/beat-switch.ts';
import { feltBeat } from '../live/felt-beat.ts';
import { type LastVerdict, lastVerdict } from '../live/last-verdict.ts';
import type { OverSet } from '../live/over-set.ts';
import { PageWatch } from '../live/page-watch.ts';
import { hiddenWords, markedWords, offPlateWords, setNotes } from '../live/set-notes.ts';
import type { SetPlan } from '../live/set-plan.ts';
import { setRequest } from '../live/set-request.ts';
import { SetSession } from '../live/set-session.ts';
import { lostWords, silentEnd, watchOf } from '../live/silent-end.ts';
import { handSeen, type SourceSeen, type SourceWatch } from '../live/source-watch.ts';
import { sourceWords } from '../live/source-words.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './count-display.ts';
import type { CountDisplay } from './count-display.ts';
import './fault-marks.ts';
import './pain-scale.ts';
import { pendulum, runHead, runRow, toldRow } from './run-row.ts';
import { runningStyle } from './running-style.ts';
import './set-height.ts';
import type { SetHeight } from './set-height.ts';
import './stop-bar.ts';
import './tap-target.ts';

const lookEveryMs = 250;

/** A set while it runs, and nothing else on the screen. */
@customElement('running-set')
export class RunningSet extends LitElement {
  static override styles = [base, runningStyle];

  @property({ attribute: false }) visitId = '';
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) plan!: SetPlan;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @consume({ context: soundContext }) private readonly sound!: BeatSound;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  @state() private verdict: LastVerdict | undefined;
  @state() private said = '';
  @state() private lines: readonly string[] = [];
  @state() private lastKept = '';
  @state() private prompts = 0;
  @state() private pain: number | null = null;
  @query('count-display') private readonly count!: CountDisplay;
  @query('set-height') private readonly height!: SetHeight;
  private session: SetSession | undefined;
  private source!: SourceWatch;
  private readonly page = new PageWatch(
    () => this.clock.nowMs(),
    (seconds) => this.wasHidden(seconds),
  );
  private sensor: Sensor | undefined;
  private wantsStop = false;
  private endLooks: () => void = () => {};
  private readonly beat = new BeatSwitch((forMs) => feltBeat(this.plan.choice)(forMs));
  private unsaved: string | null = null;
  private live: LiveState | undefined;
  private hasFrame = false;
  private isOver = false;
  private beatSinceMs = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: true, bubbles: true, composed: true }));
    this.page.start();
    this.source = watchOf(this.plan.choice);
    this.beatSinceMs = this.clock.nowMs() - this.plan.beatFromMs - beatAheadMs;
  }

  override disconnectedCallback(): void {
    this.letGo();
    // left without a stop: what came is kept, and the page asks what to do with it when it is opened again
    if (!this.isOver) void this.session?.live.stop();
    this.isOver = true;
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
    void this.begin();
  }

  private async begin(): Promise<void> {
    const { book, clock, visitId, plan } = this;
    this.endLooks = clock.every(lookEveryMs, () => this.look());
    try {
      const sensor = this.sensors.make(plan.choice, this.person);
      this.sensor = sensor;
      const session = await SetSession.begin(
        { book, clock, sensor, visitId, choice: plan.choice, heelLeverM: this.person.heelLeverM },
        {
          onSamples: (live, block) => this.onSamples(live, block),
          onRaise: (_raise, count, block) => this.onRaise(count, block),
          onTap: (count, block) => this.onTap(count, block),
          onLink: (news) => this.source.hear(news),
          onEnd: (error) => void this.stop(error === undefined ? null : sourceWords(error)),
          onUnsaved: (error) => this.notSaved(error),
        },
      );
      if (this.wantsStop && session.live.log.length === 0) {
        await session.setAside();
        return this.notStarted(LIVE_WORDS['stopped-early'].text);
      }
      this.session = session;
      this.source.begin(clock.nowMs());
      if (this.isOver) void session.live.stop();
      else if (this.wantsStop) await this.stop(null);
    } catch (error) {
      this.notStarted(this.wantsStop ? LIVE_WORDS['stopped-early'].text : sourceWords(error as Error));
    }
  }

  private notStarted(detail: string): void {
    this.isOver = true;
    this.letGo();
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: false, bubbles: true, composed: true }));
    this.dispatchEvent(new CustomEvent('set-not-started', { detail }));
  }

  private onSamples(live: LiveState, block: SampleBlock): void {
    this.live = live;
    this.source.add(block);
    if (this.hasFrame) return;
    this.hasFrame = true;
    requestAnimationFrame(() => {
      this.hasFrame = false;
      if (this.live !== undefined) this.height.draw(this.live, this.source.takeHole());
    });
  }

  private onRaise(count: number, block: SampleBlock | undefined): void {
    this.count.show(count, block?.hostTimeMs);
    const raises = this.session?.live.raises ?? [];
    const raise = raises.at(-1);
    if (raise === undefined) return;
    this.height.raises = [...raises];
    this.verdict = lastVerdict(count, raise, undefined);
    // the frame with the count is not to wait for the samples to be handed to the worker
    if (block !== undefined) requestAnimationFrame(() => setTimeout(() => void this.judge(count, raise)));
  }

  /** Somebody counts by hand: nobody judges, and the count is all there is. */
  private onTap(count: number, { hostTimeMs, channels }: SampleBlock): void {
    this.count.show(count, hostTimeMs);
    const isBack = (channels[0]?.samples[0] ?? 0) < 0;
    this.said = fill(HAND_WORDS[isBack ? 'taken-back' : 'counted'], { n: count });
    this.look();
  }

  /** Whoever counts by hand; undefined where a source gives samples. */
  private get hand(): HandCount | undefined {
    return this.sensor instanceof HandCount ? this.sensor : undefined;
  }

  private get seen(): SourceSeen {
    return this.isByHand ? handSeen : this.source.seen(this.clock.nowMs());
  }

  private get isByHand(): boolean {
    return this.plan.choice.placement === 'hand';
  }

  /** Asks for the verdict on the set so far; a newer repetition makes an older answer useless. */
  private async judge(count: number, raise: { readonly topS: number }): Promise<void> {
    const { session, plan, person } = this;
    if (session === undefined) return;
    const trace = { groups: [session.live.log.group()] };
    const request = setRequest(plan, person, session.marks);
    // a set so far can be too short to be judged: the count stands, and the whole set is judged at its end
    const report = await this.assessor.soFar(trace, request).catch(() => undefined);
    if (report === undefined || session.live.raises.at(-1) !== raise) return;
    this.verdict = lastVerdict(count, raise, report);
    this.said = this.verdictText();
  }

  /** Stops the set. The first call counts: there is nothing to ask and nothing to undo. */
  private async stop(failure: string | null): Promise<void> {
    const { session } = this;
    if (session === undefined) {
      // the sensor has not answered yet: nobody waits for it any more
      this.wantsStop = true;
      this.sensor?.stop();
      return;
    }
    if (this.isOver) return;
    this.isOver = true;
    this.letGo();
    this.keepOffPlate(true);
    // the screen stays bare, and the clinic open, until all that came is stored
    const stopped = await session.live.stop();
    const detail: OverSet = { session, stopped, unsaved: this.unsaved, failure };
    this.dispatchEvent(new CustomEvent('set-over', { detail }));
  }

  private letGo(): void {
    this.endLooks();
    this.beat.stop(this.sound);
    this.page.stop();
  }

  private notSaved(error: unknown): void {
    this.unsaved = storeWords(error);
    this.look();
  }

  private look(): void {
    const { session, prompts, pain, unsaved, plan } = this;
    const { seen } = this;
    const lost = silentEnd(seen, plan.choice.origin);
    if (lost !== null) return void this.stop(lost);
    this.keepOffPlate();
    const scene = {
      count: session?.live.count ?? 0,
      timeS: session?.timeS ?? 0,
      ...seen,
      maySleep: this.page.maySleep,
      pain,
      prompts,
      unsaved,
    };
    const lines = setNotes({ ...scene, parameters: plan.protocol.parameters });
    if (lines.join('\n') !== this.lines.join('\n')) this.lines = lines;
    this.toggleAttribute('data-told', lines.length > 0);
  }

  private wasHidden(seconds: number): void {
    this.lastKept = hiddenWords(this.plan.choice.origin, (this.session?.timeS ?? 0) - seconds, seconds);
    this.note('hidden', seconds);
  }

  private keepOffPlate(isEnd = false): void {
    for (const off of this.source.takeOffPlate(isEnd)) {
      this.lastKept = offPlateWords(off);
      this.keep('off-plate', off.forS);
    }
  }

  private keep(what: SetNote['what'], value: number): void {
    this.session?.note(what, value).catch((error: unknown) => this.notSaved(error));
  }

  private note(what: SetNote['what'], value: number): void {
    this.keep(what, value);
    this.look();
  }

  private async mark(criterion: CriterionId): Promise<void> {
    try {
      const mark = await this.session?.mark(criterion);
      if (mark === undefined) return;
      this.lastKept = markedWords(mark);
    } catch (error) {
      this.notSaved(error);
    }
  }

  private prompt(): void {
    this.note('prompts', (this.prompts = (this.prompts + 1) % 3));
  }

  private say(pain: number): void {
    this.pain = pain;
    this.note('pain', pain);
  }

  private turnSound(): void {
    const { beatsPerMinute, beatFromMs } = this.plan;
    this.beat.turn(this.sound, beatsPerMinute, this.clock.nowMs() - beatFromMs);
    this.note('sound', this.beat.isMuted ? 0 : 1);
    this.requestUpdate();
  }

  private verdictText(): string {
    if (this.isByHand) return this.said;
    if (this.verdict === undefined) return TEST_WORDS.waiting.text;
    const { repetition, sentence } = this.verdict;
    return fill(TEST_WORDS.verdict, { n: repetition, verdict: sentence.text });
  }

  override render(): TemplateResult {
    const { plan, person } = this;
    return html`
      ${runHead(plan)}
      ${
        this.isByHand
          ? html`<tap-target
              @raise-tapped=${() => this.hand?.tap()}
              @tap-taken-back=${() => this.hand?.takeBack()}
              ><count-display></count-display
            ></tap-target>`
          : html`<count-display></count-display><set-height .plan=${plan} .person=${person}></set-height>`
      }
      <p class="verdict">${this.verdictText()}</p>
      <p class="unseen" aria-live="polite">${this.said}</p>
      <div class="controls">${this.controls()}</div>
      ${pendulum(plan, this.beatSinceMs)}
      <stop-bar @stop-set=${() => this.stop(lostWords(this.seen))}></stop-bar>
    `;
  }

  private controls(): TemplateResult {
    const { prompts, pain, plan } = this;
    const isHeard = plan.protocol.parameters.cue.value === 'metronome';
    return html`${toldRow(this.lines, this.lastKept)}
      <fault-marks @fault-seen=${(event: CustomEvent<CriterionId>) => this.mark(event.detail)}></fault-marks>
      <pain-scale .value=${pain} @pain-said=${(event: CustomEvent<number>) => this.say(event.detail)}></pain-scale>
      ${runRow({
        prompts,
        prompt: () => this.prompt(),
        takeBack: this.isByHand ? () => this.hand?.takeBack() : undefined,
        turnSound: plan.beatsPerMinute === null || !isHeard ? undefined : () => this.turnSound(),
        isMuted: this.beat.isMuted,
      })}`;
  }
}
