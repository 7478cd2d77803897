import { consume } from '@lit/context';
import { type Placement, protocolFingerprint, type SensedPlacement, type Side } from '@surae/analysis';
import {
  chosenFor,
  mayTest,
  type Person,
  practiceFor,
  type SetChoice,
  type SetUpKept,
  type Visit,
} from '@surae/casebook';
import { HAND_WORDS, type Protocol, READY_WORDS } from '@surae/shared';
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
import type { VisitBook } from '../journey/visit-book.ts';
import { type HandedLeg, type HandedRecording, handedLeg } from '../live/handed-recording.ts';
import { handedFor, useTaken } from '../live/handed-use.ts';
import { setOrigins, setOriginWords } from '../live/origin-words.ts';
import { protocolOf, protocolOfLeg } from '../live/protocol-choices.ts';
import { playsRecordings } from '../live/recording-chooser.ts';
import { fits } from '../live/recording-fit.ts';
import { otherLegSensor, unmovedSensor } from '../live/sensor-change.ts';
import { type StringAsked, stringAsked } from '../live/string-length.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import '../parts/chosen-test.ts';
import { chooseRecording } from '../parts/choose-recording.ts';
import '../parts/earlier-test.ts';
import '../parts/practice-raises.ts';
import { radioOption } from '../parts/radio-option.ts';
import '../parts/sensor-in-hand.ts';
import '../parts/set-up-check.ts';
import type { PlaceAnswered, SensorLooked, SetUpLooked } from '../parts/set-up-check.ts';
import '../parts/source-check.ts';
import '../parts/string-length.ts';
import { stopFor } from '../parts/stop-for.ts';
import type { StringTyped } from '../parts/string-length.ts';
import '../parts/taken-list.ts';
import { foldStyle } from '../parts/fold-style.ts';
import type { TakenChosen } from '../parts/taken-list.ts';
import { readyStyle } from './ready-style.ts';

const placements: readonly SensedPlacement[] = ['foot', 'heel', 'trunk', 'platform'];

/** Before a set: which leg, how it is tested, where the samples come from, and what to watch. */
@customElement('set-ready')
export class SetReady extends LitElement {
  static override styles = [base, foldStyle, readyStyle];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) side!: Side;
  /** visits of the person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  /** why the last attempt to start did nothing; empty when there was none */
  @property({ attribute: false }) problem = '';
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @state() private protocol!: Protocol;
  @state() private placement: Placement = 'foot';
  @state() private origin: SetChoice['origin'] = 'simulated';
  @state() private file: Omit<HandedLeg, 'placement'> | undefined;
  @state() private refusal = '';
  @state() private looked: SensorLooked | undefined;
  /** length of the string as it was typed here; undefined where nothing was */
  @state() private stringTyped: string | undefined;
  /** how things stand with the connected sensor; kept when the test begins */
  private atStart: SetUpKept | undefined;
  /** the sensor lies as it lay on the other leg, in words */
  @state() private unmoved: string | null = null;

  /** What was chosen for the set before, so that both legs are tested alike without another choice. */
  private get lastChoice(): SetChoice | undefined {
    return this.visit.sets.filter(({ setAside }) => !setAside).at(-1)?.choice;
  }

  constructor() {
    super();
    new ShelfFollower(this, () => this.shelf);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.shelf.held !== undefined) this.origin = 'live';
    if (this.lastChoice?.origin === 'by-hand') this.origin = 'by-hand';
    const handed = handedFor(this.sensors, this.visit);
    if (handed !== undefined) this.takeUp(handed);
    this.protocol = protocolOfLeg(this.visit, this.side);
    const told = handed === undefined ? null : handedLeg(handed, this.side).placement;
    const before = this.lastChoice?.origin === 'by-hand' ? undefined : this.lastChoice?.placement;
    this.placement = told ?? before ?? this.worn() ?? this.chosenPlace() ?? 'foot';
  }

  /** Where the connected sensor can be worn, by its description or by what it measures. */
  private worn(): SensedPlacement | undefined {
    const told = this.shelf.held?.placement;
    const likely = placements.filter((placement) => this.shelf.fits(placement, 'heel-raise'));
    return likely.find((placement) => placement === told) ?? likely[0];
  }

  /** Where the sensor sat last time, when the test of that time was taken over and no sensor in hand says otherwise. */
  private chosenPlace(): Placement | undefined {
    return placements.find((placement) => placement === chosenFor(this.visit, 'heel-raise')?.placement);
  }

  /** How the set will be seen. */
  private get seenAt(): Placement {
    return this.origin === 'by-hand' ? 'hand' : this.placement;
  }

  /** Whether the connected sensor gives what its place needs. */
  private get sensorFits(): boolean {
    return this.placement !== 'hand' && this.shelf.fits(this.placement, 'heel-raise');
  }

  /** The length of the string, where one measures. */
  private get string(): StringAsked {
    const { seenAt: placement, origin } = this;
    return stringAsked(this.stringTyped, this.visit, this.earlier, { placement, origin });
  }

  private get isLocked(): boolean {
    return !mayTest(this.origin, this.visit.safety, this.clock.isoNow()).allowed;
  }

  private get canBegin(): boolean {
    if (this.isLocked || this.string.lengthM === undefined) return false;
    if (this.origin === 'live') return this.sensorFits;
    return this.origin !== 'replayed' || this.fileFits;
  }

  private get fileFits(): boolean {
    return this.file !== undefined && fits(this.file.trace, this.placement);
  }

  private async read(input: HTMLInputElement): Promise<void> {
    const chosen = input.files?.[0];
    if (chosen === undefined) return;
    // readers of files are only loaded when there is a file
    const { readFile } = await import('../live/recording-file.ts');
    const read = readFile(new Uint8Array(await chosen.arrayBuffer()), chosen.name);
    this.file = undefined;
    this.refusal = '';
    if ('refusal' in read) {
      this.refusal = read.refusal.message;
      return;
    }
    this.file = read;
    if (read.placement !== null) this.placement = read.placement;
  }

  /** Plays a recording that was taken in, here and for the other leg. */
  private takeUp(handed: HandedRecording): void {
    const leg = handedLeg(handed, this.side);
    this.file = leg;
    this.refusal = '';
    this.origin = 'replayed';
    if (leg.placement !== null) this.placement = leg.placement;
    if (playsRecordings(this.sensors)) this.sensors.handOver(handed);
  }

  /** How the set would be begun now; practice raises make the rule of the reference another one. */
  private choice(): SetChoice {
    const { side, protocol, seenAt: placement, origin } = this;
    const { told } = this.shelf;
    const string = this.string.kept;
    const practised = practiceFor(this.visit, { side, placement, origin, ...string }) !== undefined;
    const rule = practised ? 'best-two-of-familiarisation' : protocol.parameters.referenceRule.value;
    return {
      side,
      protocolId: protocol.id,
      protocolFingerprint: protocolFingerprint(protocol, placement, rule),
      placement,
      origin,
      ...string,
      ...(origin === 'live' && told !== undefined ? { sensor: told } : {}),
      ...(origin === 'live' && this.atStart !== undefined ? { setUp: this.atStart } : {}),
    };
  }

  private async begin(): Promise<void> {
    const { origin, sensors, file } = this;
    if (origin === 'replayed' && file !== undefined) {
      if (file.taken !== undefined) this.refusal = await useTaken(sensors, this.book, file.taken, this.visit);
      if (this.refusal !== '') return;
      if (playsRecordings(sensors)) sensors.choose(file.trace);
    }
    this.dispatchEvent(new CustomEvent<SetChoice>('begin-set', { detail: this.choice() }));
  }

  override render(): TemplateResult {
    return html`
      <h1 tabindex="-1">
        <span class="side" data-side=${this.side}>${READY_WORDS[`title-${this.side}`].text}</span>
      </h1>
      <div class="sheet">
        <div class="choice">
          <earlier-test .visit=${this.visit} .side=${this.side} .test=${'heel-raise' as const}></earlier-test>
          ${this.protocolShown()} ${this.origin === 'by-hand' ? nothing : this.places()} ${this.sources()}
          ${this.origin === 'by-hand' ? nothing : this.practice()}
        </div>
        <div class="go">
          ${stopFor('safety.during.force-drop', READY_WORDS.watch.text)}
          <div class="start">
            ${
              this.problem === ''
                ? nothing
                : html`<p class="voice" role="alert">${fill(READY_WORDS['not-started'], { reason: this.problem })}</p>`
            }
            <p class="voice" role="status">${this.origin === 'live' ? this.unmoved : nothing}</p>
            ${this.isLocked ? html`<p class="voice">${READY_WORDS['live-locked'].text}</p>` : nothing}
            <button class="main" type="button" ?disabled=${!this.canBegin} @click=${() => void this.begin()}>
              ${READY_WORDS.begin.text}
            </button>
          </div>
        </div>
      </div>
    `;
  }

  private protocolShown(): TemplateResult {
    const other = this.visit.sets.filter(({ setAside, choice }) => !setAside && choice.side !== this.side).at(-1);
    const isUnlike = other !== undefined && protocolOf(other.choice.protocolId) !== this.protocol;
    return html`<section>
      <h2>${READY_WORDS.protocol.text}</h2>
      <chosen-test .visit=${this.visit} .test=${'heel-raise' as const} .protocol=${this.protocol}></chosen-test>
      ${isUnlike ? html`<p class="voice">${READY_WORDS['unlike-other-side'].text}</p>` : nothing}
    </section>`;
  }

  private practice(): TemplateResult {
    return html`<practice-raises
      .visit=${this.visit}
      .person=${this.person}
      .protocol=${this.protocol}
      .choice=${this.choice()}
      .ready=${this.canBegin}
    ></practice-raises>`;
  }

  private places(): TemplateResult {
    return html`<fieldset>
      <legend>${READY_WORDS.placement.text}</legend>
      <div class="options">
        ${placements.map((placement) =>
          radioOption('placement', READY_WORDS[placement].text, this.placement === placement, () => {
            this.placement = placement;
          }),
        )}
      </div>
      ${
        this.placement === 'heel'
          ? html`<string-length
              .asked=${this.string}
              @string-typed=${({ detail }: StringTyped) => (this.stringTyped = detail)}
            ></string-length>`
          : nothing
      }
    </fieldset>`;
  }

  private sources(): TemplateResult {
    return html`<fieldset>
      <legend>${READY_WORDS.source.text}</legend>
      <div class="options">
        ${setOrigins.map((origin) =>
          radioOption('origin', setOriginWords[origin].text, this.origin === origin, () => (this.origin = origin)),
        )}
      </div>
      ${this.origin === 'replayed' ? this.chooseFile() : nothing}
      <taken-list .visit=${this.visit} @taken-chosen=${({ detail }: TakenChosen) => this.takeUp(detail)}></taken-list>
      ${
        this.origin === 'by-hand'
          ? html`<p>${HAND_WORDS.explain.text}</p>
              <p class="quiet">${HAND_WORDS.error.text}</p>`
          : nothing
      }
      ${
        this.origin === 'live'
          ? html`<sensor-in-hand
              .placement=${this.placement}
              .test=${'heel-raise' as const}
              .visitId=${this.visit.id}
              .sensorBefore=${otherLegSensor(this.visit.sets, this.side)}
              @sensor-looked-at=${({ detail }: CustomEvent<SensorLooked>) => (this.looked = detail)}
            ></sensor-in-hand>
            ${this.check()}`
          : this.origin === 'by-hand'
            ? nothing
            : this.sourceCheck(this.origin)
      }
    </fieldset>`;
  }

  /** The lights of a source that tests nobody. */
  private sourceCheck(origin: 'simulated' | 'replayed'): TemplateResult | typeof nothing {
    if (this.placement === 'hand') return nothing;
    return html`<source-check
      .personId=${this.visit.personId}
      .origin=${origin}
      .recording=${origin === 'replayed' ? (this.file?.trace ?? null) : null}
      .sideOfRecording=${origin === 'replayed' ? (this.file?.side ?? null) : null}
      .placement=${this.placement}
      .side=${this.side}
    ></source-check>`;
  }

  /** The lights and the questions, for a sensor that gives what this place needs. */
  private check(): TemplateResult | typeof nothing {
    const { told } = this.shelf;
    if (told === undefined || !this.sensorFits) return nothing;
    return html`<set-up-check
      .visit=${this.visit}
      .test=${'heel-raise' as const}
      .side=${this.side}
      .placement=${this.placement}
      .sensor=${told}
      .looked=${this.looked}
      @place-answered=${({ detail }: PlaceAnswered) => {
        if (detail !== 'inline') this.placement = detail;
      }}
      @set-up-looked-at=${({ detail }: SetUpLooked) =>
        (this.unmoved = unmovedSensor(this.visit, this.choice(), (this.atStart = detail).up))}
    ></set-up-check>`;
  }

  private chooseFile(): TemplateResult {
    const seen = { file: this.file, refusal: this.refusal, fits: this.fileFits };
    return chooseRecording((input) => this.read(input), seen, READY_WORDS['file-does-not-fit']);
  }
}
