import { consume } from '@lit/context';
import {
  type ChoiceEntry,
  type ChoiceFacts,
  type ChoiceOffer,
  choiceFacts,
  choiceOffer,
  legsTested,
  mayTest,
  type RuleGoneOver,
  type SafetyBlock,
  type TestChosen,
  type Visit,
} from '@surae/casebook';
import { CHOICE_REASONS, CHOICE_WORDS, FEW_RAISES, LADDER_WORDS, LOCK_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { blockLines, gradeLine, lastLine } from '../journey/choice-lines.ts';
import { stepAskedFor } from '../journey/step-asked-for.ts';
import { besideSteps, mayAnswerAnew, type Step } from '../journey/steps.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { foldStyle } from '../parts/fold-style.ts';
import '../parts/hops-fold.ts';
import '../parts/ladder-lines.ts';
import '../parts/safety-notes.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { entryWords, firstRemark } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';

const reasons = Object.entries(CHOICE_REASONS);

/** Which test comes next: the one of the last visit first, what is proposed behind it, and what is not for today with its reason. */
@customElement('choice-step')
export class ChoiceStep extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      h2 {
        font-size: var(--size-2);
        margin-block: var(--gap-6) var(--gap-2);
      }
      .take {
        align-items: start;
        flex-direction: column;
        gap: 0;
        inline-size: 100%;
        text-align: start;
      }
      .take.main {
        padding-block: var(--gap-3);
      }
      small {
        font-size: var(--size-1);
        line-height: 1.25;
      }
      ul {
        display: grid;
        gap: var(--gap-3);
        list-style: none;
        margin: 0;
        padding: 0;
      }
      .not-today li p {
        margin-block: var(--gap-1) 0;
      }
      .main {
        inline-size: 100%;
      }
      .try-out > * + * {
        margin-block-start: var(--gap-3);
      }
      .plain {
        padding-inline: 0;
        text-align: start;
      }
      .facts p {
        margin-block: 0 var(--gap-1);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @consume({ context: clockContext }) private readonly clock!: HostClock;

  override render(): TemplateResult {
    const facts = choiceFacts(this.visit, this.earlier);
    const offer = choiceOffer(facts);
    const { allowed, why } = mayTest('live', this.visit.safety, this.clock.isoNow());
    if (!allowed) return this.locked(offer, why);
    return html`
      <h1>${CHOICE_WORDS.title.text}</h1>
      <safety-notes .visit=${this.visit}></safety-notes>
      <div class="column">
        ${this.facts(facts, offer.blocked, offer.fewRaises)} ${this.ladder()} ${this.tests(offer, true)}
        <hops-fold .visit=${this.visit} .facts=${facts} ?ladder=${this.ladderStep !== undefined}></hops-fold>
      </div>
    `;
  }

  /** Nobody is tested: the way goes on to the end of the visit, or back to the list where its answer is not of today. */
  private locked(offer: ChoiceOffer, why: readonly SafetyBlock[]): TemplateResult {
    const isAnswered = why.every((one) => one === 'locked');
    const goOn = (isMain: boolean): TemplateResult =>
      html`<button
        class=${isMain ? 'main' : ''}
        type="button"
        @click=${() => this.dispatchEvent(visitEvent({ kind: 'result-seen' }))}
      >
        ${LOCK_WORDS['go-on'].text}
      </button>`;
    const again = html`<button
      class="main"
      type="button"
      @click=${() => this.dispatchEvent(stepAskedFor('safety'))}
    >
      ${LOCK_WORDS.change.text}
    </button>`;
    return html`
      <h1>${LOCK_WORDS.locked.text}</h1>
      <safety-notes .visit=${this.visit} headed></safety-notes>
      <div class="column">
        ${isAnswered ? goOn(true) : html`${again} ${goOn(false)}`}
        <details class="try-out">
          <summary>${LOCK_WORDS['try-out'].text}</summary>
          ${this.tests(offer, false)}
        </details>
      </div>
    `;
  }

  /** The tests in the order in which they are offered; the first is the main thing on the page, or one of them. */
  private tests({ proposed, others, blocked }: ChoiceOffer, hasMain: boolean): TemplateResult {
    const [first, ...next] = proposed;
    return html`
      ${first === undefined ? html`<p class="voice">${CHOICE_WORDS['nothing-left'].text}</p>` : this.entry(first, hasMain)}
      ${
        next.length === 0
          ? nothing
          : html`<section aria-labelledby="also">
              <h2 id="also">${CHOICE_WORDS['also-proposed'].text}</h2>
              <ul>
                ${next.map((one) => html`<li>${this.entry(one)}</li>`)}
              </ul>
            </section>`
      }
      <p class="quiet">${CHOICE_WORDS.order.text}</p>
      ${
        others.length === 0
          ? nothing
          : html`<details>
              <summary>${CHOICE_WORDS.others.text}</summary>
              <ul>
                ${others.map((one) => html`<li>${this.entry(one)}</li>`)}
              </ul>
            </details>`
      }
      ${this.notToday(blocked)}
    `;
  }

  private facts(
    { legs, last }: ChoiceFacts,
    blocked: readonly ChoiceEntry[],
    fewRaises: number | null,
  ): TemplateResult {
    const lastBlocked = last[0] !== undefined && blocked.some(({ last: one }) => one === last[0]);
    return html`<div class="facts">
      <p class="quiet">${CHOICE_WORDS[this.visit.only === undefined ? 'explain' : (`explain-${this.visit.only}` as const)].text}</p>
      ${legsTested(this.visit).map((side) => {
        const line = gradeLine(side, legs[side]);
        return line === undefined ? nothing : html`<p><span class="side" data-side=${side}>${line}</span></p>`;
      })}
      ${
        fewRaises === null
          ? nothing
          : html`<p class="voice">${fill(CHOICE_WORDS['why-few'], { limit: FEW_RAISES.value, count: fewRaises })}</p>`
      }
      ${
        lastBlocked
          ? html`<p class="voice">${fill(CHOICE_WORDS['last-blocked'], { date: dayOf(last[0]!.at) })}</p>`
          : nothing
      }
    </div>`;
  }

  /** The step in which the legs are tried; undefined where they cannot be now. */
  private get ladderStep(): Step | undefined {
    return besideSteps.find((step) => mayAnswerAnew(this.visit, step, this.clock.isoNow()));
  }

  /** What each leg bore today, and the way to try it: beside the way, never in it. */
  private ladder(): TemplateResult | typeof nothing {
    const ladder = this.ladderStep;
    if (ladder === undefined) return nothing;
    const isDone = ladder.isDone(this.visit);
    return html`<div>
      <ladder-lines .visit=${this.visit}></ladder-lines>
      <button class="plain" type="button" @click=${() => this.dispatchEvent(stepAskedFor(ladder.id))}>
        ${LADDER_WORDS[isDone ? 'open-again' : 'open'].text}
      </button>
    </div>`;
  }

  /** A test that one press chooses. */
  private entry(entry: ChoiceEntry, isDefault = false): TemplateResult {
    const { protocol, last } = entry;
    const head = last !== undefined ? CHOICE_WORDS['last-time'] : CHOICE_WORDS.proposed;
    const under = last === undefined ? firstRemark(protocol) : lastLine(protocol, last);
    return html`<button class=${isDefault ? 'take main' : 'take'} type="button" @click=${() => this.choose(entry)}>
      ${isDefault || last !== undefined ? html`<small>${head.text}</small>` : nothing}
      <span>${entryWords(protocol, 'title')}</span>
      ${under === undefined ? nothing : html`<small>${under}</small>`}
    </button>`;
  }

  private notToday(blocked: readonly ChoiceEntry[]): TemplateResult | typeof nothing {
    if (blocked.length === 0) return nothing;
    return html`<details class="not-today" ?open=${blocked.some(({ last }) => last !== undefined)}>
      <summary>${CHOICE_WORDS.blocked.text} (${blocked.length})</summary>
      <ul>
        ${blocked.map(
          (entry) => html`<li>
            ${this.blocked(entryWords(entry.protocol, 'title'), blockLines(entry.blocks))}
            ${entry.mayGoOver ? this.goOver(entry) : nothing}
          </li>`,
        )}
      </ul>
    </details>`;
  }

  private blocked(title: string, why: readonly string[]): TemplateResult {
    return html`<button class="take" type="button" disabled>
        <span>${title}</span>
      </button>
      ${why.map((line) => html`<p>${line}</p>`)}`;
  }

  private goOver(entry: ChoiceEntry): TemplateResult {
    return html`<details>
      <summary>${CHOICE_WORDS['go-over'].text}<span class="unseen">: ${entry.protocol.title}</span></summary>
      <p>${CHOICE_WORDS['go-over-why'].text}</p>
      <div class="choices" role="group" aria-label=${CHOICE_WORDS['go-over-why'].text}>
        ${reasons.map(
          ([reason, { text }]) =>
            html`<button
              type="button"
              @click=${() =>
                this.choose(
                  entry,
                  entry.blocks.map((block) => ({ ...block, reason })),
                )}
            >
              ${text}
            </button>`,
        )}
      </div>
    </details>`;
  }

  private choose({ protocol, from, last }: ChoiceEntry, goneOver?: readonly RuleGoneOver[]): void {
    const choice: TestChosen = {
      test: protocol.test,
      protocolId: protocol.id,
      from,
      ...(last === undefined ? {} : { placement: last.placement }),
      ...(goneOver === undefined ? {} : { goneOver }),
    };
    this.dispatchEvent(visitEvent({ kind: 'visit-choice', choice }));
  }
}
