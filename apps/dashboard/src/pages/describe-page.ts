import { consume } from '@lit/context';
import type { SensorDocument } from '@surae/sensors';
import { DESCRIBE_PLACE, DESCRIBE_WORDS, SENSOR_WORDS } from '@surae/shared';
import type { Json } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock, shelfContext } from '../contexts/capabilities.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { type DecodedView, decodedView } from '../live/decoded-view.ts';
import { describedOrFaults } from '../live/description-file.ts';
import { descriptionStarter, starterBytes } from '../live/description-starter.ts';
import { typedBytes } from '../live/typed-bytes.ts';
import { fieldStyle } from '../parts/field-style.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** How often the bytes that come are shown anew [ms]; ours: as fast as one reads. */
const lookEveryMs = 500;

/** The description of a sensor while it is written: its faults with their place, and what bytes would mean by it. */
@customElement('describe-page')
export class DescribePage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      .back {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
      .sheet {
        display: grid;
        gap: var(--gap-6) var(--gap-12);
        grid-template-columns: minmax(0, 1fr);
        margin-block-start: var(--gap-4);
      }
      .sheet > div {
        align-content: start;
        display: grid;
        gap: var(--gap-3);
        grid-template-columns: minmax(0, 1fr);
      }
      textarea {
        background: var(--raised);
        border: 1.5px solid var(--ink);
        border-radius: 4px;
        color: inherit;
        font-family: ui-monospace, 'DejaVu Sans Mono', monospace;
        font-size: var(--size-1);
        inline-size: 100%;
        line-height: 1.4;
        padding: var(--gap-3);
        resize: vertical;
      }
      #text,
      #bytes-help {
        margin-block-start: var(--gap-2);
      }
      #bytes {
        display: block;
      }
      #text {
        block-size: min(34rem, 60vh);
        white-space: pre;
      }
      ul {
        margin: 0;
        padding-inline-start: 1.2em;
      }
      p {
        margin: 0;
      }
      .live {
        align-items: center;
        display: flex;
        font-weight: normal;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      input[type='checkbox'] {
        accent-color: var(--ink);
        block-size: 24px;
        flex: none;
        inline-size: 24px;
        min-block-size: 24px;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        border-collapse: collapse;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        padding: var(--gap-2) var(--gap-4) var(--gap-2) 0;
        text-align: end;
        vertical-align: bottom;
      }
      @media (min-width: 60rem) {
        .sheet {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
      }
    `,
  ];

  /** the kept description to begin from; null begins from a small example */
  @property({ attribute: false }) descriptionId: string | null = null;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private text = descriptionStarter;
  @state() private bytes = starterBytes;
  @state() private stream = 0;
  @state() private isLive = false;
  @state() private said = '';
  private endLooks: () => void = () => {};

  override connectedCallback(): void {
    super.connectedCallback();
    this.endLooks = this.clock.every(lookEveryMs, () => this.take());
    void this.load();
  }

  override disconnectedCallback(): void {
    this.endLooks();
    super.disconnectedCallback();
  }

  private async load(): Promise<void> {
    const kept = (await this.book.descriptions()).find(({ id }) => id === this.descriptionId);
    if (kept === undefined) return;
    this.text = JSON.stringify(kept.json, null, 2);
    this.bytes = '';
  }

  /** What came last, in place of what was typed. */
  private take(): void {
    if (!this.isLive) return;
    const answer = describedOrFaults(this.text);
    const bytes = this.shelf.held?.latestBytes(this.stream);
    if (bytes !== undefined && 'sensor' in answer) this.bytes = typedBytes(answer.sensor, bytes) ?? this.bytes;
  }

  private async keep({ name }: SensorDocument): Promise<void> {
    try {
      await this.book.addDescription(name, JSON.parse(this.text) as Json);
      this.said = fill(DESCRIBE_WORDS.kept, { name });
    } catch {
      this.said = SENSOR_WORDS['not-kept'].text;
    }
  }

  private save({ name }: SensorDocument): void {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([`${this.text}\n`], { type: 'application/json' }));
    link.download = `${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}.json`;
    link.click();
    URL.revokeObjectURL(link.href);
  }

  override render(): TemplateResult {
    const words = DESCRIBE_WORDS;
    const answer = describedOrFaults(this.text);
    return html`
      <a class="back" href=${hashOf({ page: 'sensors', visitId: null })}>${words.back.text}</a>
      <h1 tabindex="-1">${DESCRIBE_PLACE.title.text}</h1>
      <p>${words.explain.text}</p>
      <div class="sheet">
        <div>
          <div>
          <label for="text">${words.text.text}</label>
          <textarea
            id="text"
            spellcheck="false"
            autocapitalize="off"
            autocomplete="off"
            aria-describedby="answer"
            aria-invalid=${'faults' in answer ? 'true' : 'false'}
            .value=${this.text}
            @input=${(event: Event) => {
              this.text = (event.target as HTMLTextAreaElement).value;
              this.said = '';
            }}
          ></textarea>
          </div>
          <div id="answer" role="status">${'faults' in answer ? this.faults(answer.faults) : html`<p>${words.usable.text}</p>`}</div>
          ${'sensor' in answer ? this.ways(answer.sensor) : nothing}
          <p role="status" class="voice">${this.said}</p>
        </div>
        <div>${'sensor' in answer ? this.meaning(answer.sensor) : nothing}</div>
      </div>
    `;
  }

  private faults(faults: readonly string[]): TemplateResult {
    return html`<div class="voice">
      <p>${DESCRIBE_WORDS.faults.text}</p>
      <ul>
        ${faults.map((fault) => html`<li>${fault}</li>`)}
      </ul>
    </div>`;
  }

  private ways(sensor: SensorDocument): TemplateResult {
    return html`<div class="choices">
      <button class="main" type="button" @click=${() => void this.keep(sensor)}>${DESCRIBE_WORDS.keep.text}</button>
      <button class="plain" type="button" @click=${() => this.save(sensor)}>${DESCRIBE_WORDS.save.text}</button>
    </div>`;
  }

  private meaning(sensor: SensorDocument): TemplateResult {
    const words = DESCRIBE_WORDS;
    const isSerial = sensor.link.kind === 'serial';
    const view = decodedView(sensor, this.stream, this.bytes);
    return html`${this.streams(sensor)}
      <div>
        <label for="bytes">${words[isSerial ? 'bytes-stream' : 'bytes'].text}</label>
        <textarea
          id="bytes"
          rows="4"
          spellcheck="false"
          autocapitalize="off"
          autocomplete="off"
          aria-describedby="bytes-help"
          aria-invalid=${view === undefined ? 'true' : 'false'}
          ?readonly=${this.isLive}
          .value=${this.bytes}
          @input=${(event: Event) => (this.bytes = (event.target as HTMLTextAreaElement).value)}
        ></textarea>
        <p id="bytes-help" class=${view === undefined ? 'voice' : 'quiet'}>
          ${words[view === undefined ? 'bytes-bad' : 'bytes-help'].text}
        </p>
      </div>
      ${this.live(sensor)}
      <h2>${words.decoded.text}</h2>
      ${view === undefined || view.lines.length === 0 ? html`<p class="quiet">${words['decoded-none'].text}</p>` : this.table(view)}`;
  }

  /** A sensor with more than one characteristic sends other packets from each. */
  private streams({ link }: SensorDocument): TemplateResult | typeof nothing {
    if (link.kind === 'serial' || link.characteristics.length < 2) return nothing;
    return html`<div>
      <label for="stream">${DESCRIBE_WORDS.which.text}</label>
      <select
        id="stream"
        @change=${(event: Event) => (this.stream = Number((event.target as HTMLSelectElement).value))}
      >
        ${link.characteristics.map(
          ({ characteristic }, i) => html`<option value=${i} ?selected=${i === this.stream}>${characteristic}</option>`,
        )}
      </select>
    </div>`;
  }

  private live({ link }: SensorDocument): TemplateResult {
    if (this.shelf.held?.route !== link.kind) return html`<p class="quiet">${DESCRIBE_WORDS['live-none'].text}</p>`;
    return html`<label class="live">
      <input
        type="checkbox"
        .checked=${this.isLive}
        @change=${(event: Event) => (this.isLive = (event.target as HTMLInputElement).checked)}
      />
      ${DESCRIBE_WORDS.live.text}
    </label>`;
  }

  private table({ lines, columns, rows }: DecodedView): TemplateResult {
    return html`<div>${lines.map((line) => html`<p>${line}</p>`)}</div>
      ${
        rows.length === 0
          ? nothing
          : html`<div class="scroll" tabindex="0" role="group" aria-label=${DESCRIBE_WORDS.decoded.text}>
              <table>
                <thead>
                  <tr>
                    <th scope="col">${DESCRIBE_WORDS.sample.text}</th>
                    ${columns.map((column) => html`<th scope="col">${column}</th>`)}
                  </tr>
                </thead>
                <tbody>
                  ${rows.map(
                    (row, i) =>
                      html`<tr>
                        <th scope="row">${i + 1}</th>
                        ${row.map((cell) => html`<td>${cell}</td>`)}
                      </tr>`,
                  )}
                </tbody>
              </table>
            </div>`
      }`;
  }
}
