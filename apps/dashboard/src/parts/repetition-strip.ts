import type { AssessedRepetition, Report } from '@surae/analysis';
import { REPETITION_WORDS } from '@surae/shared';
import { css, html, LitElement, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { stripSentence } from '../result/repetition-rows.ts';
import { base } from '../styles/base.ts';

type Verdict = AssessedRepetition['valid'];

const verdicts = ['yes', 'no', 'cannot_tell'] as const satisfies readonly Verdict[];

/** A stroke for what met the rules, a cross for what did not, a question for what nobody can tell. */
const marks: Readonly<Record<Verdict, SVGTemplateResult>> = {
  yes: svg`<path d="M8 3V21" />`,
  no: svg`<path d="M3 6 13 18M13 6 3 18" />`,
  cannot_tell: svg`<path class="voice" d="M4.5 8.5C4.5 5.5 6 4 8.2 4S12 5.4 12 7.4C12 10.4 8.2 10.6 8.2 14.5M8.2 19V20.6" />`,
};

/** The repetitions of a set as a row of pencil marks, told apart by shape; a line where the test ended. */
@customElement('repetition-strip')
export class RepetitionStrip extends LitElement {
  static override styles = [
    base,
    css`
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2) 2px;
      }
      .mark {
        display: grid;
        font-size: 0.75rem;
        inline-size: 1.25rem;
        justify-items: center;
        line-height: 1.2;
      }
      .ended {
        border-inline-start: 3px double var(--ink-quiet);
        margin-inline-start: 2px;
        padding-inline-start: 4px;
        inline-size: 1.6rem;
      }
      svg {
        block-size: 1.5rem;
        fill: none;
        inline-size: 1rem;
        stroke: var(--ink);
        stroke-linecap: round;
        stroke-width: 2.5;
      }
      .voice {
        stroke: var(--voice);
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        margin-block: var(--gap-2) 0;
      }
      .key span {
        align-items: center;
        display: inline-flex;
        gap: var(--gap-1);
      }
    `,
  ];

  @property({ attribute: false }) report!: Report;

  override render(): TemplateResult {
    const { repetitions } = this.report;
    if (repetitions.length === 0) return html`<p>${REPETITION_WORDS.none.text}</p>`;
    const firstAfter = repetitions.find(({ afterEnd }) => afterEnd)?.index;
    return html`
      <div class="row" role="img" aria-label=${stripSentence(this.report)}>
        ${repetitions.map(
          ({ index, valid }) =>
            html`<span class=${index === firstAfter ? 'mark ended' : 'mark'}>
              ${drawn(valid)}<span class="quiet">${index === 1 || index % 5 === 0 ? index : ''}</span>
            </span>`,
        )}
      </div>
      <p class="key quiet" aria-hidden="true">
        ${verdicts.map((verdict) => html`<span>${drawn(verdict)} ${REPETITION_WORDS[verdict].text}</span>`)}
      </p>
    `;
  }
}

function drawn(verdict: Verdict): TemplateResult {
  return html`<svg viewBox="0 0 16 24" aria-hidden="true">${marks[verdict]}</svg>`;
}
