import type { OwnRatioError, OwnReliability } from '@surae/analysis';
import type { OwnErrorsEntry } from '@surae/casebook';
import { COMPARISON_RULES, OWN_ERROR_WORDS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { ruledListStyle } from './ruled-list-style.ts';

/** The id of an own error that is not to be used any more. */
export type TakenBack = CustomEvent<string>;

const units = { '1': 'repetitions', N: 'newton', 'N.m': 'newton-metre' } as const;

function figures(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** The title of a protocol; its id where this version does not know it. */
export function protocolTitle(id: string): string {
  const protocol = [...PROTOCOLS, ...PULL_PROTOCOLS].find((one) => one.id === id);
  return protocol === undefined ? id : entryWords(protocol, 'title');
}

function amount(value: number, { scale, unit }: OwnReliability): string {
  if (scale === 'log') return fill(OWN_ERROR_WORDS.share, { value: figures(100 * value) });
  return fill(OWN_ERROR_WORDS[units[unit as keyof typeof units]], { value: figures(value) });
}

/** Whether a figure from so many pairs is used, and how. */
function use(pairs: number, bound: string): string {
  const { ownPairsLeast, ownPairsPlain } = COMPARISON_RULES;
  if (pairs < ownPairsLeast.value) return fill(OWN_ERROR_WORDS['too-few'], { least: ownPairsLeast.value });
  if (pairs >= ownPairsPlain.value) return OWN_ERROR_WORDS.used.text;
  return fill(OWN_ERROR_WORDS['used-with-margin'], { error: bound });
}

/** Errors of measurement that the clinic kept, the newest first, each with where it comes from and whether it is used. Tells `taken-back`. */
@customElement('own-error-list')
export class OwnErrorList extends LitElement {
  static override styles = [
    base,
    ruledListStyle,
    css`
      li {
        padding-block: var(--gap-4);
      }
      p {
        margin-block-end: var(--gap-1);
      }
      button {
        padding-inline: 0;
      }
      .over h3 {
        text-decoration: line-through;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly OwnErrorsEntry[] = [];

  override render(): TemplateResult {
    return html`<ul>
      ${[...this.entries].reverse().map((entry) => this.entry(entry))}
    </ul>`;
  }

  private entry({ id, at, author, errors, given, isOver }: OwnErrorsEntry): TemplateResult {
    const words = OWN_ERROR_WORDS;
    const protocol = protocolTitle(errors.protocolId);
    const source = given.kind === 'file' ? fill(words['from-file'], { file: given.name }) : this.source(errors.test);
    return html`<li class=${isOver ? 'over' : ''}>
      <h3>${protocol}</h3>
      ${errors.test === null ? nothing : this.testLine(errors.test, isOver)}
      ${errors.ratios === null ? nothing : this.ratioLine(errors.ratios, isOver)}
      ${isOver ? html`<p class="voice">${words.over.text}</p>` : nothing}
      <p class="quiet">${source} ${fill(words['kept-on'], { day: dayOf(at), author })}</p>
      ${
        isOver
          ? nothing
          : html`<button
              class="plain"
              type="button"
              aria-label=${fill(words['take-back-of'], { protocol })}
              @click=${() => this.dispatchEvent(new CustomEvent('taken-back', { detail: id }))}
            >
              ${words['take-back'].text}
            </button>`
      }
    </li>`;
  }

  private source(test: OwnReliability | null): string {
    const citation = test?.source.citation ?? '';
    return fill(OWN_ERROR_WORDS.source, { source: citation.charAt(0).toUpperCase() + citation.slice(1) });
  }

  private testLine(test: OwnReliability, isOver: boolean): TemplateResult {
    const { standardError, standardErrorUpper80, pairs } = test;
    const line = fill(OWN_ERROR_WORDS['test-line'], { error: amount(standardError, test), pairs });
    return html`<p>${line} ${isOver ? nothing : use(pairs, amount(standardErrorUpper80, test))}</p>`;
  }

  private ratioLine({ logError, logErrorUpper, pairs }: OwnRatioError, isOver: boolean): TemplateResult {
    const line = fill(OWN_ERROR_WORDS['ratio-line'], { error: figures(100 * logError), pairs });
    const bound = fill(OWN_ERROR_WORDS.share, { value: figures(100 * logErrorUpper) });
    return html`<p>${line} ${isOver ? nothing : use(pairs, bound)}</p>`;
  }
}
