import { consume } from '@lit/context';
import { fiveLights, type Light, type SetupPlacement, type Side, setupDefaults, takeZero } from '@surae/analysis';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import { ageInDays, type Certificate, certificateFor } from '../journey/calibrations.ts';
import type { SensorTold } from '../journey/sensor-told.ts';
import { type SetUpKept, sensorKey, type ZeroEntry } from '../journey/set-up.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { lightInWords } from '../live/light-words.ts';
import { countedBy, lightFacts, seenSign } from '../live/set-up-facts.ts';
import type { SignalHistory } from '../live/signal-history.ts';
import { watchedTrace } from '../live/watched-trace.ts';
import { zeroWords } from '../live/zero-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import './light-list.ts';
import type { FixAskedFor } from './light-list.ts';

/** What a live picture tells twice a second: its last seconds, and how long nothing has come; null is never. */
export interface SensorLooked {
  readonly history: Pick<SignalHistory, 'channels' | 'line' | 'window'>;
  readonly silentS: number | null;
}

/** How things stand, for what is kept when a test begins. */
export type SetUpLooked = CustomEvent<SetUpKept>;

/** Seconds by which the lights are judged, and by which a sign is seen [s]; ours. */
const lightsS = 3;
const signS = 8;

/** The five lights before a test with a connected sensor, its zero and its calibration. A light that fails stops nobody. Tells `set-up-looked-at`. */
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

  @property({ attribute: false }) personId = '';
  @property({ attribute: false }) side!: Side;
  @property({ attribute: false }) placement!: SetupPlacement;
  /** whether something that the test shows needs the body mass */
  @property({ attribute: false }) massNeeded = true;
  @property({ attribute: false }) sensor!: SensorTold;
  @property({ attribute: false }) looked: SensorLooked | undefined;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private zero: ZeroEntry | null = null;
  @state() private certificate: Certificate | null = null;
  @state() private bodyMassKg: number | null = null;
  @state() private sideTold: Side | null = null;
  @state() private said = '';
  @state() private lights: readonly Light[] = [];
  private sign: 1 | -1 | null = null;

  private get key(): string {
    return sensorKey(this.sensor);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (
      changed.has('sensor') &&
      (changed.get('sensor') === undefined || sensorKey(changed.get('sensor')!) !== this.key)
    ) {
      this.sign = null;
      void this.load();
    }
    if (changed.has('side')) this.sideTold = null;
    this.judge();
  }

  protected override updated(): void {
    const kept: SetUpKept = {
      lights: this.lights.map(({ name, state: now, reason }) => ({ name, state: now, reason })),
      zero: this.zero,
      certificate: this.isCalibrated ? this.certificate : null,
    };
    this.dispatchEvent(new CustomEvent('set-up-looked-at', { detail: kept }));
  }

  private async load(): Promise<void> {
    const [zero, certificates, person] = await Promise.all([
      this.book.lastZero(this.key),
      this.book.certificates(),
      this.book.person(this.personId),
    ]);
    this.zero = zero;
    this.certificate = certificateFor(certificates, this.key);
    this.bodyMassKg = person?.bodyMassKg ?? null;
  }

  /** A calibration that is over counts no forces: that is for a person to decide anew. */
  private get isCalibrated(): boolean {
    return this.certificate !== null && this.daysLeft(this.certificate) >= 0;
  }

  private daysLeft(certificate: Certificate): number {
    return Math.floor(certificate.validDays - ageInDays(certificate, this.clock.isoNow()));
  }

  private judge(): void {
    const { looked, placement, side, sideTold, bodyMassKg, massNeeded, isCalibrated } = this;
    if (looked === undefined) return;
    this.sign = seenSign(watchedTrace(looked.history, signS), this.zero) ?? this.sign;
    const isoNow = this.clock.isoNow();
    const line = isCalibrated ? (this.certificate?.line ?? null) : null;
    const { trace, zero } = countedBy(watchedTrace(looked.history, lightsS), this.zero, line);
    const known = { placement, side, sideTold, bodyMassKg, massNeeded, zero, isCalibrated, isoNow };
    const facts = lightFacts({ ...known, silentS: looked.silentS }, this.sign);
    this.lights = fiveLights(trace, facts, setupDefaults.lights);
  }

  private readonly fix = ({ detail }: FixAskedFor): void => {
    if (detail === 'side-missing') this.sideTold = this.side;
    else void this.setZero();
  };

  private async setZero(): Promise<void> {
    const [group] = this.looked === undefined ? [] : watchedTrace(this.looked.history, 2).groups;
    const channel = group?.channels.find(({ quantity }) => quantity === 'force' || quantity === 'torque');
    const quantity = channel?.quantity === 'torque' ? 'torque' : 'force';
    const none = new Float64Array(0);
    const stretch = { timesS: group?.timesS ?? none, samples: channel?.samples ?? none };
    const taken = takeZero(stretch, { quantity, capacity: null, last: this.zero }, setupDefaults.zero);
    this.said = zeroWords(taken, quantity);
    if (taken.kind === 'refused') return;
    const { level, u, noise, emptyBy } = taken;
    try {
      await this.book.addZero(this.key, { level, u, noise, quantity, emptyBy });
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
      ${isForce ? this.force(lights) : nothing}
      <p role="status" class="voice">${this.said}</p>
      ${isOpen ? html`<p class="quiet">${SET_UP_WORDS['go-on'].text}</p>` : nothing}`;
  }

  private force(lights: readonly Light[]): TemplateResult {
    const words = SET_UP_WORDS;
    const { certificate } = this;
    const isAsked = lights.some(({ reason }) => reason === 'no-zero' || reason === 'zero-old');
    const figures = (one: Certificate) => ({ day: dayOf(one.at), days: this.daysLeft(one) });
    const counted = certificate === null ? words['not-calibrated'].text : fill(words.calibrated, figures(certificate));
    const isOver = certificate !== null && !this.isCalibrated;
    return html`${
      isAsked
        ? nothing
        : html`<button type="button" @click=${() => void this.setZero()}>${words['set-zero'].text}</button>`
    }
      <p class=${isOver ? 'voice' : 'quiet'}>
        ${isOver ? fill(words['calibration-over'], figures(certificate)) : counted}
      </p>`;
  }
}
