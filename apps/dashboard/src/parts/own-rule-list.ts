import { isInUse, type OwnRulesEntry } from '@surae/casebook';
import { ownNumberFault } from '@surae/guidance';
import { GUIDANCE_RULES, OWN_NUMBER_WHY, RULE_NUMBER_WORDS, RULES_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { numberText } from '../advice/why-words.ts';
import type { RuleChange } from '../rules/own-rules-desk.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { ruledListStyle } from './ruled-list-style.ts';

/** The id of a change that is taken back. */
export type ChangeTakenBack = CustomEvent<string>;

/** What a number is called; its id where this version does not know it. */
export function ownNumberName(id: string): string {
  const words: Readonly<Record<string, { readonly text: string }>> = RULE_NUMBER_WORDS;
  return Object.hasOwn(words, id) ? words[id]!.text : id;
}

function changeLine({ number, value, published, unit }: RuleChange): string {
  const told = { number: ownNumberName(number), published: numberText(published, unit) };
  if (value === null) return fill(RULES_WORDS['back-line'], told);
  return fill(RULES_WORDS['kept-line'], { ...told, value: numberText(value, unit) });
}

function notUsedLine({ value, ...change }: RuleChange): string | null {
  const why = value === null ? null : ownNumberFault({ ...change, value }, GUIDANCE_RULES);
  return why === null ? null : fill(RULES_WORDS['not-used'], { why: OWN_NUMBER_WHY[why].text });
}

/** Changes of the rules that a clinic kept, the newest first. Tells `change-taken-back`. */
@customElement('own-rule-list')
export class OwnRuleList extends LitElement {
  static override styles = [
    base,
    ruledListStyle,
    css`
      li {
        padding-block: var(--gap-3);
      }
      p {
        margin-block-end: var(--gap-1);
        overflow-wrap: anywhere;
      }
      .over .what {
        text-decoration: line-through;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly OwnRulesEntry[] = [];

  override render(): TemplateResult {
    return html`<ul>
      ${[...this.entries].reverse().map((one) => this.entry(one))}
    </ul>`;
  }

  private entry(entry: OwnRulesEntry): TemplateResult {
    const words = RULES_WORDS;
    const { id, at, author, changes, file, isBack } = entry;
    const isOver = !isInUse(entry, this.entries);
    const lines = changes.map(changeLine);
    return html`<li class=${isOver ? 'over' : ''}>
      ${changes.map((change, i) => {
        const notUsed = isOver ? null : notUsedLine(change);
        return html`<p class="what">${lines[i]}</p>
          ${notUsed === null ? nothing : html`<p class="voice">${notUsed}</p>`}
          <p class="quiet">${fill(words['kept-on'], { day: dayOf(at), by: author, reason: change.reason })}</p>`;
      })}
      ${file === null ? nothing : html`<p class="quiet">${fill(words['from-file'], { file })}</p>`}
      ${isOver ? html`<p class="voice">${words[isBack ? 'over-back' : 'over-newer'].text}</p>` : nothing}
      ${
        isBack
          ? nothing
          : html`<button
              class="plain"
              type="button"
              aria-label=${fill(words['undo-of'], { what: lines.join(' ') })}
              @click=${() => this.dispatchEvent(new CustomEvent('change-taken-back', { detail: id }))}
            >
              ${words.undo.text}
            </button>`
      }
    </li>`;
  }
}
