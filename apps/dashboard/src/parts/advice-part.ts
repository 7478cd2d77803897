import type { PlanItem, Visit } from '@surae/casebook';
import { ADVICE_WORDS, ASKED_CHOICES, type DeclineReason } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Advice, AdviceCard } from '../advice/advice-cards.ts';
import type { AdviceOption } from '../advice/advice-options.ts';
import { adviceStyle } from '../advice/advice-style.ts';
import { answerTo, declineOf, isFrom } from '../advice/advice-taken.ts';
import type { FactAsk } from '../advice/fact-asks.ts';
import { proposedByOf } from '../advice/proposed-by.ts';
import { type VisitEventRequest, visitEvent } from '../journey/visit-event-request.ts';
import { footPicture } from '../plan/foot-picture.ts';
import { footStyle } from '../plan/foot-style.ts';
import { planLineText } from '../plan/plan-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { drawnPicture } from './drawn-picture.ts';
import './fact-asks-part.ts';
import type { FactAsksPart } from './fact-asks-part.ts';
import { FocusNext } from './focus-next.ts';
import { foldStyle } from './fold-style.ts';
import { type ProposalNamed, proposalAnswers, proposalWhy } from './proposal-answers.ts';

/** Lines that are taken over. */
export type AdviceTaken = CustomEvent<readonly PlanItem[]>;

/** Lines that are taken out again. */
export type AdviceBack = CustomEvent<(item: PlanItem) => boolean>;

/**
 * What rules propose for each leg, beside the plan: to take over, to decline with a reason, and why. Nothing is chosen beforehand. Tells
 * `advice-taken` and `advice-back`, and asks the visit to keep what is declined.
 */
@customElement('advice-part')
export class AdvicePart extends LitElement {
  static override styles = [base, footStyle, foldStyle, adviceStyle];

  @property({ attribute: false }) advice!: Advice;
  /** lines of the plan as it is being written */
  @property({ attribute: false }) items: readonly PlanItem[] = [];
  @property({ attribute: false }) visit!: Visit;

  private readonly focusNext = new FocusNext(this);

  /** the question that was answered: it may stand elsewhere once the answer counts */
  private answered: Pick<FactAsk, 'fact' | 'leg'> | null = null;

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('advice')) this.focusAnswered();
  }

  private focusAnswered(): void {
    const { answered } = this;
    if (answered === null) return;
    this.answered = null;
    const part = this.renderRoot.querySelector<FactAsksPart>(`[data-asks='${answered.leg ?? 'person'}']`);
    void part?.focusFact(answered.fact);
  }

  private readonly noteAnswered = ({ detail }: VisitEventRequest): void => {
    if (detail.kind === 'fact-told') this.answered = detail;
  };

  override render(): TemplateResult {
    const { nextSteps, cards, beside, asks } = this.advice;
    if (nextSteps.length > 0)
      return html`<section aria-labelledby="locked">
        <h2 id="locked">${ADVICE_WORDS['locked-title'].text}</h2>
        <ul>
          ${nextSteps.map((one) => html`<li>${one}</li>`)}
        </ul>
        ${this.asks(asks)}
      </section>`;
    return html`<section aria-labelledby="proposed">
      <h2 id="proposed">${ADVICE_WORDS.title.text}</h2>
      <p class="quiet">${ADVICE_WORDS.explain.text}</p>
      <div class="cards">${cards.map((card) => this.card(card))}</div>
      ${this.besideList(beside, 'person')} ${this.asks(asks)}
    </section>`;
  }

  private card(card: AdviceCard): TemplateResult {
    const { leg, title, standing, sure, also } = card;
    const id = `leg-${leg}`;
    return html`<article aria-labelledby=${id} data-leg=${leg}>
      <h3 id=${id}><span class="side" data-side=${leg}>${ADVICE_WORDS[`title-${leg}`].text}</span></h3>
      ${card.invented === null ? nothing : html`<p class="voice invented">${card.invented}</p>`}
      <p class="what">${title}</p>
      ${also.map((one) => html`<p>${one}</p>`)}
      ${standing === null ? nothing : html`<p class="sure" data-standing=${standing}>${sure}</p>`}
      ${card.edited.map((one) => html`<p class="voice edited">${one}</p>`)}
      ${this.asks(card.asks, leg)} ${this.lines(card)} ${card.proposedBy === null ? nothing : this.answers(card, card.proposedBy)} ${this.options(card)} ${this.besideList(card.beside, leg)} ${proposalWhy(namedOf(card), card.why)}
    </article>`;
  }

  /** What a tap would settle; under a lock each leg of which something is asked has its own. */
  private asks(asks: readonly FactAsk[], of?: AdviceCard['leg']): TemplateResult | typeof nothing {
    if (asks.length === 0) return nothing;
    const legs = of === undefined ? [...new Set(asks.map(({ leg }) => leg))] : [of];
    return html`${legs.map((leg) => {
      const heading =
        leg === null || of !== undefined
          ? ASKED_CHOICES.title.text
          : fill(ASKED_CHOICES['title-leg'], { leg: ADVICE_WORDS[`title-${leg}`].text });
      return html`<fact-asks-part
        data-asks=${leg ?? 'person'}
        heading=${heading}
        @visit-event=${this.noteAnswered}
        .asks=${asks.filter((one) => one.leg === leg)}
      ></fact-asks-part>`;
    })}`;
  }

  private lines({ lines, none, leg }: AdviceCard): TemplateResult | typeof nothing {
    if (none !== null) return html`<p class="quiet">${none}</p>`;
    if (lines.length === 0) return nothing;
    const sore = this.visit.sore[leg];
    const lowest = lines.flatMap(({ lowestFootDeg }) => lowestFootDeg ?? []);
    const isDrawn = (sore === 'insertion' || sore === 'both-places') && lowest.length > 0;
    return html`<p class="means">${ADVICE_WORDS.means.text}</p>
      <ul>
        ${lines.map((one) => html`<li>${planLineText(one)}</li>`)}
      </ul>
      ${isDrawn ? html`<figure class="range">${drawnPicture(footPicture(Math.min(...lowest)))}</figure>` : nothing}`;
  }

  private answers(card: AdviceCard, proposedBy: string): TemplateResult {
    return proposalAnswers({
      told: namedOf(card),
      hasLines: card.lines.length > 0,
      declined: declineOf(card, this.visit),
      answer: answerTo(card, this.items),
      folded: false,
      take: () => this.takeOver(card, card.lines),
      back: () => this.tell(card, 'advice-back', this.ownLines(card)),
      decline: (reason) => this.decline(card, proposedBy, reason),
    });
  }

  /** Programmes that fit beside it, each with its lines: one of them is taken in its place. */
  private options({ leg, options }: AdviceCard): TemplateResult | typeof nothing {
    if (options.length === 0) return nothing;
    const words = ADVICE_WORDS;
    return html`<details class="options">
      <summary>${words.options.text}</summary>
      <p class="quiet">${words['options-explain'].text}</p>
      ${options.map((option) => {
        const { code, title, also, lines } = option;
        const isTaken = answerTo(option, this.items) !== 'open';
        return html`<div class="option" data-option=${code}>
          <p>${title}</p>
          ${also.map((one) => html`<p class="quiet">${one}</p>`)}
          <ul>
            ${lines.map((one) => html`<li>${planLineText(one)}</li>`)}
          </ul>
          ${
            isTaken
              ? html`<p class="answer" role="status">${words.taken.text}</p>
                  <button class="plain back" type="button" @click=${() => this.giveBack(option, leg)}>
                    ${words['take-back'].text}
                  </button>`
              : html`<button
                  type="button"
                  class="instead"
                  aria-label=${fill(words['option-take-label'], { leg: words[`title-${leg}`].text, what: title })}
                  @click=${() => this.takeOver({ leg }, lines, code)}
                >
                  ${words['option-take'].text}
                </button>`
          }
        </div>`;
      })}
    </details>`;
  }

  /** Takes lines over in the place of whatever else was taken over for the leg. */
  private takeOver({ leg }: Pick<AdviceCard, 'leg'>, lines: readonly PlanItem[], option: string | null = null): void {
    const isOfLeg = ({ of, proposedBy }: PlanItem): boolean =>
      of === 'exercise' && proposedByOf(proposedBy)?.leg === leg;
    this.dispatchEvent(new CustomEvent('advice-back', { detail: isOfLeg }));
    this.tell({ leg }, 'advice-taken', lines);
    if (option !== null) this.focusNext.to(`[data-leg='${leg}'] [data-option='${option}'] .back`);
  }

  private giveBack(option: AdviceOption, leg: AdviceCard['leg']): void {
    this.tell({ leg }, 'advice-back', this.ownLines(option));
    this.focusNext.to(`[data-leg='${leg}'] [data-option='${option.code}'] .instead`);
  }

  /** What is asked, looked at or tried beside it; none of it is a line of a plan. */
  private besideList(beside: readonly string[], of: string): TemplateResult | typeof nothing {
    if (beside.length === 0) return nothing;
    return html`<p class="means" id="beside-${of}">${ADVICE_WORDS.beside.text}</p>
      <ul aria-labelledby="beside-${of}">
        ${beside.map((one) => html`<li>${one}</li>`)}
      </ul>`;
  }

  private ownLines(card: Pick<AdviceCard, 'lines'>): (item: PlanItem) => boolean {
    return (item) => item.proposedBy !== null && isFrom(card, item);
  }

  private decline({ leg }: AdviceCard, proposedBy: string, reason: DeclineReason | null): void {
    this.focusNext.to(`[data-leg='${leg}'] ${reason === null ? '.reason' : '.back'}`);
    this.dispatchEvent(visitEvent({ kind: 'proposal-declined', proposedBy, reason }));
  }

  private tell({ leg }: Pick<AdviceCard, 'leg'>, name: 'advice-taken' | 'advice-back', detail: unknown): void {
    this.focusNext.to(`[data-leg='${leg}'] ${name === 'advice-taken' ? '.back' : '.take'}`);
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

function namedOf({ leg, title }: AdviceCard): ProposalNamed {
  return { leg: ADVICE_WORDS[`title-${leg}`].text, what: title };
}
