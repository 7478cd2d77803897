import { STUDY_QUALITY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { TrialCourse } from '../study/kept-trial.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

const [WIDTH, HEIGHT] = [240, 40];

/** The line of a course in a box: a hole in the data is a hole in the line. */
export function sparkPath({ values }: Pick<TrialCourse, 'values'>): string {
  const there = values.filter((value) => value !== null);
  const [least, most] = [Math.min(...there), Math.max(...there)];
  const range = most > least ? most - least : 1;
  let isOpen = false;
  const steps: string[] = [];
  for (const [at, value] of values.entries()) {
    if (value === null) isOpen = false;
    else {
      const x = ((at + 0.5) * WIDTH) / values.length;
      const y = HEIGHT - 2 - ((value - least) / range) * (HEIGHT - 8);
      steps.push(`${isOpen ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`);
      isOpen = true;
    }
  }
  return steps.join('');
}

/** The course of a recording, drawn small, with a tick over each top that was found. */
@customElement('trial-spark')
export class TrialSpark extends LitElement {
  static override styles = [
    base,
    css`
      svg {
        block-size: auto;
        direction: ltr;
        display: block;
        inline-size: 100%;
        max-inline-size: 30rem;
      }
      path {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1;
        vector-effect: non-scaling-stroke;
      }
      line {
        stroke: var(--voice);
        stroke-width: 1.5;
        vector-effect: non-scaling-stroke;
      }
    `,
  ];

  @property({ attribute: false }) course: TrialCourse | null = null;
  /** what the machine found is not shown while somebody counts who is not to know it */
  @property({ type: Boolean }) isLineOnly = false;

  override render(): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    const { course } = this;
    if (course === null) return html`<span class="quiet">${words['course-none'].text}</span>`;
    const durationS = course.stepS * course.values.length;
    const told = { seconds: durationS.toFixed(0), count: course.topsS.length };
    const [ofHeight, ofSignal] = this.isLineOnly
      ? [words['course-height-only'], words['course-signal-only']]
      : [words['course-height'], words['course-signal']];
    const label = fill(course.of === 'height' ? ofHeight : ofSignal, told);
    return html`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${label}>
      ${(this.isLineOnly ? [] : course.topsS).map((topS) => {
        const x = (topS / durationS) * WIDTH;
        return x >= 0 && x <= WIDTH ? svg`<line x1=${x} x2=${x} y1="0" y2="4" />` : nothing;
      })}
      <path d=${sparkPath(course)} />
    </svg>`;
  }
}
