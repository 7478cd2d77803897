import type { Side } from '@surae/analysis';
import { type Person, setOf, type Visit } from '@surae/casebook';
import { ENDING_WORDS, LIVE_WORDS, PROTOCOLS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { endsOf, notedPainPeak, painLimitOf } from '../journey/ends.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { DoneAgain, EndAccepted } from '../parts/ending-questions.ts';
import '../parts/ending-questions.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** How a set ended: what was seen while it ran, and the questions of its end. */
@customElement('ending-step')
export class EndingStep extends LitElement {
  static override styles = base;

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property() side: Side = 'left';

  override render(): TemplateResult {
    const set = setOf(this.visit, this.side);
    if (set === undefined) return html``;
    const { id: setId, liveCount, sourceLost, choice } = set;
    const protocol = PROTOCOLS.find(({ id }) => id === choice.protocolId);
    return html`
      <h1><span class="side" data-side=${this.side}>${ENDING_WORDS[`title-${this.side}`].text}</span></h1>
      ${
        liveCount === null
          ? nothing
          : html`<p class="quiet">${fill(ENDING_WORDS['live-count'], { count: liveCount })}</p>`
      }
      ${
        sourceLost === undefined
          ? nothing
          : html`<p class="voice" role="status">${fill(LIVE_WORDS.technical, { reason: sourceLost })}</p>`
      }
      <ending-questions
        .words=${ENDING_WORDS}
        .ends=${endsOf(protocol)}
        .painLimit=${painLimitOf(protocol)}
        .known=${{ painPeak: notedPainPeak(set), ...(sourceLost === undefined ? {} : { reason: 'technical' }) }}
        @end-accepted=${({ detail: end }: EndAccepted) =>
          this.dispatchEvent(visitEvent({ kind: 'set-end', setId, end }))}
        @done-again=${({ detail: why }: DoneAgain) => this.dispatchEvent(visitEvent({ kind: 'set-aside', setId, why }))}
      ></ending-questions>
    `;
  }
}
