import type { PlanFacts, PlanItem } from '@surae/casebook';
import {
  EXERCISES,
  PLAN_RULE_SENTENCES,
  PLAN_RULES,
  PLAN_WORDS,
  type PlanRuleCode,
  RUN_WHY_CHOICES,
} from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { footPicture } from '../plan/foot-picture.ts';
import { footStyle } from '../plan/foot-style.ts';
import { numberWords } from '../plan/number-words.ts';
import { forSide, type PlanSide, reasonsOf, withReason } from '../plan/plan-draft.ts';
import { isPressable, lineAfter, type PlanNumber, planNumbers, timeUnderTension } from '../plan/plan-numbers.ts';
import { planRuleWhy } from '../plan/plan-rule-why.ts';
import { planName, planPieces, shortNumber } from '../plan/plan-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';
import { drawnPicture } from './drawn-picture.ts';
import { fieldStyle } from './field-style.ts';
import './number-stepper.ts';
import type { Stepped } from './number-stepper.ts';
import { proposalWhy } from './proposal-answers.ts';

/** A line as it is now. */
export type LineChanged = CustomEvent<PlanItem>;

const sides = (['left', 'right', 'both'] as const).map((value) => ({ value, text: PLAN_WORDS[value].text }));

const whys = Object.entries(RUN_WHY_CHOICES).map(([value, { text }]) => ({ value, text }));

/** One line of a plan with its numbers, folded under what it tells. Tells `line-changed` and `line-removed`. */
@customElement('plan-line-form')
export class PlanLineForm extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    footStyle,
    css`
      details {
        border-block-end: 1px solid var(--hairline);
      }
      summary {
        cursor: pointer;
        font-size: var(--size-2);
        min-block-size: var(--target);
        padding-block: var(--gap-3);
      }
      summary .what {
        font-weight: 600;
      }
      .inside {
        display: grid;
        gap: var(--gap-4);
        padding-block: var(--gap-2) var(--gap-4);
      }
      .numbers {
        display: grid;
        gap: var(--gap-4);
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
      }
      .rule p {
        margin-block-end: var(--gap-1);
      }
      .rule {
        border: 0;
        margin: 0;
        max-inline-size: 44rem;
      }
      .rule .why {
        border: 0;
      }
      .rule .why summary {
        align-content: center;
        font-size: var(--size-1);
        text-decoration: underline;
        text-underline-offset: 0.2em;
      }
      .why dt {
        font-weight: 600;
        margin-block-start: var(--gap-2);
      }
      .why dd {
        margin: 0 0 var(--gap-1);
        overflow-wrap: anywhere;
      }
      .out {
        justify-self: start;
      }
    `,
  ];

  @property({ attribute: false }) item!: PlanItem;
  @property({ attribute: false }) facts!: PlanFacts;
  @property({ type: Boolean }) opened = false;

  override render(): TemplateResult {
    const { item } = this;
    const name = planName(item);
    const hasMore = item.of === 'exercise' || item.of === 'running';
    const summary = html`<span class="what">${name}</span>: ${planPieces(item).join(', ')}`;
    if (!hasMore)
      return html`<details ?open=${this.opened}><summary>${summary}</summary>
        <div class="inside">${this.out(name)}</div>
      </details>`;
    return html`<details ?open=${this.opened}>
      <summary>${summary}</summary>
      <div class="inside">
        ${this.legs()} ${this.why()} ${this.rules()}
        <div class="numbers">${planNumbers(item, this.facts).map((number) => this.stepper(number))}</div>
        ${this.tension()} ${this.range()} ${this.out(name)}
      </div>
    </details>`;
  }

  private out(name: string): TemplateResult {
    return html`<button
      class="out"
      type="button"
      aria-label=${fill(PLAN_WORDS['remove-what'], { what: name })}
      @click=${() => this.dispatchEvent(new CustomEvent('line-removed'))}
    >
      ${PLAN_WORDS.remove.text}
    </button>`;
  }

  /** What is done on two legs at once has no leg to be chosen. */
  private legs(): TemplateResult | typeof nothing {
    const { item } = this;
    const legs = EXERCISES.find(({ code }) => code === item.code)?.legs;
    if (item.of !== 'exercise' || legs !== 'one') return nothing;
    return html`<chip-choice
      legend=${PLAN_WORDS.side.text}
      .chips=${sides}
      .value=${item.side}
      @chip-chosen=${({ detail }: ChipChosen) => this.tell(forSide(item, detail as PlanSide, this.facts))}
    ></chip-choice>`;
  }

  /** Why runs have their limit, as the patient reads it. */
  private why(): TemplateResult | typeof nothing {
    const { item } = this;
    if (item.of !== 'running') return nothing;
    return html`<chip-choice
      legend=${PLAN_WORDS['run-why'].text}
      open=${PLAN_WORDS['run-why-none'].text}
      .chips=${whys}
      .value=${item.why}
      @chip-chosen=${({ detail }: ChipChosen<string | null>) => this.tell({ ...item, why: detail })}
    ></chip-choice>`;
  }

  private rules(): readonly TemplateResult[] {
    return reasonsOf(this.item, this.facts).map(
      ({ rule, reason }) => html`<div class="rule">
        <p class="voice">${PLAN_RULE_SENTENCES[rule].text}</p>
        ${PLAN_RULES[rule].override === 'never' ? nothing : this.reason(rule, reason)}
        ${proposalWhy({ leg: planName(this.item), what: PLAN_RULE_SENTENCES[rule].text }, planRuleWhy(rule, this.facts))}
      </div>`,
    );
  }

  private reason(rule: PlanRuleCode, reason: string): TemplateResult {
    return html`<label for=${rule}>${PLAN_WORDS.reason.text}</label>
      <input
        id=${rule}
        autocomplete="off"
        maxlength="2000"
        .value=${reason}
        @change=${(event: Event) =>
          this.tell(withReason(this.item, rule, (event.target as HTMLInputElement).value, this.facts))}
      />`;
  }

  private stepper(number: PlanNumber): TemplateResult {
    const { name } = number;
    const what = PLAN_WORDS[name].text;
    return html`<number-stepper
      data-name=${name}
      legend=${what}
      told=${numberWords(number)}
      less=${fill(PLAN_WORDS.less, { what })}
      more=${fill(PLAN_WORDS.more, { what })}
      ?no-less=${!isPressable(number, -1)}
      ?no-more=${!isPressable(number, 1)}
      @stepped=${({ detail }: Stepped) => this.tell(lineAfter(this.item, name, detail, this.facts))}
    ></number-stepper>`;
  }

  private tension(): TemplateResult | typeof nothing {
    const told = timeUnderTension(this.item);
    if (told === null) return nothing;
    const { count, sets, eachS: each, setS: set, allS: all } = told;
    const sentence =
      PLAN_WORDS[this.item.holdS === null ? 'tension-raise' : count === 1 ? 'tension-hold' : 'tension-holds'];
    const values = { count, sets, each: shortNumber(each), set: shortNumber(set), all: shortNumber(all) };
    return html`<p>${fill(sentence, values)}</p>`;
  }

  private range(): TemplateResult | typeof nothing {
    const { of, lowestFootDeg } = this.item;
    if (of !== 'exercise' || lowestFootDeg === null) return nothing;
    return html`<figure class="range">${drawnPicture(footPicture(lowestFootDeg))}</figure>`;
  }

  private tell(item: PlanItem): void {
    this.dispatchEvent(new CustomEvent('line-changed', { detail: item }));
  }
}
