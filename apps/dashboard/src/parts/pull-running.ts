import { consume } from '@lit/context';
import { type Person, type PullSet, secondsBetween } from '@surae/casebook';
import type { SampleBlock, Sensor } from '@surae/sensors';
import type { PullProtocol } from '@surae/shared';
import { LIVE_WORDS, PULL_WORDS, SIGNAL_RULES, TEST_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import {
  bookContext,
  clockContext,
  type HostClock,
  type SensorMaker,
  sensorContext,
} from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { PageWatch } from '../live/page-watch.ts';
import { type CueTimes, cueAt, cueTimes, type PullCue } from '../live/pull-cue.ts';
import type { FollowedPull } from '../live/pull-follower.ts';
import { nextFromS, PullSession } from '../live/pull-session.ts';
import { lostWords, silentEnd } from '../live/silent-end.ts';
import { type SourceSeen, SourceWatch } from '../live/source-watch.ts';
import { sourceWords } from '../live/source-words.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import './pull-course.ts';
import type { PullCourse } from './pull-course.ts';
import { pullRunningStyle } from './pull-running-style.ts';
import './stop-bar.ts';

/** A resting leg is still: a sensor is told to be silent where no samples come for so long [s]; ours. */
const lookEveryMs = 500;

/** A trial while it runs, and nothing else on the screen. Tells `trial-over`, or `trial-not-started` with the reason. */
@customElement('pull-running')
export class PullRunning extends LitElement {
  static override styles = [base, pullRunningStyle];

  @property({ attribute: false }) visitId = '';
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) set!: PullSet;
  @property({ attribute: false }) protocol!: PullProtocol;
  /** best of the trials before this one; null without one */
  @property({ attribute: false }) best: number | null = null;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @state() private cue: PullCue = 'relax';
  @state() private cueLeftS = 0;
  @state() private unsaved: string | null = null;
  @state() private held = false;
  @state() private lifted = false;
  @state() private dropped = false;
  @state() private seen: SourceSeen | undefined;
  @state() private maySleep = false;
  @query('output') private readonly figure!: HTMLOutputElement;
  @query('.unit') private readonly unit!: HTMLElement;
  @query('pull-course') private readonly course!: PullCourse;
  private session: PullSession | undefined;
  private sensor: Sensor | undefined;
  private readonly source = new SourceWatch(SIGNAL_RULES.silentTold.value);
  private readonly page = new PageWatch(
    () => this.clock.nowMs(),
    (seconds) => (this.hiddenForS += seconds),
  );
  private endLooks: () => void = () => {};
  private sourceLost: string | null = null;
  private hiddenForS = 0;
  private live: FollowedPull | undefined;
  private hasFrame = false;
  private isOver = false;
  private wantsStop = false;

  /** A recording that is played follows no cues of ours. */
  private get cues(): CueTimes | undefined {
    return this.set.choice.origin === 'replayed' ? undefined : cueTimes(this.protocol.parameters);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: true, bubbles: true, composed: true }));
    this.page.start();
  }

  override disconnectedCallback(): void {
    this.letGo();
    // left without a stop: what came is kept
    if (!this.isOver) void this.session?.stop();
    this.isOver = true;
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
    void this.begin();
  }

  private async begin(): Promise<void> {
    const { book, clock, visitId, set, person, sensors } = this;
    const nowIso = clock.isoNow();
    const [first] = set.trials;
    const lastStop = set.trials.at(-1)?.stoppedAt ?? null;
    this.endLooks = clock.every(lookEveryMs, () => this.look());
    try {
      this.sensor = sensors.makePull(set.choice, set.trials.length, person);
      this.session = await PullSession.begin(
        {
          book,
          clock,
          visitId,
          set,
          sensor: this.sensor,
          fromS: nextFromS(set, first === undefined ? null : secondsBetween(first.begunAt, nowIso)),
          restS: lastStop === null ? null : secondsBetween(lastStop, nowIso),
          cues: cueTimes(this.protocol.parameters),
        },
        {
          onSamples: (live, block) => this.onSamples(live, block),
          onLink: (news) => {
            this.source.hear(news);
            this.look();
          },
          onEnd: (error) => void this.stop(error === undefined ? null : sourceWords(error)),
          onUnsaved: (error) => (this.unsaved = storeWords(error)),
        },
      );
      this.source.begin(clock.nowMs());
      // stop was pressed before the source had begun
      if (this.wantsStop || !this.isConnected) await this.stop();
    } catch (error) {
      this.isOver = true;
      this.letGo();
      this.dispatchEvent(new CustomEvent('bare-screen', { detail: false, bubbles: true, composed: true }));
      const detail = this.wantsStop ? LIVE_WORDS['stopped-early'].text : sourceWords(error as Error);
      this.dispatchEvent(new CustomEvent('trial-not-started', { detail }));
    }
  }

  private look(): void {
    this.seen = this.source.seen(this.clock.nowMs());
    this.maySleep = this.page.maySleep;
    const lost = silentEnd(this.seen, this.set.choice.origin);
    if (lost !== null) void this.stop(lost);
  }

  private onSamples(live: FollowedPull, block: SampleBlock): void {
    this.live = live;
    this.source.add(block);
    const { cues } = this;
    if (cues !== undefined) {
      const { cue, leftS } = cueAt(live.timeS, cues);
      this.cue = cue;
      this.cueLeftS = Math.ceil(leftS);
      if (cue === 'over') void this.stop();
    }
    this.dropped = live.dropped;
    if (this.hasFrame) return;
    this.hasFrame = true;
    requestAnimationFrame(() => {
      this.hasFrame = false;
      if (this.live === undefined || !this.isConnected) return;
      const { net, unit } = this.live;
      const isKnown = net !== null;
      this.figure.textContent = isKnown ? decimal(net, unit === 'N' ? 0 : 1) : PULL_WORDS['rest-not-known'].text;
      this.unit.textContent = isKnown ? unit : '';
      this.course.draw(this.live);
    });
  }

  /** Stops the trial. The first call counts: there is nothing to ask and nothing to undo. */
  private async stop(sourceLost: string | null = null): Promise<void> {
    this.wantsStop = true;
    // the sensor has not answered yet: nobody waits for it any more
    if (this.session === undefined) this.sensor?.stop();
    if (this.session === undefined || this.isOver) return;
    this.isOver = true;
    this.letGo();
    this.sourceLost = sourceLost;
    await this.keep(this.session);
  }

  /** Ends what runs and goes on once it is stored; until then it is held here and can be stored again. */
  private async keep(session: PullSession): Promise<void> {
    try {
      this.held = !(await session.stop({
        ...(this.sourceLost === null ? {} : { sourceLost: this.sourceLost }),
        ...(this.hiddenForS === 0 ? {} : { hiddenForS: this.hiddenForS }),
      }));
    } catch (error) {
      this.unsaved = storeWords(error);
      this.held = true;
    }
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: this.held, bubbles: true, composed: true }));
    if (!this.held) this.dispatchEvent(new CustomEvent('trial-over'));
  }

  private letGo(): void {
    this.endLooks();
    this.page.stop();
  }

  private async markLifted(): Promise<void> {
    try {
      await this.session?.markLifted();
      this.lifted = true;
    } catch (error) {
      this.unsaved = storeWords(error);
    }
  }

  override render(): TemplateResult {
    const { set, cues, cue } = this;
    const { side } = set.choice;
    const { hasBegun = true, link = null, silentS = null } = this.seen ?? {};
    if (this.held) return this.notStored();
    return html`
      <h1 class="head" tabindex="-1">
        <span class="side" data-side=${side}>${PULL_WORDS[`title-${side}`].text}</span>:
        ${fill(PULL_WORDS.trial, { n: set.trials.length + 1 })}
      </h1>
      <p class="cue" aria-hidden="true">
        ${
          cues === undefined
            ? PULL_WORDS.playing.text
            : html`${PULL_WORDS[cue].text} <small class="quiet">${this.cueLeftS > 0 ? this.cueLeftS : nothing}</small>`
        }
      </p>
      <p class="unseen" aria-live="assertive">${cues === undefined ? PULL_WORDS.playing.text : PULL_WORDS[`${cue}-said`].text}</p>
      <p class="figure">
        <output aria-live="off" aria-label=${PULL_WORDS.force.text}>${PULL_WORDS['rest-not-known'].text}</output>
        <span class="unit quiet"></span>
      </p>
      <pull-course .cues=${cues} .side=${side} .best=${this.best}></pull-course>
      <div class="notes">
        <div role="status">
          ${this.dropped ? html`<p class="voice">${PULL_WORDS.dropped.text}</p>` : nothing}
          ${link === null ? nothing : html`<p class="voice">${link}</p>`}
          ${hasBegun ? nothing : html`<p class="quiet">${LIVE_WORDS.waiting.text}</p>`}
          ${silentS === null ? nothing : html`<p class="voice">${fill(LIVE_WORDS.silent, { seconds: silentS, ends: SIGNAL_RULES.silentEnds.value })}</p>`}
          ${this.unsaved === null ? nothing : html`<p class="voice">${fill(TEST_WORDS.unsaved, { reason: this.unsaved })}</p>`}
          ${this.maySleep ? html`<p class="voice">${TEST_WORDS['may-sleep'].text}</p>` : nothing}
          ${this.lifted ? html`<p class="quiet">${PULL_WORDS['lifted-kept'].text}</p>` : nothing}
          ${cues === undefined || this.dropped || this.lifted ? nothing : html`<p class="quiet">${PULL_WORDS.breathe.text}</p>`}
        </div>
        <button type="button" aria-pressed=${this.lifted} @click=${() => void this.markLifted()}>
          ${PULL_WORDS.lifted.text}
        </button>
      </div>
      <stop-bar @stop-set=${() => void this.stop(this.seen === undefined ? null : lostWords(this.seen))}></stop-bar>
    `;
  }

  private notStored(): TemplateResult {
    return html`<div class="column unstored" role="status">
      <h1 tabindex="-1">${PULL_WORDS.unstored.text}</h1>
      <p>${fill(PULL_WORDS['unstored-explain'], { reason: this.unsaved ?? '' })}</p>
      <button
        class="main"
        type="button"
        @click=${() => {
          if (this.session !== undefined) void this.keep(this.session);
        }}
      >
        ${PULL_WORDS['store-again'].text}
      </button>
    </div>`;
  }
}
