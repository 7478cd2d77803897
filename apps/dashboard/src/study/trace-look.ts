import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { ItemTrace } from './item-trace.ts';
import { readingAt } from './reading-at.ts';
import { actOf } from './recount-keys.ts';
import './recount-trace.ts';
import type { CursorAsked, TraceLane } from './recount-trace.ts';
import { nextTime } from './trace-peaks.ts';

/** A mark this near to the cursor is read out with it [s]; ours. */
const nearS = 0.25;

/** The line of a recording with the marks of several below it, to be looked at by pointer and keyboard; nothing is changed here. */
@customElement('trace-look')
export class TraceLook extends LitElement {
  static override styles = [
    base,
    css`
      .reading {
        margin-block: var(--gap-2) var(--gap-4);
        min-block-size: 3em;
      }
    `,
  ];

  @property({ attribute: false }) trace!: ItemTrace;
  @property({ attribute: false }) lanes: readonly TraceLane[] = [];
  @state() private cursorS = 0;

  private readonly press = (event: KeyboardEvent): void => {
    const act = actOf(event);
    const { timesS } = this.trace;
    const [firstS, lastS] = [timesS[0] ?? 0, timesS.at(-1) ?? 0];
    const marks = this.lanes.flatMap((lane) => lane.marks.map(({ atS }) => atS)).sort((a, b) => a - b);
    let timeS: number | undefined;
    if (act?.act === 'move') timeS = this.cursorS + act.byS;
    else if (act?.act === 'end') timeS = act.direction === 1 ? lastS : firstS;
    else if (act?.act === 'peak') timeS = nextTime(marks, this.cursorS, act.direction) ?? this.cursorS;
    if (timeS === undefined) return;
    event.preventDefault();
    this.cursorS = Math.min(lastS, Math.max(firstS, timeS));
  };

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { trace, lanes, cursorS } = this;
    const near = lanes.flatMap(({ name, marks }) => {
      const mark = marks.find(({ atS }) => Math.abs(atS - cursorS) <= nearS);
      return mark === undefined ? [] : [fill(words['lane-says'], { name, verdict: words[mark.verdict].text })];
    });
    const told = [readingAt(trace, cursorS), ...near].join('; ');
    return html`<div
        role="slider"
        tabindex="0"
        aria-orientation="horizontal"
        aria-label=${words['look-label'].text}
        aria-valuemin=${decimal(trace.timesS[0] ?? 0, 2)}
        aria-valuemax=${decimal(trace.timesS.at(-1) ?? 0, 2)}
        aria-valuenow=${decimal(cursorS, 2)}
        aria-valuetext=${told}
        @keydown=${this.press}
      >
        <recount-trace
          .trace=${trace}
          .lanes=${lanes}
          .cursorS=${cursorS}
          @cursor-asked=${({ detail }: CursorAsked) => (this.cursorS = detail)}
        ></recount-trace>
      </div>
      <p class="reading">${trace.label}: ${told}</p>`;
  }
}
