import { consume } from '@lit/context';
import { fiveLights, type Light, type SetupPlacement, type Side, setupDefaults, type Trace } from '@surae/analysis';
import {
  ageInDays,
  type Certificate,
  certificateFor,
  type SensorAnswerEntry,
  type SensorTold,
  type SetUpKept,
  sensorKey,
  type TestKind,
  type Visit,
  type ZeroEntry,
} from '@surae/casebook';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock, shelfContext } from '../contexts/capabilities.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { keptSetUp } from '../live/kept-set-up.ts';
import { lightInWords } from '../live/light-words.ts';
import { type ReadAs, readAsOf } from '../live/read-as.ts';
import { type LookedFor, upSeen } from '../live/sensor-findings.ts';
import { answerWords, type SensorQuestion, sensorQuestions } from '../live/sensor-questions.ts';
import {
  answersOf,
  earlierUp,
  elsewhere,
  isGravitySteady,
  isSignAnswered,
  openKeys,
  placeOf,
  SensorLook,
  wornUp,
} from '../live/set-up-ask.ts';
import { asRead, lightFacts, seenSign } from '../live/set-up-facts.ts';
import type { SignalHistory } from '../live/signal-history.ts';
import { askedZero } from '../live/taken-zero.ts';
import { watchedTrace } from '../live/watched-trace.ts';
import { zeroWords } from '../live/zero-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import './light-list.ts';
import './mass-choice.ts';
import type { FixAskedFor } from './light-list.ts';
import './rest-load.ts';
import type { RestLoadTaken } from './rest-load.ts';
import './sensor-questions.ts';
import type { QuestionAnswered } from './sensor-questions.ts';

/** What a live picture tells twice a second: its last seconds, and how long nothing has come; null is never. */
export interface SensorLooked {
  readonly history: Pick<SignalHistory, 'channels' | 'line' | 'window'>;
  readonly silentS: number | null;
}

/** How things stand, for what is kept when a test begins. */
export type SetUpLooked = CustomEvent<SetUpKept>;

/** Told with the place that somebody answered the sensor is at. */
export type PlaceAnswered = CustomEvent<SetupPlacement>;

/** Seconds by which the lights are judged, and by which a sign is seen and a sensor is looked at [s]; ours. */
const lightsS = 3;
const lookS = 8;

/**
 * The five lights before a test with a connected sensor, its zero and its calibration, and what is asked about it. Nothing
 * of it stops anybody. Tells `set-up-looked-at`, and `place-answered` where the sensor is said to be somewhere else.
 */
@customElement('set-up-check')
export class SetUpCheck extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        margin-block-start: var(--gap-4);
      }
      p {
        margin-block: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) test!: TestKind;
  @property({ attribute: false }) side!: Side;
  @property({ attribute: false }) placement!: SetupPlacement;
  /** whether something that the test shows needs the body mass */
  @property({ attribute: false }) massNeeded = true;
  /** the leg rests on the plate before it pushes: its weight can be taken */
  @property({ attribute: false }) seated = false;
  @property({ attribute: false }) sensor!: SensorTold;
  @property({ attribute: false }) looked: SensorLooked | undefined;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @state() private zero: ZeroEntry | null = null;
  @state() private certificate: Certificate | null = null;
  @state() private bodyMassKg: number | null = null;
  @state() private sideTold: Side | null = null;
  @state() private restLoad: SetUpKept['restLoad'] | null = null;
  @state() private said = '';
  @state() private lights: readonly Light[] = [];
  @state() private questions: readonly SensorQuestion[] = [];
  private readonly look = new SensorLook();
  private sign: 1 | -1 | null = null;
  private read: { readonly trace: Trace; readonly zero: ZeroEntry | null } = { trace: { groups: [] }, zero: null };

  private get key(): string {
    return sensorKey(this.sensor);
  }

  private get answers(): readonly SensorAnswerEntry[] {
    return answersOf(this.visit, this.key);
  }

  private get readAs(): ReadAs {
    const { answers, shelf, placement, test, isCalibrated } = this;
    return readAsOf(answers, shelf.sentUnits(placement, test), isCalibrated);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('sensor');
    const isAnother = changed.has('sensor') && (before === undefined || sensorKey(before) !== this.key);
    if (isAnother || changed.has('placement') || changed.has('side')) this.look.forget();
    if (isAnother) {
      this.sign = null;
      void this.load();
    }
    if (changed.has('side')) this.sideTold = null;
    // another leg, plate or rig lies on it otherwise
    if (isAnother || changed.has('side') || changed.has('placement') || changed.has('seated')) this.restLoad = null;
    this.judge();
  }

  protected override updated(): void {
    const { answers, readAs, questions } = this;
    const open = openKeys(questions);
    const isUp = this.lights.some(({ name, state: now }) => name === 'right-way-up' && now === 'lit');
    const up = this.looked !== undefined && isUp ? upSeen(watchedTrace(this.looked.history, lightsS)) : null;
    const { lights, zero, restLoad } = this;
    const certificate = this.isCalibrated ? this.certificate : null;
    const kept = keptSetUp({ lights, zero, certificate, answers, readAs, open, restLoad, up });
    this.dispatchEvent(new CustomEvent('set-up-looked-at', { detail: kept }));
  }

  private async load(): Promise<void> {
    const [zero, certificates, person] = await Promise.all([
      this.book.lastZero(this.key),
      this.book.certificates(),
      this.book.person(this.visit.personId),
    ]);
    this.zero = zero;
    const certificate = certificateFor(certificates, this.key);
    if (certificate?.id !== this.certificate?.id) this.look.forget();
    this.certificate = certificate;
    this.bodyMassKg = person?.bodyMassKg ?? null;
  }

  /** A calibration that is over counts no forces: that is for a person to decide anew. */
  private get isCalibrated(): boolean {
    return this.certificate !== null && this.daysLeft(this.certificate) >= 0;
  }

  private daysLeft(certificate: Certificate): number {
    return Math.floor(certificate.validDays - ageInDays(certificate, this.clock.isoNow()));
  }

  private get lookedFor(): LookedFor {
    const { test, placement, side, shelf, bodyMassKg, isCalibrated, visit, key } = this;
    const sentUnits = shelf.sentUnits(placement, test);
    return {
      test,
      placement,
      side,
      sentUnits,
      bodyMassKg,
      isCalibrated,
      earlierUp: earlierUp(visit, { key, placement, side }),
    };
  }

  private judge(): void {
    const { looked, placement, side, sideTold, bodyMassKg, massNeeded, isCalibrated, answers, readAs, key, visit } =
      this;
    if (looked === undefined) return;
    const line = isCalibrated ? (this.certificate?.line ?? null) : null;
    const long = watchedTrace(looked.history, lookS);
    // once it was answered, the samples are read that way: what is left goes up
    const seen = asRead(long, this.zero, readAs, null);
    this.sign = isSignAnswered(answers) ? 1 : (seenSign(seen.trace, seen.zero) ?? this.sign);
    const isoNow = this.clock.isoNow();
    this.read = asRead(watchedTrace(looked.history, lightsS), this.zero, readAs, line);
    const { trace, zero } = this.read;
    const upAxis = wornUp(answers, { key, placement, side }, earlierUp(visit, { key, placement, side }));
    // a plate that is pushed at is not stood on: the lights see it as they see a cell
    const seenAs = this.test === 'isometric' ? 'inline' : placement;
    const known = { placement: seenAs, side, sideTold, bodyMassKg, massNeeded, zero, isCalibrated, upAxis, isoNow };
    const facts = lightFacts({ ...known, silentS: looked.silentS }, this.sign);
    this.lights = fiveLights(trace, facts, setupDefaults.lights);
    this.look.watch(long, this.lookedFor, isGravitySteady(this.lights));
    this.questions = sensorQuestions(this.look.findings, answers);
  }

  private readonly fix = ({ detail }: FixAskedFor): void => {
    if (detail === 'side-missing') this.sideTold = this.side;
    else void this.setZero();
  };

  private readonly lookAgain = (): void => {
    if (this.looked === undefined) return;
    this.look.look(watchedTrace(this.looked.history, lookS), this.lookedFor);
    this.requestUpdate();
  };

  private readonly answer = ({ detail: { question, answer } }: QuestionAnswered): void => {
    const { subject, about, guess } = question.finding;
    const { code: evidence, figures } = guess.evidence;
    const seen = { answer: guess.answer, confidence: guess.confidence, evidence, figures };
    const place = subject === 'placement' ? placeOf(answer) : null;
    // an answer that names another place of the test is one about that place
    const goes =
      place !== null && this.shelf.fits(place, this.test) && (place === 'inline') === (this.test === 'isometric');
    const at = goes ? place : about;
    this.dispatchEvent(visitEvent({ kind: 'sensor-answer', sensor: this.key, subject, about: at, answer, seen }));
    if (goes && place !== about) this.dispatchEvent(new CustomEvent('place-answered', { detail: place }));
  };

  private async setZero(): Promise<void> {
    const { taken, quantity, kept } = askedZero(this.looked?.history, this.zero, this.readAs);
    this.said = zeroWords(taken, quantity);
    if (kept === null) return;
    try {
      await this.book.addZero(this.key, kept);
    } catch {
      this.said = SET_UP_WORDS['not-kept'].text;
    }
    await this.load();
  }

  override render(): TemplateResult | typeof nothing {
    const { lights, placement } = this;
    if (lights.length === 0) return nothing;
    const isForce = placement === 'platform' || placement === 'inline';
    const isOpen = lights.some(({ state: now }) => now !== 'lit');
    return html`<light-list .lights=${lights.map(lightInWords)} @fix-asked-for=${this.fix}></light-list>
      <mass-choice .visit=${this.visit} .lights=${lights} .answers=${this.answers} .sensor=${this.key} @mass-kept=${() => void this.load()}></mass-choice>
      ${isForce ? this.force(lights) : nothing}
      <p role="status" class="voice">${this.said}</p>
      ${isOpen ? html`<p class="quiet">${SET_UP_WORDS['go-on'].text}</p>` : nothing} ${this.asked()}`;
  }

  private asked(): TemplateResult {
    const { placement, test, questions, answers } = this;
    const words = SET_UP_WORDS;
    const how = test === 'isometric' ? 'push' : placement === 'platform' ? 'stand' : 'raises';
    const wrong = elsewhere(answers, placement);
    return html`${
      wrong === null
        ? nothing
        : html`<p class="voice">${fill(words['ask-not-here'], { answer: answerWords('placement', wrong) })}</p>`
    }
      <sensor-questions
        .questions=${questions}
        .explain=${words[`ask-explain-${how}`].text}
        .sawNothing=${this.look.sawNothing}
        @question-answered=${this.answer}
        @look-asked-for=${this.lookAgain}
      ></sensor-questions>`;
  }

  private force(lights: readonly Light[]): TemplateResult {
    const words = SET_UP_WORDS;
    const { certificate } = this;
    const isAsked = lights.some(({ reason }) => reason === 'no-zero' || reason === 'zero-old');
    const figures = (one: Certificate) => ({ day: dayOf(one.at), days: this.daysLeft(one) });
    const plain = words[Object.keys(this.readAs).length === 0 ? 'not-calibrated' : 'not-calibrated-read'].text;
    const counted = certificate === null ? plain : fill(words.calibrated, figures(certificate));
    const isOver = certificate !== null && !this.isCalibrated;
    return html`${
      isAsked
        ? nothing
        : html`<button type="button" @click=${() => void this.setZero()}>${words['set-zero'].text}</button>`
    }
      ${this.seated && this.placement === 'platform' ? this.resting() : nothing}
      <p class=${isOver ? 'voice' : 'quiet'}>
        ${isOver ? fill(words['calibration-over'], figures(certificate)) : counted}
      </p>`;
  }

  private resting(): TemplateResult {
    const { trace, zero } = this.read;
    const line = this.isCalibrated ? this.certificate?.line : undefined;
    return html`<rest-load
      .trace=${trace}
      .zero=${zero}
      .sign=${this.isCalibrated ? 1 : this.sign}
      .relativeU=${line === undefined ? null : Math.abs(line.slopeU / line.slope)}
      @rest-load-taken=${({ detail: { loadN, uN, spanS } }: RestLoadTaken) =>
        (this.restLoad = { loadN, uN, spanS, at: this.clock.isoNow() })}
    ></rest-load>`;
  }
}
