import type { Side } from '@surae/analysis';
import { pullSetOf, type Visit } from '@surae/casebook';
import { PULL_ENDING_WORDS } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { endedByPop, endsOf, painLimitOf } from '../journey/ends.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { pullProtocolOf } from '../live/pull-choices.ts';
import type { EndAccepted } from '../parts/ending-questions.ts';
import '../parts/ending-questions.ts';
import { PopTold } from '../parts/pop-told.ts';
import type { DoneAgain } from '../parts/redo-choice.ts';
import { base } from '../styles/base.ts';

/** How the isometric trials of a leg ended. */
@customElement('pull-ending-step')
export class PullEndingStep extends LitElement {
  static override styles = base;

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) side!: Side;
  private readonly pop = new PopTold(this);

  override render(): TemplateResult {
    const set = pullSetOf(this.visit, this.side);
    if (set === undefined) return html``;
    const { id: setId, choice } = set;
    if (this.pop.isToldOf(setId))
      return this.pop.steps(this.side, this.visit.safety, { kind: 'pull-end', setId, end: endedByPop(null) });
    const protocol = pullProtocolOf(choice.protocolId);
    return html`
      <h1><span class="side" data-side=${this.side}>${PULL_ENDING_WORDS[`title-${this.side}`].text}</span></h1>
      <ending-questions
        .words=${PULL_ENDING_WORDS}
        .ends=${endsOf(protocol)}
        .painLimit=${painLimitOf(protocol)}
        @pop-told=${() => this.pop.tell(setId)}
        @end-accepted=${({ detail: end }: EndAccepted) =>
          this.dispatchEvent(visitEvent({ kind: 'pull-end', setId, end }))}
        @done-again=${({ detail: why }: DoneAgain) =>
          this.dispatchEvent(visitEvent({ kind: 'pull-aside', setId, why }))}
      ></ending-questions>
    `;
  }
}
