import type { Side } from '@surae/analysis';
import { PULL_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { coursePath, roundAbove } from '../live/course-scale.ts';
import type { CueTimes } from '../live/pull-cue.ts';
import type { FollowedPull } from '../live/pull-follower.ts';
import { forceWords } from '../result/trial-verdicts.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

const least = { N: 200, 'N.m': 20 } as const;

/** The force of a running trial over its cues, and the best so far as a line to reach. */
@customElement('pull-course')
export class PullCourse extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        direction: ltr;
        display: grid;
        grid-template-rows: minmax(0, 1fr) auto;
        min-block-size: 9rem;
        padding-block-start: 1.4em;
      }
      .picture {
        display: grid;
        min-block-size: 0;
        position: relative;
      }
      svg {
        block-size: 100%;
        inline-size: 100%;
        inset: 0;
        overflow: visible;
        position: absolute;
      }
      line,
      path {
        fill: none;
        stroke: var(--hairline);
        vector-effect: non-scaling-stroke;
      }
      .floor {
        stroke: var(--ink-quiet);
      }
      .best {
        stroke: var(--voice);
        stroke-dasharray: 2 4;
        stroke-width: 2;
      }
      path {
        stroke: var(--left);
        stroke-width: 3;
      }
      :host([data-side='right']) path {
        stroke: var(--right);
        stroke-dasharray: 8 4;
      }
      .best-word {
        inset-inline-start: 0;
        line-height: 1.2;
        position: absolute;
        translate: 0 -100%;
      }
      .cues {
        display: flex;
        font-size: var(--size-1);
        line-height: 1.2;
        min-block-size: 1.4em;
      }
      .cues span {
        border-inline-start: 1px solid var(--hairline);
        overflow: hidden;
        padding-inline-start: var(--gap-1);
      }
    `,
  ];

  @property({ attribute: false }) cues: CueTimes | undefined;
  @property({ attribute: false }) side!: Side;
  /** best of the trials before this one, in the unit of the sensor; null without one */
  @property({ attribute: false }) best: number | null = null;
  @state() private most = 0;
  @state() private unit: FollowedPull['unit'] = 'N';
  @state() private lengthS = 10;
  @query('path') private readonly line!: SVGPathElement | null;

  /** Draws the force so far, at most once a frame: the line alone changes, unless it outgrows the picture. */
  draw({ course, unit, timeS }: FollowedPull): void {
    this.unit = unit;
    const greatest = course.reduce((most, [, net]) => Math.max(most, net), this.best ?? 0);
    const needed = roundAbove(greatest, least[unit]);
    if (needed > this.most) this.most = needed;
    const lengthS = this.cues === undefined ? Math.max(10, Math.ceil(timeS / 10) * 10) : this.cues.overS;
    if (lengthS !== this.lengthS) this.lengthS = lengthS;
    this.line?.setAttribute('d', coursePath(course, lengthS, this.most));
  }

  override render(): TemplateResult {
    const { side, best, cues, unit } = this;
    this.dataset['side'] = side;
    const most = this.most > 0 ? this.most : roundAbove(best ?? 0, least[unit]);
    const bestAt = best === null ? null : 100 - (100 * best) / most;
    return html`<div class="picture"><svg viewBox="0 0 100 100" preserveAspectRatio="none" role="img" aria-label=${PULL_WORDS['course-label'].text}>
        ${cues === undefined ? nothing : [cues.pushS, cues.holdS, cues.offS].map((atS) => this.cueLine(atS, cues.overS))}
        <line class="floor" x1="0" x2="100" y1="100" y2="100" />
        ${bestAt === null ? nothing : svg`<line class="best" x1="0" x2="100" y1=${bestAt} y2=${bestAt} />`}
        <path d=""></path>
      </svg>
      ${
        bestAt === null || best === null
          ? nothing
          : html`<span class="best-word voice" .style=${`inset-block-start: ${bestAt}%`}>
              ${fill(PULL_WORDS['best-line'], { force: forceWords(best, unit) })}
            </span>`
      }</div>
      ${cues === undefined ? html`<span></span>` : this.cueWords(cues)}`;
  }

  private cueLine(atS: number, overS: number): SVGTemplateResult {
    const x = (100 * atS) / overS;
    return svg`<line x1=${x} x2=${x} y1="0" y2="100" />`;
  }

  private cueWords({ pushS, holdS, offS, overS }: CueTimes): TemplateResult {
    const stretches = [
      ['relax', pushS],
      ['push', holdS - pushS],
      ['hold', offS - holdS],
      ['off', overS - offS],
    ] as const;
    return html`<div class="cues quiet" aria-hidden="true">
      ${stretches.map(
        ([cue, lastsS]) => html`<span .style=${`flex: 0 0 ${(100 * lastsS) / overS}%`}>${PULL_WORDS[cue].text}</span>`,
      )}
    </div>`;
  }
}
