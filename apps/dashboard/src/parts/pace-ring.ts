import type { HandoutLine } from '@surae/exchange';
import { HOME_TODAY_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { paceParts, paceRing, ringMiddle } from '../home/home-pictures.ts';
import { homePictureStyle } from '../home/home-style.ts';
import { base } from '../styles/base.ts';
import { drawnPicture } from './drawn-picture.ts';

/** One repetition as a ring; its mark goes round when somebody asks for it, and stays where less movement is asked for. */
@customElement('pace-ring')
export class PaceRing extends LitElement {
  static override styles = [base, homePictureStyle];

  @property({ attribute: false }) tempo: HandoutLine['tempo'] = null;
  @state() private goes = false;
  private going: Animation | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('tempo')) this.goes = false;
  }

  override render(): TemplateResult | typeof nothing {
    const picture = paceRing(this);
    if (picture === null) return nothing;
    const words = HOME_TODAY_WORDS;
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    return html`<figure class="drawing">${drawnPicture(picture)}</figure>
      ${
        isStill
          ? nothing
          : html`<button type="button" aria-pressed=${this.goes} @click=${() => (this.goes = !this.goes)}>
              ${words[this.goes ? 'pace-stop' : 'pace-start'].text}
            </button>`
      }`;
  }

  protected override updated(): void {
    this.going?.cancel();
    this.going = undefined;
    const mark = this.renderRoot.querySelector<SVGElement>('.pace-mark');
    if (mark === null || !this.goes) return;
    const seconds = paceParts(this).reduce((sum, part) => sum + part.seconds, 0);
    mark.style.transformOrigin = ringMiddle;
    this.going = mark.animate([{ transform: 'rotate(0deg)' }, { transform: 'rotate(360deg)' }], {
      duration: 1000 * seconds,
      iterations: Infinity,
    });
  }

  override disconnectedCallback(): void {
    this.going?.cancel();
    super.disconnectedCallback();
  }
}
