import { ASKED_CHOICES } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { FactAsk } from '../advice/fact-asks.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { base } from '../styles/base.ts';
import './chip-choice.ts';
import type { ChipChoice, ChipChosen } from './chip-choice.ts';

/** What would settle a proposal, each by a tap, with a last chip that takes the answer back. Asks the visit to keep it. */
@customElement('fact-asks-part')
export class FactAsksPart extends LitElement {
  static override styles = [
    base,
    css`
      .title {
        font-weight: 600;
        margin-block: var(--gap-4) var(--gap-2);
      }
      .ask {
        border-inline-start: 4px solid var(--voice, currentColor);
        margin-block-end: var(--gap-4);
        padding-inline-start: var(--gap-3);
      }
      .help {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  @property({ attribute: false }) asks: readonly FactAsk[] = [];
  @property() heading = '';

  /** Puts the focus on the answer to a question, once it is shown. */
  async focusFact(fact: string): Promise<void> {
    await this.updateComplete;
    const choice = this.renderRoot.querySelector<ChipChoice>(`[data-fact='${fact}'] chip-choice`);
    await choice?.updateComplete;
    choice?.renderRoot.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
  }

  override render(): TemplateResult | typeof nothing {
    if (this.asks.length === 0) return nothing;
    return html`<div role="group" aria-labelledby="title">
      <p class="title" id="title">${this.heading}</p>
      ${repeat(
        this.asks,
        ({ fact, leg }) => `${fact} ${leg}`,
        (ask) => this.ask(ask),
      )}
    </div>`;
  }

  private ask({ fact, leg, question, help, chips, answer }: FactAsk): TemplateResult {
    return html`<div class="ask" data-fact=${fact} data-leg=${leg ?? 'person'}>
      <chip-choice
        legend=${question}
        open=${ASKED_CHOICES.open.text}
        .chips=${chips}
        .value=${answer}
        @chip-chosen=${({ detail }: ChipChosen<string | null>) =>
          this.dispatchEvent(visitEvent({ kind: 'fact-told', fact, leg, answer: detail }))}
      ></chip-choice>
      <p class="quiet help">${help}</p>
    </div>`;
  }
}
