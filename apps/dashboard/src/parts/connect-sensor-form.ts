import { consume } from '@lit/context';
import { type AdoptedCharacteristic, adoptedCharacteristics } from '@surae/sensors';
import { SENSOR_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { connectBluetooth, connectMotion, connectSerial, kindName } from '../devices/connect-sensor.ts';
import { DeviceError } from '../devices/device-error.ts';
import { deviceWords } from '../devices/device-words.ts';
import type { HeldSensor } from '../devices/held-sensor.ts';
import { portNames } from '../devices/port-names.ts';
import type { KeptDescription, SensorKind } from '../devices/sensor-kind.ts';
import { choosePort, knownPorts } from '../devices/serial-choice.ts';
import type { SerialPort } from '../devices/serial-interface.ts';
import { routesHere, type SourceRoute, whyNoSource } from '../devices/source-access.ts';
import { readyStyle } from '../pages/ready-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldBox } from './field-style.ts';

/** Told with the sensor that was connected. */
export type SensorConnected = CustomEvent<HeldSensor>;

const routes = ['bluetooth', 'serial', 'motion', 'simulated', 'file'] as const;
type Route = (typeof routes)[number];

/** What is asked to connect a sensor: which kind of source, then what that kind needs. Tells `sensor-connected`. */
@customElement('connect-sensor-form')
export class ConnectSensorForm extends LitElement {
  static override styles = [
    base,
    readyStyle,
    css`
      .way {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        margin-block-start: var(--gap-4);
        max-inline-size: 44rem;
      }
      .way > div {
        inline-size: 100%;
      }
      .way p {
        margin: 0;
      }
      .way label {
        display: block;
        font-weight: 600;
        margin-block-end: var(--gap-1);
      }
      select {
        ${fieldBox}
        text-overflow: ellipsis;
      }
    `,
  ];

  /** descriptions that are kept and can be used */
  @property({ attribute: false }) described: readonly KeptDescription[] = [];
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private route: Route = 'bluetooth';
  @state() private chosenKind: string | undefined;
  @state() private chosenSerial: string | undefined;
  @state() private ports: readonly SerialPort[] = [];
  @state() private isBusy = false;
  @state() private problem: Error | undefined;

  private get kinds(): readonly { readonly code: string; readonly kind: SensorKind }[] {
    const described = this.described
      .filter(({ sensor }) => sensor.link.kind === 'bluetooth')
      .map((description) => ({ code: description.id, kind: { kind: 'described', description } as const }));
    const adopted = adoptedCharacteristics.map((one: AdoptedCharacteristic) => ({
      code: one.characteristic,
      kind: { kind: 'adopted', adopted: one } as const,
    }));
    return [...described.reverse(), { code: 'open', kind: { kind: 'open' } }, ...adopted];
  }

  private get serial(): readonly KeptDescription[] {
    return this.described.filter(({ sensor }) => sensor.link.kind === 'serial').toReversed();
  }

  private choose(route: Route): void {
    this.route = route;
    this.problem = undefined;
    if (route === 'serial') void this.lookForPorts();
  }

  private async lookForPorts(): Promise<void> {
    try {
      this.ports = await knownPorts(window);
    } catch {
      // why there are none is said where the route is shown
      this.ports = [];
    }
  }

  private async connect(work: () => Promise<HeldSensor>): Promise<void> {
    this.isBusy = true;
    this.problem = undefined;
    try {
      const detail = await work();
      this.dispatchEvent(new CustomEvent('sensor-connected', { detail }));
    } catch (error) {
      this.problem = error instanceof Error ? error : new Error(String(error));
    }
    this.isBusy = false;
  }

  override render(): TemplateResult {
    const words = SENSOR_WORDS;
    return html`<fieldset>
        <legend>${words.route.text}</legend>
        <div class="options">
          ${routes.map(
            (route) =>
              html`<label class="option">
                <input
                  type="radio"
                  name="route"
                  .checked=${this.route === route}
                  ?disabled=${this.isBusy}
                  @change=${() => this.choose(route)}
                />
                <span>${words[route].text}</span>
              </label>`,
          )}
        </div>
      </fieldset>
      <div class="way">${this.way()}</div>
      <div role="status">${this.isBusy ? html`<p>${words.connecting.text}</p>` : nothing}</div>
      ${this.problem === undefined ? nothing : this.told(this.problem)}`;
  }

  private told(problem: Error): TemplateResult {
    const hasMore = problem instanceof DeviceError && ['service-missing', 'failed'].includes(problem.code);
    return html`<div role="alert">
      <p class="voice">${deviceWords(problem).text}</p>
      ${hasMore ? html`<p class="quiet">${fill(SENSOR_WORDS.details, { message: problem.message })}</p>` : nothing}
    </div>`;
  }

  private way(): TemplateResult {
    const { route } = this;
    if (route === 'simulated' || route === 'file') return html`<p>${SENSOR_WORDS['in-visit'].text}</p>`;
    const why = whyNoSource(window, route satisfies SourceRoute);
    if (why !== undefined) {
      const names = [...routesHere(window), 'file' as const].map((one) => SENSOR_WORDS[one].text).join('; ');
      return html`<p class="voice">${deviceWords(why).text}</p>
        <p>${fill(SENSOR_WORDS['works-here'], { names })}</p>`;
    }
    return { bluetooth: () => this.bluetooth(), serial: () => this.ofSerial(), motion: () => this.motion() }[route]();
  }

  private bluetooth(): TemplateResult {
    const words = SENSOR_WORDS;
    const { kinds } = this;
    const chosen = kinds.find(({ code }) => code === this.chosenKind) ?? kinds[0]!;
    const option = ({ code, kind }: (typeof kinds)[number]): TemplateResult =>
      html`<option value=${code} ?selected=${code === chosen.code}>${kindName(kind)}</option>`;
    const described = kinds.filter(({ kind }) => kind.kind === 'described');
    return html`<div>
        <label for="kind">${words.kind.text}</label>
        <select
          id="kind"
          ?disabled=${this.isBusy}
          @change=${(event: Event) => (this.chosenKind = (event.target as HTMLSelectElement).value)}
        >
          ${described.length === 0 ? nothing : html`<optgroup label=${words.described.text}>${described.map(option)}</optgroup>`}
          <optgroup label=${words.standard.text}>
            ${kinds.filter(({ kind }) => kind.kind !== 'described').map(option)}
          </optgroup>
        </select>
      </div>
      <p class="quiet">${words['bluetooth-help'].text}</p>
      <button
        class="main"
        type="button"
        ?disabled=${this.isBusy}
        @click=${() => void this.connect(() => connectBluetooth(window, chosen.kind, this.clock))}
      >
        ${words['choose-bluetooth'].text}
      </button>`;
  }

  private ofSerial(): TemplateResult {
    const words = SENSOR_WORDS;
    const { serial, ports } = this;
    const chosen = serial.find(({ id }) => id === this.chosenSerial) ?? serial[0];
    if (chosen === undefined) return html`<p class="voice">${words['serial-none'].text}</p>`;
    const open = (port: () => Promise<SerialPort>): void =>
      void this.connect(async () => connectSerial(await port(), chosen, this.clock));
    return html`<div>
        <label for="serial-kind">${words.kind.text}</label>
        <select
          id="serial-kind"
          ?disabled=${this.isBusy}
          @change=${(event: Event) => (this.chosenSerial = (event.target as HTMLSelectElement).value)}
        >
          ${serial.map(({ id, sensor }) => html`<option value=${id} ?selected=${id === chosen.id}>${sensor.name}</option>`)}
        </select>
      </div>
      ${portNames(ports).map(
        (name, i) =>
          html`<button
            class=${i === 0 ? 'main' : ''}
            type="button"
            ?disabled=${this.isBusy}
            @click=${() => open(() => Promise.resolve(ports[i]!))}
          >
            ${name}
          </button>`,
      )}
      <button
        class=${ports.length === 0 ? 'main' : ''}
        type="button"
        ?disabled=${this.isBusy}
        @click=${() => open(() => choosePort(window))}
      >
        ${words[ports.length === 0 ? 'first-port' : 'choose-port'].text}
      </button>`;
  }

  private motion(): TemplateResult {
    return html`<p class="quiet">${SENSOR_WORDS['motion-help'].text}</p>
      <button
        class="main"
        type="button"
        ?disabled=${this.isBusy}
        @click=${() => void this.connect(() => connectMotion(window, this.clock))}
      >
        ${SENSOR_WORDS['follow-motion'].text}
      </button>`;
  }
}
