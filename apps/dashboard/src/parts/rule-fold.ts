import { type GuidanceRule, RULES_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { markWords, numberText } from '../advice/why-words.ts';
import type { ConditionLine } from '../rules/condition-words.ts';
import { steppedNumber } from '../rules/number-step.ts';
import type { RuleChange } from '../rules/own-rules-desk.ts';
import { ruleStyle } from '../rules/rule-style.ts';
import { type NumberView, ruleView } from '../rules/rule-view.ts';
import { reasonMost } from '../rules/rules-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import { FocusNext } from './focus-next.ts';
import './number-stepper.ts';
import type { Stepped } from './number-stepper.ts';

/** A number that is to be changed, or given back by null. */
export type NumberChanged = CustomEvent<RuleChange>;

interface Draft {
  readonly number: string;
  readonly value: number;
  readonly reason: string;
}

function conditionList({ text, under }: ConditionLine): TemplateResult {
  return html`<li>
    ${text}${under.length === 0 ? nothing : html`<ul>${under.map((one) => conditionList(one))}</ul>`}
  </li>`;
}

/** One rule, folded under what it proposes; what a clinic may change of it is changed here. Tells `number-changed`. */
@customElement('rule-fold')
export class RuleFold extends LitElement {
  static override styles = [base, fieldStyle, ruleStyle];

  @property({ attribute: false }) rule!: GuidanceRule;
  @state() private isOpen = false;
  @state() private draft: Draft | null = null;
  /** a reason that is missing is told once it was sent */
  @state() private sent = false;
  private readonly focusNext = new FocusNext(this);

  override render(): TemplateResult {
    const view = ruleView(this.rule);
    return html`<details @toggle=${({ target }: Event) => (this.isOpen = (target as HTMLDetailsElement).open)}>
      <summary>
        ${view.title}
        ${view.own.length === 0 ? nothing : html`<span class="own voice">${RULES_WORDS['own-mark'].text}</span>`}
      </summary>
      ${this.isOpen ? this.inside(view) : nothing}
    </details>`;
  }

  private inside(view: ReturnType<typeof ruleView>): TemplateResult {
    const words = RULES_WORDS;
    const list = (title: string, lines: readonly string[]): TemplateResult | typeof nothing =>
      lines.length === 0
        ? nothing
        : html`<h3>${title}</h3>
            <ul>
              ${lines.map((one) => html`<li>${one}</li>`)}
            </ul>`;
    return html`<div class="inside">
      ${view.own.map((one) => html`<p class="voice">${one}</p>`)} ${list(words.asks.text, view.asks)}
      <h3>${words.condition.text}</h3>
      <ul>${conditionList(view.condition)}</ul>
      ${list(words.proposes.text, [view.title, ...view.also])}
      <h3>${words['from-where'].text}</h3>
      <p>${view.source}</p>
      ${
        view.numbers.length === 0
          ? nothing
          : html`<h3>${words.numbers.text}</h3>
              ${view.numbers.map((one) => this.number(one))}`
      }
      <h3>${words.change.text}</h3>
      <p>${view.changedBy}</p>
    </div>`;
  }

  private number(one: NumberView): TemplateResult {
    const words = RULES_WORDS;
    const isOpen = this.draft?.number === one.id;
    return html`<div class="number" data-number=${one.id}>
      <p><span class="name">${one.name}</span>: ${numberText(one.value, one.unit)}</p>
      ${one.lines.map((line) => html`<p class="quiet">${line}</p>`)}
      ${one.bound === null || isOpen ? nothing : this.opener(one)}
      ${isOpen && this.draft !== null ? this.editor(one, this.draft) : nothing}
      ${
        one.isOwn && !isOpen
          ? html`<button
              class="plain"
              type="button"
              aria-label=${fill(words['give-back-of'], { number: one.name })}
              @click=${() => this.tell(one, null, words['given-back'].text)}
            >
              ${words['give-back'].text}
            </button>`
          : nothing
      }
    </div>`;
  }

  private opener(one: NumberView): TemplateResult {
    return html`<button
      class="plain opener"
      type="button"
      aria-label=${fill(RULES_WORDS['edit-of'], { number: one.name })}
      @click=${() => {
        this.draft = { number: one.id, value: one.value, reason: '' };
        this.sent = false;
        this.focusNext.to('form.edit .reason');
      }}
    >
      ${RULES_WORDS.edit.text}
    </button>`;
  }

  private editor(one: NumberView, draft: Draft): TemplateResult | typeof nothing {
    const { bound } = one;
    if (bound === null) return nothing;
    const words = RULES_WORDS;
    const { value } = draft;
    const isReasonMissing = this.sent && draft.reason.trim() === '';
    const text = (of: number): string => numberText(of, one.unit);
    return html`<form class="edit" novalidate @submit=${(event: SubmitEvent) => this.send(event, one)}>
      <number-stepper
        legend=${one.name}
        told=${text(value)}
        less=${fill(words.less, { number: one.name })}
        more=${fill(words.more, { number: one.name })}
        ?no-less=${value <= bound.least}
        ?no-more=${value >= bound.most}
        @stepped=${({ detail }: Stepped) => (this.draft = { ...draft, value: steppedNumber(value, detail, bound) })}
      ></number-stepper>
      <p class="quiet">
        ${fill(words.between, { least: text(bound.least), most: text(bound.most), mark: markWords(bound.mark) })}
      </p>
      <div>
        <label for="reason">${words.reason.text}</label>
        <input
          id="reason"
          class="reason"
          autocomplete="off"
          maxlength=${reasonMost}
          aria-invalid=${isReasonMissing ? 'true' : nothing}
          aria-describedby="reason-help"
          .value=${draft.reason}
          @input=${(event: Event) => (this.draft = { ...draft, reason: (event.target as HTMLInputElement).value })}
        />
        <p id="reason-help" class="voice" aria-live="polite">
          ${this.sent ? (value === one.value ? words.same.text : isReasonMissing ? words['reason-missing'].text : '') : ''}
        </p>
      </div>
      <div class="presses">
        <button type="submit">${words.keep.text}</button>
        <button class="plain" type="button" @click=${() => this.leave(one)}>${words.leave.text}</button>
      </div>
    </form>`;
  }

  private leave({ id }: NumberView): void {
    this.draft = null;
    this.focusNext.to(`[data-number='${id}'] .opener`);
  }

  private send(event: SubmitEvent, one: NumberView): void {
    event.preventDefault();
    this.sent = true;
    const { draft } = this;
    if (draft === null || draft.value === one.value) return;
    const reason = draft.reason.trim();
    if (reason === '') {
      this.renderRoot.querySelector<HTMLElement>('.reason')?.focus();
      return;
    }
    this.tell(one, draft.value, reason);
  }

  private tell(one: NumberView, value: number | null, reason: string): void {
    const { id: number, unit, published } = one;
    // what is chosen again as it was published is given back
    const detail: RuleChange = { number, unit, published, value: value === published ? null : value, reason };
    this.leave(one);
    this.dispatchEvent(new CustomEvent('number-changed', { detail, bubbles: true, composed: true }));
  }
}
