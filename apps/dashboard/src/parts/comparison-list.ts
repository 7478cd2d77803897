import { AXIS_WORDS, COMPARED_WORDS, PAST_WORDS, SIDE_WORDS, SUMMARY_WORDS, TARGET_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Comparisons, LegLines } from '../result/comparisons.ts';
import { leadsOf } from '../result/leads-of.ts';
import type { PastView } from '../result/past-view.ts';
import { sharedLines } from '../result/shared-lines.ts';
import type { SideView } from '../result/side-view.ts';
import type { TargetView } from '../result/target-view.ts';
import { capital } from '../result/value-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './both-sore.ts';
import './comparison-fold.ts';
import './group-rows.ts';
import './leg-course.ts';
import './ratio-axis.ts';

/** A result beside the other leg, beside earlier visits and beside groups: an answer each, and what it rests on behind a fold. */
@customElement('comparison-list')
export class ComparisonList extends LitElement {
  static override styles = [
    base,
    css`
      .together {
        border-inline-start: 3px solid var(--voice);
        margin-block: var(--gap-4) var(--gap-6);
        padding-inline-start: var(--gap-4);
      }
      .together p:last-child {
        margin: 0;
      }
      h3 {
        font-size: var(--size-1);
        margin-block-start: var(--gap-4);
      }
      summary {
        align-content: center;
        cursor: pointer;
        min-block-size: var(--target);
      }
      section + section {
        margin-block-start: var(--gap-8);
      }
      ul,
      dl {
        margin: 0;
        padding: 0;
      }
      ul {
        padding-inline-start: 1.2em;
      }
      li,
      dt,
      dd {
        max-inline-size: var(--line);
      }
      li {
        margin-block-end: var(--gap-2);
      }
      dd {
        color: var(--voice);
        margin-block-end: var(--gap-3);
        margin-inline-start: 1.2em;
      }
    `,
  ];

  @property({ attribute: false }) comparisons!: Comparisons;
  /** of the headings: 3 where the result has a heading of its own */
  @property({ type: Number }) level: 2 | 3 = 2;

  override render(): TemplateResult {
    const { level } = this;
    const { side, pasts, groups, target, legs, together, bilateral, isOneLeg } = this.comparisons;
    const words = COMPARED_WORDS;
    return html`
      ${
        together.length === 0
          ? nothing
          : html`<div class="together">${together.map((line) => html`<p>${line}</p>`)}</div>`
      }
      ${bilateral === null ? nothing : html`<both-sore level=${level} .view=${bilateral}></both-sore>`}
      ${
        isOneLeg
          ? nothing
          : html`<comparison-fold
              level=${level}
              heading=${words.side.text}
              note=${side.note}
              .leads=${[{ side: null, text: side.lead }]}
            >
              ${this.side(side)}
            </comparison-fold>`
      }
      <comparison-fold
        level=${level}
        heading=${words.past.text}
        .leads=${leadsOf(pasts)}
        ?flat=${pasts.every(({ lines, apart }) => lines.length + apart.length === 0)}
      >
        ${this.pasts(pasts)}
      </comparison-fold>
      <comparison-fold
        level=${level}
        heading=${words.group.text}
        .leads=${leadsOf(groups)}
        ?flat=${target === null && groups.every(({ rows }) => rows.length === 0)}
      >
        <group-rows .groups=${groups}></group-rows>
        ${this.list([...new Set(groups.flatMap(({ lines }) => lines))])} ${this.target(target)}
      </comparison-fold>
      <comparison-fold
        level=${level}
        heading=${words.leg.text}
        .leads=${leadsOf(legs)}
        ?flat=${legs.length === 0}
      >
        ${legs.map((leg) => this.leg(leg))}
      </comparison-fold>
    `;
  }

  private list(lines: readonly string[]): TemplateResult | typeof nothing {
    if (lines.length === 0) return nothing;
    return html`<ul>
      ${lines.map((line) => html`<li>${line}</li>`)}
    </ul>`;
  }

  private side({ ratio, lines, blocks }: SideView): TemplateResult {
    return html`
      ${ratio === null ? nothing : html`<ratio-axis .ratio=${ratio}></ratio-axis>`} ${this.list(lines)}
      ${
        blocks.length === 0
          ? nothing
          : html`<h3>${SIDE_WORDS['why-not'].text}</h3>
              <dl>${blocks.map(({ why, unblock }) => html`<dt>${why}</dt><dd>${unblock}</dd>`)}</dl>`
      }
    `;
  }

  /** A leg each, and what is to be said of both once below them. */
  private pasts(pasts: readonly PastView[]): TemplateResult {
    const { own, shared } = sharedLines(pasts.map(({ lines }) => lines));
    return html`${pasts.map((past, at) => this.past(past, own[at] ?? []))}
      <section>${this.list(shared)}</section>`;
  }

  private past({ side, course, apart }: PastView, lines: readonly string[]): TemplateResult {
    return html`<section>
      ${course === null ? nothing : html`<leg-course .course=${course}></leg-course>`} ${this.list(lines)}
      ${
        apart.length === 0
          ? nothing
          : html`<h3>${fill(PAST_WORDS.apart, { leg: capital(SUMMARY_WORDS[side].text) })}</h3>
              <dl>
                ${apart.map(({ when, value, why }) => html`<dt>${when}: ${value}</dt><dd>${why}</dd>`)}
              </dl>`
      }
    </section>`;
  }

  /** Shown to whoever asks for it, and to nobody else. */
  private target(target: TargetView | null): TemplateResult | typeof nothing {
    if (target === null) return nothing;
    return html`<details class="target">
      <summary>${TARGET_WORDS.show.text}</summary>
      ${this.list(target.lines)}
    </details>`;
  }

  private leg({ side, lines }: LegLines): TemplateResult {
    return html`<section>
      <h3><span class="side" data-side=${side}>${AXIS_WORDS[side].text}</span></h3>
      ${this.list(lines)}
    </section>`;
  }
}
