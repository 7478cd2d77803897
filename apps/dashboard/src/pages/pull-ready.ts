import { consume } from '@lit/context';
import { type PullPlacement, pullFingerprint, type Side } from '@surae/analysis';
import { choosablePulls, chosenFor, mayTest, type PullChoice, type SetUpKept, type Visit } from '@surae/casebook';
import { LIVE_WORDS, PULL_READY_WORDS, type PullProtocol, READY_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  bookContext,
  clockContext,
  type HostClock,
  type SensorMaker,
  sensorContext,
  shelfContext,
} from '../contexts/capabilities.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import { ShelfFollower } from '../devices/shelf-follower.ts';
import { typedNumber } from '../journey/person-form.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { type HandedLeg, type HandedRecording, handedLeg } from '../live/handed-recording.ts';
import { handedFor, useTaken } from '../live/handed-use.ts';
import { holdsPulls, isAlike, pullPlacements, pullProtocolOf } from '../live/pull-choices.ts';
import { playsRecordings } from '../live/recording-chooser.ts';
import { otherLegSensor } from '../live/sensor-change.ts';
import { chooseRecording } from '../parts/choose-recording.ts';
import { base } from '../styles/base.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import '../parts/earlier-test.ts';
import { radioOption } from '../parts/radio-option.ts';
import '../parts/sensor-in-hand.ts';
import '../parts/set-up-check.ts';
import type { SensorLooked, SetUpLooked } from '../parts/set-up-check.ts';
import '../parts/source-check.ts';
import { stopFor } from '../parts/stop-for.ts';
import '../parts/taken-list.ts';
import type { TakenChosen } from '../parts/taken-list.ts';
import { leverStyle, readyStyle } from './ready-style.ts';

const origins = ['live', 'simulated', 'replayed'] as const satisfies readonly PullChoice['origin'][];
const originWords = { live: LIVE_WORDS.live, simulated: READY_WORDS.simulated, replayed: READY_WORDS.replayed };

/** Within which a lever is taken for one of an adult foot [cm]. Common practice, no source. */
const leverRangeCm = { least: 5, most: 25 } as const;

/** Before the isometric trials of a leg: position, rig, lever, source, set-up, and what to watch. Tells `begin-pull`. */
@customElement('pull-ready')
export class PullReady extends LitElement {
  static override styles = [base, readyStyle, leverStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) side!: Side;
  /** why the last attempt to start did nothing; empty when there was none */
  @property({ attribute: false }) problem = '';
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @state() private protocol!: PullProtocol;
  @state() private placement: PullPlacement = 'platform';
  @state() private origin: PullChoice['origin'] = 'simulated';
  @state() private lever = '';
  @state() private file: Omit<HandedLeg, 'placement'> | undefined;
  @state() private refusal = '';
  @state() private looked: SensorLooked | undefined;
  /** how things stand with the connected sensor; kept when the test begins */
  private atStart: SetUpKept | undefined;

  /** What was chosen for the leg before, so that both are tested alike without another choice. */
  private get lastChoice(): PullChoice | undefined {
    return (this.visit.pulls ?? []).filter(({ setAside }) => !setAside).at(-1)?.choice;
  }

  constructor() {
    super();
    new ShelfFollower(this, () => this.shelf);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.shelf.held !== undefined) this.origin = 'live';
    const handed = handedFor(this.sensors, this.visit);
    if (handed !== undefined) this.takeUp(handed);
    const last = this.lastChoice;
    const chosen = chosenFor(this.visit, 'isometric');
    this.protocol = pullProtocolOf((last ?? chosen)?.protocolId ?? '') ?? choosablePulls[0]!;
    const worn = this.shelf.held === undefined ? chosen?.placement : this.shelf.held.placement;
    this.placement = last?.placement ?? (worn === 'inline' ? 'inline' : 'platform');
  }

  private get gate(): ReturnType<typeof mayTest> {
    return mayTest(this.origin, this.visit.safety, this.clock.isoNow(), 'isometric');
  }

  private get leverCm(): number | null | undefined {
    const typed = typedNumber(this.lever);
    if (typed == null) return typed;
    return typed < leverRangeCm.least || typed > leverRangeCm.most ? undefined : typed;
  }

  private get fileFits(): boolean {
    return this.file !== undefined && holdsPulls(this.file.trace);
  }

  private get canBegin(): boolean {
    if (!this.gate.allowed || this.leverCm === undefined) return false;
    if (this.origin === 'live') return this.shelf.fits(this.placement, 'isometric');
    return this.origin !== 'replayed' || this.fileFits;
  }

  private async read(input: HTMLInputElement): Promise<void> {
    const chosen = input.files?.[0];
    if (chosen === undefined) return;
    // readers of files are only loaded when there is a file
    const { readFile } = await import('../live/recording-file.ts');
    const read = readFile(new Uint8Array(await chosen.arrayBuffer()), chosen.name);
    this.file = 'refusal' in read ? undefined : read;
    this.refusal = 'refusal' in read ? read.refusal.message : '';
  }

  /** Plays a recording that was taken in, here and for the other leg. */
  private takeUp(handed: HandedRecording): void {
    const leg = handedLeg(handed, this.side);
    this.file = leg;
    this.refusal = '';
    this.origin = 'replayed';
    if (playsRecordings(this.sensors)) this.sensors.handOver(handed);
  }

  private async begin(): Promise<void> {
    const { side, protocol, placement, origin, sensors, file, leverCm } = this;
    if (leverCm === undefined) return;
    const { told } = this.shelf;
    if (origin === 'replayed' && file !== undefined) {
      if (file.taken !== undefined) this.refusal = await useTaken(sensors, this.book, file.taken, this.visit);
      if (this.refusal !== '') return;
      if (playsRecordings(sensors)) sensors.choose(file.trace);
    }
    const choice: PullChoice = {
      side,
      protocolId: protocol.id,
      protocolFingerprint: pullFingerprint(protocol, placement),
      placement,
      origin,
      forefootLeverM: leverCm === null ? null : leverCm / 100,
      seed: origin === 'simulated' ? sensors.nextSeed() : null,
      ...(origin === 'live' && told !== undefined ? { sensor: told } : {}),
      ...(origin === 'live' && this.atStart !== undefined ? { setUp: this.atStart } : {}),
    };
    this.dispatchEvent(new CustomEvent<PullChoice>('begin-pull', { detail: choice }));
  }

  override render(): TemplateResult {
    return html`
      <h1 tabindex="-1">
        <span class="side" data-side=${this.side}>${PULL_READY_WORDS[`title-${this.side}`].text}</span>
      </h1>
      <div class="sheet">
        <div class="choice">
          <earlier-test .visit=${this.visit} .side=${this.side} .test=${'isometric' as const}></earlier-test>
          ${this.protocols()} ${this.rigs()} ${this.sources()} ${this.leverField()}
        </div>
        <div class="go">${this.setUp()} ${stopFor('safety.during.balance')} ${this.start()}</div>
      </div>
    `;
  }

  private protocols(): TemplateResult {
    const last = this.lastChoice;
    const isUnlike = last !== undefined && !isAlike(last, { protocolId: this.protocol.id, placement: this.placement });
    return html`<fieldset>
      <legend>${READY_WORDS.protocol.text}</legend>
      ${isUnlike ? html`<p class="voice">${READY_WORDS['unlike-other-side'].text}</p>` : nothing}
      ${choosablePulls.map((protocol) =>
        radioOption(
          'protocol',
          entryWords(protocol, 'title'),
          this.protocol === protocol,
          () => (this.protocol = protocol),
        ),
      )}
    </fieldset>`;
  }

  private rigs(): TemplateResult {
    return html`<fieldset>
      <legend>${PULL_READY_WORDS.rig.text}</legend>
      <div class="options">
        ${pullPlacements.map((placement) =>
          radioOption(
            'placement',
            PULL_READY_WORDS[placement].text,
            this.placement === placement,
            () => (this.placement = placement),
          ),
        )}
      </div>
      <p class="quiet">${PULL_READY_WORDS['never-pooled'].text}</p>
    </fieldset>`;
  }

  private sources(): TemplateResult {
    return html`<fieldset>
      <legend>${READY_WORDS.source.text}</legend>
      <div class="options">
        ${origins.map((origin) =>
          radioOption('origin', originWords[origin].text, this.origin === origin, () => (this.origin = origin)),
        )}
      </div>
      ${this.origin === 'replayed' ? this.chooseFile() : nothing}
      <taken-list .visit=${this.visit} @taken-chosen=${({ detail }: TakenChosen) => this.takeUp(detail)}></taken-list>
      ${
        this.origin === 'live'
          ? html`<sensor-in-hand
              .placement=${this.placement}
              .test=${'isometric' as const}
              .visitId=${this.visit.id}
              .sensorBefore=${otherLegSensor(this.visit.pulls ?? [], this.side)}
              @sensor-looked-at=${({ detail }: CustomEvent<SensorLooked>) => (this.looked = detail)}
            ></sensor-in-hand>
            ${this.check()}`
          : this.sourceCheck(this.origin)
      }
    </fieldset>`;
  }

  /** The lights of a source that tests nobody; a plate that is pushed at is not stood on, and is seen as a cell. */
  private sourceCheck(origin: 'simulated' | 'replayed'): TemplateResult {
    return html`<source-check
      .personId=${this.visit.personId}
      .origin=${origin}
      .recording=${origin === 'replayed' ? (this.file?.trace ?? null) : null}
      .sideOfRecording=${origin === 'replayed' ? (this.file?.side ?? null) : null}
      .placement=${'inline' as const}
      .side=${this.side}
    ></source-check>`;
  }

  /** The lights and the questions, for a sensor that gives what this place needs. */
  private check(): TemplateResult | typeof nothing {
    const { told } = this.shelf;
    if (told === undefined || !this.shelf.fits(this.placement, 'isometric')) return nothing;
    return html`<set-up-check
      .visit=${this.visit}
      .test=${'isometric' as const}
      .side=${this.side}
      .placement=${this.placement}
      .seated=${this.protocol.parameters.position.value === 'seated'}
      .sensor=${told}
      .looked=${this.looked}
      @set-up-looked-at=${({ detail }: SetUpLooked) => (this.atStart = detail)}
    ></set-up-check>`;
  }

  private chooseFile(): TemplateResult {
    const seen = { file: this.file, refusal: this.refusal, fits: this.fileFits };
    return chooseRecording((input) => this.read(input), seen, PULL_READY_WORDS['file-does-not-fit']);
  }

  private leverField(): TemplateResult {
    const isBad = this.leverCm === undefined;
    return html`<label class="lever">
      <span>${PULL_READY_WORDS.lever.text}</span>
      <input
        type="text"
        inputmode="decimal"
        autocomplete="off"
        aria-describedby="lever-help"
        aria-invalid=${isBad}
        .value=${this.lever}
        @input=${(event: Event) => (this.lever = (event.currentTarget as HTMLInputElement).value)}
      />
      <span id="lever-help" class=${isBad ? 'voice' : 'quiet'}>
        ${PULL_READY_WORDS[isBad ? 'lever-bad' : 'lever-help'].text}
      </span>
    </label>`;
  }

  private setUp(): TemplateResult {
    const { position, stillBefore } = this.protocol.parameters;
    const sore = this.visit.sore[this.side];
    const isInsertion = sore === 'insertion' || sore === 'both-places';
    const words = PULL_READY_WORDS;
    return html`<section>
      <h2>${words['set-up'].text}</h2>
      <ul>
        <li>${words[position.value].text}</li>
        <li>${words.bar.text}</li>
        ${isInsertion ? html`<li class="voice">${words.insertion.text}</li>` : nothing}
        ${this.placement === 'platform' ? html`<li>${fill(words.rest, { seconds: stillBefore.value ?? 0 })}</li>` : nothing}
        <li>${words.tare.text}</li>
      </ul>
    </section>`;
  }

  private start(): TemplateResult {
    const { allowed } = this.gate;
    return html`<div class="start">
      ${
        this.problem === ''
          ? nothing
          : html`<p class="voice" role="alert">${fill(READY_WORDS['not-started'], { reason: this.problem })}</p>`
      }
      ${allowed ? nothing : html`<p class="voice">${READY_WORDS['live-locked'].text}</p>`}
      <button class="main" type="button" ?disabled=${!this.canBegin} @click=${() => void this.begin()}>
        ${PULL_READY_WORDS[this.origin === 'replayed' ? 'play' : 'begin'].text}
      </button>
    </div>`;
  }
}
