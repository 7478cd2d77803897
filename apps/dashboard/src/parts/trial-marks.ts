import type { PullReport, Side } from '@surae/analysis';
import { AXIS_WORDS, PULL_RESULT_WORDS } from '@surae/shared';
import { css, html, LitElement, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { axisScale } from '../result/axis-scale.ts';
import { base } from '../styles/base.ts';
import { inDigits } from '../words/in-digits.ts';

/** The pushes of one leg on an axis from zero: those that are accepted as the mark of the leg, the others as a cross. */
@customElement('trial-marks')
export class TrialMarks extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        direction: ltr;
      }
      svg {
        block-size: 62px;
        display: block;
        inline-size: 100%;
        overflow: visible;
      }
      line {
        stroke: var(--ink-quiet);
      }
      text {
        fill: var(--ink-quiet);
        font-size: 0.875rem;
        text-anchor: middle;
      }
      .mark {
        fill: var(--paper);
        stroke: var(--left);
        stroke-width: 3;
      }
      .mark.right {
        fill: var(--right);
        stroke: none;
      }
      .cross {
        fill: none;
        stroke: var(--ink);
        stroke-width: 2;
      }
      .doubt {
        fill: var(--ink);
        font-size: 1rem;
        font-weight: 600;
      }
      .key {
        color: var(--ink-quiet);
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) report!: PullReport;
  @property({ attribute: false }) side!: Side;

  override render(): TemplateResult {
    const values = this.report.efforts.flatMap(({ accepted, bestMean }) =>
      bestMean === null ? [] : [{ accepted, value: bestMean.net.value }],
    );
    const most = Math.max(0, ...values.map(({ value }) => value));
    const scale = axisScale([{ kind: 'measured', value: most, low: 0, high: most, atLeast: false }], 1);
    const end = scale.ticks.at(-1) ?? 0;
    return html`<svg aria-hidden="true">
        <line x1="${scale.percentOf(0)}%" x2="${scale.percentOf(end)}%" y1="32" y2="32" />
        ${scale.ticks.map(
          (tick) =>
            svg`<text x="${scale.percentOf(tick)}%" y="40" dominant-baseline="hanging">${inDigits(String(tick))}</text>`,
        )}
        ${values.map(({ accepted, value }) => this.mark(accepted, scale.percentOf(value)))}
      </svg>
      <p class="key">
        <span><span class="side" data-side=${this.side}></span>${PULL_RESULT_WORDS['mark-accepted'].text}</span>
        <span>× ${PULL_RESULT_WORDS['mark-not'].text}</span>
        <span>? ${PULL_RESULT_WORDS['mark-cannot'].text}</span>
        <span class="unseen">${AXIS_WORDS[this.side].text}</span>
      </p>`;
  }

  private mark(accepted: 'yes' | 'no' | 'cannot_tell', atPercent: number): SVGTemplateResult {
    const shape =
      accepted === 'no'
        ? svg`<path class="cross" d="M-6-6 6 6M6-6-6 6" />`
        : accepted === 'cannot_tell'
          ? svg`<text class="doubt" dominant-baseline="central">?</text>`
          : this.side === 'left'
            ? svg`<circle class="mark" r="7" />`
            : svg`<path class="mark right" d="M0-9 9 0 0 9-9 0z" />`;
    return svg`<svg x="${atPercent}%" y="16" overflow="visible">${shape}</svg>`;
  }
}
