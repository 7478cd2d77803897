import {
  type ChoiceFacts,
  type HopCondition,
  type HopConditions,
  hopConditions,
  legsTested,
  type Visit,
} from '@surae/casebook';
import { HOPS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { conditionLines, conditionText } from '../journey/hop-lines.ts';
import { stepAskedFor } from '../journey/step-asked-for.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';

/** a stroke for met, a cross for not met, a question mark for not known, as verdicts have them elsewhere */
const marks = { yes: '|', no: '×', cannot_tell: '?' } as const;

/** The conditions before hops, each with what it was judged by, and where what is missing is told. */
@customElement('hops-fold')
export class HopsFold extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      ul {
        display: grid;
        gap: var(--gap-3);
        list-style: none;
        margin: 0 0 var(--gap-4);
        padding: 0;
      }
      li {
        display: grid;
        gap: 0 var(--gap-2);
        grid-template-columns: 1.5ch minmax(0, 1fr);
      }
      li > * {
        grid-column: 2;
        margin: 0;
        max-inline-size: var(--line);
      }
      li > .mark {
        font-weight: 600;
        grid-column: 1;
      }
      .choices {
        margin-block-end: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) facts!: ChoiceFacts;
  /** the legs can be tried rung by rung now */
  @property({ type: Boolean }) ladder = false;

  override render(): TemplateResult {
    const found = hopConditions(this.facts, legsTested(this.visit));
    return html`<details>
      <summary>${fill(HOPS_WORDS.title, { state: HOPS_WORDS[`state-${found.met}`].text })}</summary>
      <p class="quiet">${HOPS_WORDS.explain.text}</p>
      <ul>
        ${found.conditions.map((one) => this.condition(one))}
      </ul>
      ${this.ways(found)}
      <p>${HOPS_WORDS['by-file'].text}</p>
    </details>`;
  }

  private condition(condition: HopCondition): TemplateResult {
    return html`<li>
      <span class="mark" aria-hidden="true">${marks[condition.met]}</span>
      <span>${conditionText(condition.code)}</span>
      ${conditionLines(condition, this.facts).map(
        (line, at) =>
          html`<p class="quiet">
            ${
              condition.code === 'safety-clear'
                ? line
                : html`<span class="side" data-side=${condition.legs[at]!.side}>${line}</span>`
            }
          </p>`,
      )}
    </li>`;
  }

  /** Where what is not known can be told. */
  private ways({ conditions }: HopConditions): TemplateResult | typeof nothing {
    const isOpen = (...codes: readonly HopCondition['code'][]): boolean =>
      conditions.some(({ code, met }) => codes.includes(code) && met === 'cannot_tell');
    const asksFlare = isOpen('no-recent-flare');
    const asksLadder = this.ladder && isOpen('pain-on-raise', 'pain-on-trial-hops');
    if (!asksFlare && !asksLadder) return nothing;
    const way = (step: 'history' | 'ladder', text: string): TemplateResult =>
      html`<button type="button" @click=${() => this.dispatchEvent(stepAskedFor(step))}>${text}</button>`;
    return html`<div class="choices">
      ${asksFlare ? way('history', HOPS_WORDS['ask-flare'].text) : nothing}
      ${asksLadder ? way('ladder', HOPS_WORDS['try-ladder'].text) : nothing}
    </div>`;
  }
}
