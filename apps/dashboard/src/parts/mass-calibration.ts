import { consume } from '@lit/context';
import { type MassLevel, massLine, setupDefaults, stillLevel } from '@surae/analysis';
import { type SensorTold, sensorKey } from '@surae/casebook';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import { typedNumber } from '../journey/person-form.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { massWords } from '../live/mass-words.ts';
import { watchedTrace } from '../live/watched-trace.ts';
import { softwareName } from '../result/software.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fieldStyle } from './field-style.ts';
import type { SensorLooked } from './set-up-check.ts';

/** Seconds of the sensor that a mass is read from [s], and the greatest mass that is taken [kg]; ours. */
const readS = 2;
const mostKg = 500;

/** Calibrates the connected cell: reads known masses one by one, fits the line, keeps the certificate. */
@customElement('mass-calibration')
export class MassCalibrationPart extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      h3:first-of-type {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-6);
        padding-block-start: var(--gap-4);
      }
      form {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        margin-block: var(--gap-4);
      }
      table {
        border-collapse: collapse;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        padding-block: var(--gap-2);
        padding-inline-end: var(--gap-6);
        text-align: end;
      }
      button {
        margin-block-start: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) sensor!: SensorTold;
  @property({ attribute: false }) looked: SensorLooked | undefined;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private mass = '0';
  @state() private levels: readonly MassLevel[] = [];
  @state() private said = '';

  private get massKg(): number | undefined {
    const typed = typedNumber(this.mass);
    return typed == null || typed < 0 || typed > mostKg ? undefined : typed;
  }

  private read(event: SubmitEvent): void {
    event.preventDefault();
    const { looked, massKg } = this;
    const [group] = looked === undefined ? [] : watchedTrace(looked.history, readS).groups;
    const samples = group?.channels.find(({ quantity }) => quantity === 'force')?.samples;
    if (massKg === undefined || group === undefined || samples === undefined) return;
    const { level: rule, stillMostN } = setupDefaults.masses;
    const still = stillLevel({ timesS: group.timesS, samples }, rule);
    if (still === null || still.range > stillMostN || still.longestGapS > rule.gapS) {
      this.said = SET_UP_WORDS['not-still'].text;
      return;
    }
    this.said = '';
    this.levels = [...this.levels, { massKg, level: still.level, u: still.u }];
  }

  private async keep(): Promise<void> {
    const { levels, sensor } = this;
    const { gravityMps2, masses } = setupDefaults;
    const line = massLine(levels, gravityMps2, masses);
    if (line.kind === 'refused') return;
    try {
      await this.book.addCalibration({
        sensor: sensorKey(sensor),
        levels,
        gravityMps2,
        line,
        validDays: masses.validDays,
        temperatureC: null,
        software: softwareName(),
      });
      this.levels = [];
      this.said = SET_UP_WORDS['now-kept'].text;
    } catch {
      this.said = SET_UP_WORDS['not-kept'].text;
    }
  }

  override render(): TemplateResult | typeof nothing {
    const words = SET_UP_WORDS;
    if (this.looked?.history.channels.some(({ quantity }) => quantity === 'force') !== true) return nothing;
    const isBad = this.massKg === undefined;
    return html`<h3>${words['calibrate-title'].text}</h3>
      <p>${words['calibrate-explain'].text}</p>
      <form novalidate @submit=${(event: SubmitEvent) => this.read(event)}>
        <div>
          <label for="mass">${words['mass-on'].text}</label>
          <input
            id="mass"
            inputmode="decimal"
            autocomplete="off"
            aria-describedby="mass-help"
            aria-invalid=${isBad}
            .value=${this.mass}
            @input=${(event: Event) => (this.mass = (event.currentTarget as HTMLInputElement).value)}
          />
          <p id="mass-help" class=${isBad ? 'voice' : 'quiet'}>${words[isBad ? 'mass-bad' : 'mass-help'].text}</p>
        </div>
        <button type="submit" ?disabled=${isBad}>${words['read-mass'].text}</button>
      </form>
      <p role="status" class="voice">${this.said}</p>
      ${this.levels.length === 0 ? nothing : this.line()}`;
  }

  private line(): TemplateResult {
    const words = SET_UP_WORDS;
    const { gravityMps2, masses } = setupDefaults;
    const fit = massLine(this.levels, gravityMps2, masses);
    const isRefused = fit.kind === 'refused';
    return html`<table>
        <caption class="quiet">${words['read-so-far'].text}</caption>
        <tr>
          <th scope="col">${words['mass-column'].text}</th>
          <th scope="col">${words['reading-column'].text}</th>
          <th scope="col">${words['uncertainty-column'].text}</th>
        </tr>
        ${this.levels.map(
          ({ massKg, level, u }) =>
            html`<tr><td>${massKg}</td><td>${decimal(level, 2)}</td><td>${decimal(u, 2)}</td></tr>`,
        )}
      </table>
      <button type="button" @click=${() => (this.levels = this.levels.slice(0, -1))}>${words['take-back'].text}</button>
      <h4>${words['line-title'].text}</h4>
      ${massWords(fit, masses.validDays).map((text) => html`<p class=${isRefused ? 'voice' : ''}>${text}</p>`)}
      ${isRefused ? nothing : html`<button type="button" @click=${() => void this.keep()}>${words.keep.text}</button>`}`;
  }
}
