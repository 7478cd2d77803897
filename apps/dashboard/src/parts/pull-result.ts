import type { Side } from '@surae/analysis';
import { noOwnErrors, type OwnErrorsInUse, type Person, type PullSet, pullSetOf, type Visit } from '@surae/casebook';
import { AXIS_WORDS, PULL_RESULT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Assessments } from '../result/assessments.ts';
import { pullComparisonsOf } from '../result/comparisons.ts';
import { pullFigures } from '../result/pull-figures.ts';
import { pullSentence } from '../result/pull-sentences.ts';
import { base } from '../styles/base.ts';
import { assessmentProgress } from './assessment-progress.ts';
import './comparison-list.ts';
import './legs-swap.ts';
import './new-start.ts';
import './trial-marks.ts';
import './two-legs-axis.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** What the isometric pushes came to: a sentence, both legs on one axis, every push as a mark, what to keep in mind. */
@customElement('pull-result')
export class PullResult extends LitElement {
  static override styles = [
    base,
    css`
      .sentence {
        font-size: var(--size-3);
        line-height: 1.25;
        margin-block-end: var(--gap-2);
        max-inline-size: 40ch;
        text-wrap: balance;
      }
      .axes,
      .trials {
        display: grid;
        gap: 0 var(--gap-8);
        grid-template-columns: minmax(0, 1fr);
        margin-block: var(--gap-6);
      }
      /* left stays on the left in a language that is read from the right */
      .trials {
        direction: ltr;
      }
      .trials > * {
        direction: var(--reading);
      }
      @media (min-width: 40rem) {
        .axes,
        .trials {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
      }
      section {
        margin-block: var(--gap-6);
      }
      h2,
      h3 {
        font-size: var(--size-2);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  /** errors of measurement that the clinic found itself */
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  /** how far the missing reports are; the page that asked for them hands this on whenever it changed inside */
  @property({ attribute: false, hasChanged: () => true }) assessments!: Assessments<PullSet>;

  override render(): TemplateResult {
    const { visit } = this;
    const sets = sides.flatMap((side) => pullSetOf(visit, side) ?? []);
    return html`
      <h2>${PULL_RESULT_WORDS.title.text}</h2>
      <p class="sentence">${pullSentence(visit)}</p>
      <p class="quiet">${PULL_RESULT_WORDS['net-note'].text}</p>
      <div role="status">${sets.map((set) => assessmentProgress(this.assessments, set))}</div>
      <div class="axes">
        ${pullFigures(visit).map((figures) => html`<two-legs-axis .figures=${figures}></two-legs-axis>`)}
      </div>
      <legs-swap .visit=${visit} test="isometric"></legs-swap>
      <new-start .visit=${visit} .person=${this.person} .earlier=${this.earlier} .own=${this.own} test="isometric"></new-start>
      ${this.compared(sets)} ${this.trials(sets)}
    `;
  }

  /** What is known of both legs, once nothing is left to be assessed. */
  private compared(sets: readonly PullSet[]): TemplateResult | typeof nothing {
    if (this.assessments.isAnyRunning(sets) || sets.every(({ report }) => report === null)) return nothing;
    const comparisons = pullComparisonsOf(this.visit, this.person, this.earlier, this.own);
    return html`<comparison-list level="3" .comparisons=${comparisons}></comparison-list>`;
  }

  private trials(sets: readonly PullSet[]): TemplateResult | typeof nothing {
    const withReport = sets.filter(({ report }) => report !== null && report.efforts.length > 0);
    if (withReport.length === 0) return nothing;
    return html`<section>
      <h3>${PULL_RESULT_WORDS.trials.text}</h3>
      <div class="trials">
        ${withReport.map(
          ({ choice, report }) =>
            html`<div>
              <p><span class="side" data-side=${choice.side}>${AXIS_WORDS[choice.side].text}</span></p>
              <trial-marks .report=${report} .side=${choice.side}></trial-marks>
            </div>`,
        )}
      </div>
    </section>`;
  }
}
