import { type RestLoad, restLoadOn, setupDefaults, type Trace } from '@surae/analysis';
import type { ZeroEntry } from '@surae/casebook';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { restLoadWords, withCalibration } from '../live/rest-load-words.ts';
import { base } from '../styles/base.ts';

/** Told with the weight of the resting leg as it was taken. */
export type RestLoadTaken = CustomEvent<Extract<RestLoad, { kind: 'rest-load' }>>;

/** Takes the weight of the leg that rests on a plate before seated pushes, or says why not. Tells `rest-load-taken`. */
@customElement('rest-load')
export class RestLoadPart extends LitElement {
  static override styles = [
    base,
    css`
      p {
        margin-block: var(--gap-2);
      }
    `,
  ];

  /** the last seconds, as the samples are read */
  @property({ attribute: false }) trace!: Trace;
  /** the zero of the empty plate, read alike; null without one */
  @property({ attribute: false }) zero: ZeroEntry | null = null;
  /** which way the reading goes under load; null is not known */
  @property({ attribute: false }) sign: 1 | -1 | null = null;
  /** relative standard uncertainty of the calibration by which it is counted; null without one [-] */
  @property({ attribute: false }) relativeU: number | null = null;
  @state() private said = '';

  private take(): void {
    const [group] = this.trace.groups;
    const none = new Float64Array(0);
    const samples = group?.channels.find(({ quantity }) => quantity === 'force')?.samples ?? none;
    const stretch = { timesS: group === undefined || samples === none ? none : group.timesS, samples };
    // a plate that nothing is known of is one that reads a load upwards
    const read = restLoadOn(stretch, this.zero, this.sign ?? 1, setupDefaults.restLoad);
    const load = read.kind === 'refused' ? read : withCalibration(read, this.relativeU);
    this.said = restLoadWords(load, this.relativeU !== null);
    if (load.kind === 'rest-load') this.dispatchEvent(new CustomEvent('rest-load-taken', { detail: load }));
  }

  override render(): TemplateResult {
    return html`<p class="quiet">${SET_UP_WORDS['rest-load-explain'].text}</p>
      <button type="button" @click=${() => this.take()}>${SET_UP_WORDS['rest-load-take'].text}</button>
      <p role="status" class="voice">${this.said}</p>`;
  }
}
