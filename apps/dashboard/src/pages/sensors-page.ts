import { consume } from '@lit/context';
import type { DescriptionEntry } from '@surae/casebook';
import { HELD_WORDS, SENSOR_PLACE, SENSOR_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, shelfContext } from '../contexts/capabilities.ts';
import type { HeldSensor } from '../devices/held-sensor.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import { ShelfFollower } from '../devices/shelf-follower.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { describedOrFaults, usableDescriptions } from '../live/description-file.ts';
import type { SetUpLight } from '../live/set-up-light.ts';
import '../parts/connect-sensor-form.ts';
import type { SensorConnected } from '../parts/connect-sensor-form.ts';
import '../parts/description-list.ts';
import type { DescriptionTakenBack } from '../parts/description-list.ts';
import '../parts/json-file.ts';
import type { FileRead } from '../parts/json-file.ts';
import { KeptEntries } from '../parts/kept-entries.ts';
import '../parts/live-sensor.ts';
import '../parts/mass-calibration.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import type { SensorLooked } from '../parts/set-up-check.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** The sensors: the one that is connected, how another one is connected, and the descriptions that are kept. */
@customElement('sensors-page')
export class SensorsPage extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    css`
      .sheet {
        display: grid;
        gap: 0 var(--gap-12);
        grid-template-columns: minmax(0, 1fr);
      }
      .back {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
      .let-go {
        margin-block-start: var(--gap-4);
      }
      json-file {
        margin-block: var(--gap-4);
        max-inline-size: 44rem;
      }
      ul.faults {
        padding-inline-start: 1.2em;
      }
      @media (min-width: 60rem) {
        .sheet {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
      }
    `,
  ];

  /** the visit that one came from; null without one */
  @property({ attribute: false }) visitId: string | null = null;
  /** what is looked at before a test, as plain values */
  @property({ attribute: false }) lights: readonly SetUpLight[] = [];
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;
  @state() private looked: SensorLooked | undefined;
  private readonly kept = new KeptEntries<DescriptionEntry>(
    this,
    async () => (await this.book.descriptions()).filter(({ isOver }) => !isOver),
    SENSOR_WORDS['not-kept'].text,
  );
  @state() private refused: { readonly file: string; readonly faults: readonly string[] } | undefined;

  constructor() {
    super();
    new ShelfFollower(this, () => this.shelf);
  }

  private async connected(sensor: HeldSensor): Promise<void> {
    await this.shelf.hold(sensor);
    await this.updateComplete;
    // whoever goes by the keyboard goes on with what was just connected
    this.renderRoot.querySelector<HTMLElement>('#held')?.focus();
  }

  private async letGo(): Promise<void> {
    await this.shelf.letGo();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus();
  }

  private async read({ name, text }: FileRead['detail']): Promise<void> {
    const answer = describedOrFaults(text);
    this.kept.say('');
    this.refused = 'faults' in answer ? { file: name, faults: answer.faults } : undefined;
    if (!('sensor' in answer)) return;
    const { sensor } = answer;
    await this.kept.change(
      () => this.book.addDescription(sensor.name, sensor),
      fill(SENSOR_WORDS.imported, { name: sensor.name }),
    );
  }

  override render(): TemplateResult {
    const words = SENSOR_WORDS;
    const { held } = this.shelf;
    return html`
      ${
        this.visitId === null
          ? nothing
          : html`<a class="back" href=${hashOf({ page: 'visit', visitId: this.visitId })}>${words.back.text}</a>`
      }
      <h1 tabindex="-1">${SENSOR_PLACE.title.text}</h1>
      <p>${words.explain.text}</p>
      <div class="sheet">
        <div>${held === undefined ? this.connect() : this.inHand(held)}</div>
        <div>${this.descriptions()}</div>
      </div>
    `;
  }

  private connect(): TemplateResult {
    return html`<section>
      <h2>${SENSOR_WORDS.connect.text}</h2>
      <p class="quiet">${SENSOR_WORDS['none-held'].text}</p>
      <connect-sensor-form
        .described=${usableDescriptions(this.kept.entries ?? [])}
        @sensor-connected=${({ detail }: SensorConnected) => void this.connected(detail)}
      ></connect-sensor-form>
    </section>`;
  }

  private inHand({ kindName, deviceName, route }: HeldSensor): TemplateResult {
    return html`<section>
      <h2 id="held" tabindex="-1">${kindName}</h2>
      <p class="quiet">${deviceName}, ${HELD_WORDS[`by-${route}`].text}</p>
      <live-sensor
        .lights=${this.lights}
        @sensor-looked-at=${({ detail }: CustomEvent<SensorLooked>) => (this.looked = detail)}
      ></live-sensor>
      <mass-calibration .sensor=${this.shelf.told} .looked=${this.looked}></mass-calibration>
      <button class="let-go" type="button" @click=${() => void this.letGo()}>${HELD_WORDS['let-go'].text}</button>
    </section>`;
  }

  private descriptions(): TemplateResult {
    const words = SENSOR_WORDS;
    const { refused } = this;
    const { entries = [], said } = this.kept;
    return html`<section>
      <h2>${words.kept.text}</h2>
      ${
        entries.length === 0
          ? html`<p class="quiet">${words['kept-none'].text}</p>`
          : html`<description-list
              .entries=${entries}
              @description-taken-back=${({ detail }: DescriptionTakenBack) => void this.kept.change(() => this.book.takeBackDescription(detail))}
            ></description-list>`
      }
      <p role="status" class="voice">${said}</p>
      <json-file
        label=${words.import.text}
        help=${words['import-help'].text}
        @file-read=${({ detail }: FileRead) => void this.read(detail)}
      ></json-file>
      ${
        refused === undefined
          ? nothing
          : html`<div role="alert" class="voice">
              <p>${fill(words['import-refused'], { file: refused.file })}</p>
              <ul class="faults">
                ${refused.faults.map((fault) => html`<li>${fault}</li>`)}
              </ul>
            </div>`
      }
      <a class="button" href=${hashOf({ page: 'describe', descriptionId: null })}>${words.write.text}</a>
    </section>`;
  }
}
