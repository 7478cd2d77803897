import type { Side } from '@surae/analysis';
import { legsTested, type Soreness, type Visit, type VisitHistory } from '@surae/casebook';
import { FLARE_TIMES, HISTORY_WORDS, HOPS_WORDS, type LastFlare } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import type { Chip, ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';

/** When the last flare of a leg was, told or taken back. */
export type LastFlareTold = CustomEvent<{ readonly side: Side; readonly answer: LastFlare | null }>;

const answers = Object.keys(FLARE_TIMES) as readonly LastFlare[];

/** A leg that is not sore is in no flare now. */
function chipsOf(sore: Soreness | null): readonly Chip[] {
  return answers
    .filter((value) => value !== 'now' || sore !== 'no')
    .map((value) => ({ value, text: HOPS_WORDS[value].text }));
}

/** When the last flare of each leg was, a tap a leg, each of them optional. Tells `last-flare-told`. */
@customElement('last-flare-form')
export class LastFlareForm extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-6);
        padding-block: var(--gap-3) var(--gap-8);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) legs!: VisitHistory['legs'];

  override render(): TemplateResult[] {
    return legsTested(this.visit).map(
      (side) => html`<chip-choice
        legend=${HOPS_WORDS[`when-${side}`].text}
        open=${HISTORY_WORDS['not-asked'].text}
        .chips=${chipsOf(this.visit.sore[side])}
        .value=${this.legs[side].lastFlare ?? null}
        @chip-chosen=${({ detail: answer }: ChipChosen<LastFlare | null>) =>
          this.dispatchEvent(new CustomEvent('last-flare-told', { detail: { side, answer } }))}
      ></chip-choice>`,
    );
  }
}
