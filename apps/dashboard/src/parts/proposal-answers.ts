import type { ProposalDeclined } from '@surae/casebook';
import { ADVICE_WORDS, DECLINE_CHOICES, type DeclineReason } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import type { AdviceAnswer } from '../advice/advice-taken.ts';
import type { WhyPart } from '../advice/why-words.ts';
import { fill } from '../words/fill.ts';

/** What a proposal is about, as its buttons name it. */
export type ProposalNamed = Readonly<Record<'leg' | 'what', string>>;

/** Where a proposal stands, and what each press does. */
export interface ProposalAnswers {
  readonly told: ProposalNamed;
  /** it means lines that can be taken over */
  readonly hasLines: boolean;
  readonly declined: ProposalDeclined | undefined;
  readonly answer: AdviceAnswer;
  /** reasons to decline lie in a fold, where there is much beside them */
  readonly folded: boolean;
  readonly take: () => void;
  readonly back: () => void;
  /** null takes the answer back */
  readonly decline: (reason: DeclineReason | null) => void;
}

const words = ADVICE_WORDS;
const reasons = Object.entries(DECLINE_CHOICES) as [DeclineReason, { readonly text: string }][];

/** Buttons that answer a proposal; once it is answered, the answer and what takes it back. */
export function proposalAnswers(given: ProposalAnswers): TemplateResult {
  const { told, hasLines, declined, answer, take, back, decline } = given;
  if (declined !== undefined)
    return html`<p class="answer" role="status">
        ${fill(words.declined, { reason: DECLINE_CHOICES[declined.reason]?.text ?? declined.reason })}
      </p>
      <button class="plain back" type="button" @click=${() => decline(null)}>${words['decline-back'].text}</button>`;
  if (answer !== 'open')
    return html`<p class="answer" role="status">${words[answer === 'taken' ? 'taken' : 'taken-changed'].text}</p>
      <button class="plain back" type="button" @click=${back}>${words['take-back'].text}</button>`;
  return html`${
    hasLines
      ? html`<button class="take" type="button" aria-label=${fill(words['take-label'], told)} @click=${take}>
          ${words.take.text}
        </button>`
      : nothing
  }
  ${declining(given)}`;
}

function declining({ told, folded, decline }: ProposalAnswers): TemplateResult {
  const label = fill(words['decline-label'], told);
  const choices = html`<div class="choices" role="group" aria-label=${label}>
    ${reasons.map(
      ([code, { text }]) => html`<button class="reason" type="button" @click=${() => decline(code)}>${text}</button>`,
    )}
  </div>`;
  return folded
    ? html`<details class="decline">
        <summary aria-label=${label}>${words.decline.text}</summary>
        ${choices}
      </details>`
    : html`<p class="means" aria-hidden="true">${words.decline.text}</p>
        ${choices}`;
}

/** Why something is proposed, from what, how sure, by whose rule and what would change it, folded. */
export function proposalWhy(told: ProposalNamed, why: readonly WhyPart[]): TemplateResult {
  return html`<details class="why">
    <summary aria-label=${fill(words['why-label'], told)}>${words.why.text}</summary>
    <dl>
      ${why.map(
        (part) => html`<dt>${part.title}</dt>
          ${part.lines.map((one) => html`<dd>${one}</dd>`)}`,
      )}
    </dl>
  </details>`;
}
