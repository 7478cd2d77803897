import { consume } from '@lit/context';
import type { SensorTold, TestKind } from '@surae/casebook';
import type { SensorPlacement } from '@surae/sensors';
import { LIVE_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { shelfContext } from '../contexts/capabilities.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import { ShelfFollower } from '../devices/shelf-follower.ts';
import { isLow } from '../live/held-facts.ts';
import { sensorChange } from '../live/sensor-change.ts';
import type { SetUpLight } from '../live/set-up-light.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './live-sensor.ts';

/** The sensor that is connected, where a test is made ready: whether it fits the place, its last seconds, and the way to another one. */
@customElement('sensor-in-hand')
export class SensorInHand extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        margin-block-start: var(--gap-3);
      }
      a {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
    `,
  ];

  @property({ attribute: false }) placement!: SensorPlacement;
  @property({ attribute: false }) test!: TestKind;
  @property({ attribute: false }) visitId = '';
  /** the sensor that the other leg was measured with in this visit; undefined where it was not measured with one */
  @property({ attribute: false }) sensorBefore: SensorTold | undefined;
  /** what is looked at before a test, as plain values; none is shown where there are none */
  @property({ attribute: false }) lights: readonly SetUpLight[] = [];
  @consume({ context: shelfContext }) private readonly shelf!: SensorShelf;

  constructor() {
    super();
    new ShelfFollower(this, () => this.shelf);
  }

  override render(): TemplateResult {
    const { shelf, placement, test } = this;
    const { held } = shelf;
    const fits = shelf.fits(placement, test);
    const percent = held?.battery?.percent ?? null;
    const change = sensorChange(this.sensorBefore, shelf.told);
    const words = { kind: held?.kindName ?? '', device: held?.deviceName ?? '' };
    const said =
      held === undefined
        ? LIVE_WORDS['none-held'].text
        : fill(fits ? LIVE_WORDS.held : LIVE_WORDS['does-not-fit'], words);
    return html`<p role="status" class=${fits ? '' : 'voice'}>${said}</p>
      <div role="status">
        ${isLow(percent) ? html`<p class="voice">${fill(LIVE_WORDS['battery-low'], { percent })}</p>` : nothing}
        ${change === null ? nothing : html`<p class="voice">${change}</p>`}
      </div>
      ${
        fits
          ? html`<live-sensor .placement=${placement} .test=${test} .lights=${this.lights} brief></live-sensor>`
          : nothing
      }
      <a href=${hashOf({ page: 'sensors', visitId: this.visitId })}>
        ${LIVE_WORDS[held === undefined ? 'connect' : 'look'].text}
      </a>`;
  }
}
