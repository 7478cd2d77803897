import type { PlanItem, RunsWhole, Visit } from '@surae/casebook';
import { ACTIVITY_WORDS, ADVICE_WORDS, ASKED_CHOICES, type DeclineReason } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Activity, ActivityCard, ActivityPart as Told } from '../advice/activity-cards.ts';
import type { ListPoint, PointList } from '../advice/activity-lists.ts';
import { roomWords } from '../advice/activity-words.ts';
import { adviceStyle } from '../advice/advice-style.ts';
import { answerTo, declineOf, isFrom } from '../advice/advice-taken.ts';
import type { FactAsk } from '../advice/fact-asks.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { planLineText } from '../plan/plan-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './fact-asks-part.ts';
import { activityStyle } from './activity-style.ts';
import { FocusNext } from './focus-next.ts';
import { foldStyle } from './fold-style.ts';
import { type ProposalNamed, proposalAnswers, proposalWhy } from './proposal-answers.ts';
import { verdictMark } from './verdict-mark.ts';

/** Lines for activity that are taken over. */
export type ActivityTaken = CustomEvent<readonly PlanItem[]>;

/** Lines for activity that are taken out again. */
export type ActivityBack = CustomEvent<(item: PlanItem) => boolean>;

/** Days of which somebody said that every run is written down. */
export type RunsNoted = CustomEvent<RunsWhole>;

/** Id of what is taken back of it. */
export type RunsNotNoted = CustomEvent<string>;

const verdicts = { yes: 'yes', no: 'no', 'cannot-tell': 'cannot_tell' } as const;

/**
 * What rules propose for running, standing and the days between, beside the plan: to take over, to decline with a reason, and why; the
 * cap of a run, the next one, and the points that a return is held against. Nothing is chosen beforehand. Tells `activity-taken` and
 * `activity-back`, `runs-whole` and `runs-not-whole`, and asks the visit to keep what is declined.
 */
@customElement('activity-part')
export class ActivityPart extends LitElement {
  static override styles = [base, adviceStyle, foldStyle, activityStyle];

  @property({ attribute: false }) activity!: Activity;
  /** lines of the plan as it is being written */
  @property({ attribute: false }) items: readonly PlanItem[] = [];
  @property({ attribute: false }) visit!: Visit;

  private readonly focusNext = new FocusNext(this);

  override render(): TemplateResult {
    const { cards, lists } = this.activity;
    return html`<section aria-labelledby="activity">
      <h2 id="activity">${ACTIVITY_WORDS.title.text}</h2>
      <p class="quiet">${ACTIVITY_WORDS.explain.text}</p>
      <div class="cards">${cards.map((card) => this.card(card))}</div>
      ${lists.map((list) => this.list(list))}
      ${lists.length === 0 ? nothing : html`<p class="quiet">${ACTIVITY_WORDS['list-explain'].text}</p>`}
    </section>`;
  }

  private card(card: ActivityCard): TemplateResult {
    const { about, title, standing, sure, also, proposedBy } = card;
    const parts = about === 'running' ? this.activity.parts : [];
    return html`<article aria-labelledby=${about} data-about=${about}>
      <h3 id=${about}>${ACTIVITY_WORDS[about].text}</h3>
      ${card.invented === null ? nothing : html`<p class="voice invented">${card.invented}</p>`}
      <p class="what">${title}</p>
      ${also.map((one) => html`<p>${one}</p>`)}
      ${standing === null ? nothing : html`<p class="sure" data-standing=${standing}>${sure}</p>`}
      ${this.asks(card.asks)} ${parts.map((part) => this.told(part))} ${about === 'running' ? this.room() : nothing}
      ${proposedBy === null ? nothing : html`${this.lines(card)} ${this.answers(card, proposedBy)}`} ${proposalWhy(namedOf(card), card.why)}
    </article>`;
  }

  private told({ code, title, lines }: Told): TemplateResult {
    return html`<div class="told" data-part=${code}>
      <h4>${title}</h4>
      ${lines.map((one) => html`<p>${one}</p>`)} ${code === 'cap' ? this.whole() : nothing}
    </div>`;
  }

  /** Whether every run of the days that the cap looks at is written down: asked, or what was noted of it. */
  private whole(): TemplateResult | typeof nothing {
    const { asked, noted, window: days } = this.activity;
    const words = ACTIVITY_WORDS;
    if (noted !== null)
      return html`<p role="status">${fill(words['runs-noted'], { days })}</p>
        <button class="plain whole-back" type="button" @click=${() => this.note('runs-not-whole', noted)}>
          ${words['runs-back'].text}
        </button>`;
    if (asked === null) return nothing;
    return html`<button class="whole" type="button" @click=${() => this.note('runs-whole', asked)}>
      ${fill(words['runs-whole'], { days })}
    </button>`;
  }

  private note(name: 'runs-whole' | 'runs-not-whole', detail: unknown): void {
    this.focusNext.to(name === 'runs-whole' ? '.whole-back' : '.whole');
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }

  /** What a tap settles. */
  private asks(asks: readonly FactAsk[]): TemplateResult | typeof nothing {
    if (asks.length === 0) return nothing;
    return html`<fact-asks-part heading=${ASKED_CHOICES.title.text} .asks=${asks}></fact-asks-part>`;
  }

  /** Whether heavy raises and runs of the plan that is being written fit into a week. */
  private room(): TemplateResult | typeof nothing {
    const lines = roomWords(this.items, this.activity.apart);
    return lines.length === 0 ? nothing : html`${lines.map((one) => html`<p class="voice" role="status">${one}</p>`)}`;
  }

  private lines({ lines }: ActivityCard): TemplateResult {
    if (lines.length === 0) return html`<p class="quiet">${ACTIVITY_WORDS['kept-as-is'].text}</p>`;
    return html`<p class="means">${ADVICE_WORDS.means.text}</p>
      <ul>
        ${lines.map((one) => html`<li>${planLineText(one)}</li>`)}
      </ul>`;
  }

  private answers(card: ActivityCard, proposedBy: string): TemplateResult {
    return proposalAnswers({
      told: namedOf(card),
      hasLines: card.lines.length > 0,
      declined: declineOf(card, this.visit),
      answer: answerTo(card, this.items),
      folded: true,
      take: () => this.tell(card, 'activity-taken', card.lines),
      back: () => this.tell(card, 'activity-back', isOf(card)),
      decline: (reason) => this.decline(card, proposedBy, reason),
    });
  }

  private list({ code, leg, title, points, asks, why }: PointList): TemplateResult {
    return html`<details class="list" data-list=${code} data-leg=${leg}>
      <summary>${title}</summary>
      <ul>
        ${points.map((one) => this.point(one))}
      </ul>
      ${this.asks(asks)} ${proposalWhy({ leg: ADVICE_WORDS[`title-${leg}`].text, what: title }, why)}
    </details>`;
  }

  private point({ held, what, verdict, told, open }: ListPoint): TemplateResult {
    return html`<li data-held=${held}>
      ${verdictMark(verdicts[held])}
      <div>
        <p><strong>${verdict}</strong> ${what}</p>
        <p class="quiet">${told.join(' · ')}</p>
        ${open.map((one) => html`<p class="open">${one}</p>`)}
      </div>
    </li>`;
  }

  private decline({ about }: ActivityCard, proposedBy: string, reason: DeclineReason | null): void {
    this.focusNext.to(`[data-about='${about}'] ${reason === null ? '.decline summary' : '.back'}`);
    this.dispatchEvent(visitEvent({ kind: 'proposal-declined', proposedBy, reason }));
  }

  private tell({ about }: ActivityCard, name: 'activity-taken' | 'activity-back', detail: unknown): void {
    this.focusNext.to(`[data-about='${about}'] ${name === 'activity-taken' ? '.back' : '.take'}`);
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

function isOf(card: ActivityCard): (item: PlanItem) => boolean {
  return (item) => item.proposedBy !== null && isFrom(card, item);
}

function namedOf({ about, title }: ActivityCard): ProposalNamed {
  return { leg: ACTIVITY_WORDS[about].text, what: title };
}
