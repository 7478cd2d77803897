import type { Side } from '@surae/analysis';
import {
  answered,
  choiceFacts,
  type LadderState,
  ladderLimit,
  ladderState,
  legsTested,
  noLadder,
  takenBack,
  type Visit,
  type VisitLadder,
} from '@surae/casebook';
import { LADDER_RUNGS, LADDER_WORDS, SAFETY_LIST } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { stepAskedFor } from '../journey/step-asked-for.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import '../parts/pain-scale.ts';
import { base } from '../styles/base.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';

const ruptureLine = SAFETY_LIST.find(({ id }) => id === 'safety.rupture')!;

/** What each leg bears before a test: rung by rung one press, until one hurts too much. Every answer is kept at once. */
@customElement('ladder-step')
export class LadderStep extends LitElement {
  static override styles = [
    base,
    css`
      .legs {
        direction: ltr;
        display: grid;
        gap: var(--gap-8);
        margin-block: var(--gap-6);
      }
      section {
        align-content: start;
        display: grid;
        gap: var(--gap-3);
      }
      h2,
      h3 {
        font-size: var(--size-2);
        margin: 0;
      }
      p {
        margin: 0;
      }
      ol {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        border-block-end: 1px solid var(--hairline);
        display: flex;
        gap: var(--gap-3);
        justify-content: space-between;
        padding-block: var(--gap-1);
      }
      /* side by side only where every number of the scale keeps its width */
      @media (min-width: 61rem) {
        .legs {
          grid-template-columns: 1fr 1fr;
        }
      }
      .plain {
        justify-self: start;
        padding-inline: 0;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;

  private get ladder(): VisitLadder {
    return this.visit.ladder ?? noLadder;
  }

  override render(): TemplateResult {
    return html`
      <h1>${LADDER_WORDS.title.text}</h1>
      <p class="quiet">${LADDER_WORDS.explain.text}</p>
      <div class="legs">${legsTested(this.visit).map((side) => this.leg(side))}</div>
      <button class="main" type="button" @click=${() => this.dispatchEvent(stepAskedFor('choice'))}>
        ${LADDER_WORDS['go-on'].text}
      </button>
    `;
  }

  private leg(side: Side): TemplateResult {
    const treatAs = choiceFacts(this.visit, []).legs[side].irritability?.treatAs ?? null;
    const limit = ladderLimit(treatAs);
    const told = this.ladder[side];
    const state = ladderState(told, limit);
    const words = LADDER_WORDS;
    return html`<section aria-label=${words[side].text}>
      <h2><span class="side" data-side=${side}>${words[side].text}</span></h2>
      <p class="quiet">${fill(words[treatAs === 'high' ? 'limit-high' : 'limit'], { limit })}</p>
      ${
        told.answers.length === 0
          ? nothing
          : html`<ol>
              ${told.answers.map(
                (answer, place) =>
                  html`<li>
                    <span>${words[LADDER_RUNGS[place]!.code].text}</span>
                    <span>${typeof answer === 'number' ? fill(words.pain, { pain: answer }) : words[answer].text}</span>
                  </li>`,
              )}
            </ol>`
      }
      <div role="status">${this.state(state)}</div>
      ${this.next(side, state)} ${this.sudden(side, state)}
      ${
        told.answers.length === 0
          ? nothing
          : html`<button class="plain" type="button" @click=${() => this.keep(takenBack(this.ladder, side))}>
              ${words.undo.text}<span class="unseen">, ${words[`undo-${side}`].text}</span>
            </button>`
      }
    </section>`;
  }

  private state({ next, stopped, highest, limit }: LadderState): TemplateResult {
    const words = LADDER_WORDS;
    if (next !== null) return html`<h3>${fill(words.next, { rung: words[next].text })}</h3>`;
    const why = stopped === null ? words.top.text : fill(words[`stop-${stopped.why}`], { limit });
    const worth = highest === null ? words['worth-none'].text : fill(words.worth, { rung: words[highest].text });
    return html`<p class=${stopped === null ? '' : 'voice'}>${why}</p>
      <p><strong>${worth}</strong></p>`;
  }

  private next(side: Side, { next }: LadderState): TemplateResult | typeof nothing {
    if (next === null) return nothing;
    const say = (answer: Parameters<typeof answered>[2]): void => this.keep(answered(this.ladder, side, answer));
    return html`<pain-scale @pain-said=${({ detail }: CustomEvent<number>) => say(detail)}></pain-scale>
      <div class="choices">
        <button type="button" @click=${() => say('not-done')}>${LADDER_WORDS['not-done'].text}</button>
        <button type="button" @click=${() => say('could-not')}>${LADDER_WORDS['could-not'].text}</button>
      </div>`;
  }

  /** A loss that is new and sudden brings the line about a rupture. */
  private sudden(side: Side, { stopped, sudden }: LadderState): TemplateResult | typeof nothing {
    if (stopped?.why !== 'could-not') return nothing;
    const words = LADDER_WORDS;
    const answer = (isSudden: boolean): void =>
      this.keep({ ...this.ladder, [side]: { ...this.ladder[side], sudden: isSudden } });
    return html`<p id="sudden-${side}">${words.sudden.text}</p>
      <div class="choices" role="group" aria-labelledby="sudden-${side}">
        <button type="button" aria-pressed=${sudden === true} @click=${() => answer(true)}>
          ${words['sudden-yes'].text}
        </button>
        <button type="button" aria-pressed=${sudden === false} @click=${() => answer(false)}>
          ${words['sudden-no'].text}
        </button>
      </div>
      ${
        sudden === true
          ? html`<p class="voice" role="alert">${entryWords(ruptureLine, 'ask')} <strong>${entryWords(ruptureLine, 'next')}</strong></p>
              <button type="button" @click=${() => this.dispatchEvent(stepAskedFor('safety'))}>
                ${words['to-safety'].text}
              </button>`
          : nothing
      }`;
  }

  private keep(ladder: VisitLadder): void {
    this.dispatchEvent(visitEvent({ kind: 'visit-ladder', ladder }));
  }
}
