import { COURSE_WORDS, LOG_WORDS, RECOUNT_WORDS, REPORT_PLACE } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type CourseDay, courseDays } from '../course/course-days.ts';
import type { CourseLine } from '../course/course-line.ts';
import { type CourseMonth, courseMonths } from '../course/course-months.ts';
import type { LoggedEntry } from '../course/log-entry.ts';
import { type LogKnown, logQuestions } from '../course/log-questions.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { localeInUse } from '../words/locale.ts';
import { partDateOf } from '../words/part-dates.ts';
import { foldStyle } from './fold-style.ts';

/** An entry that is to be corrected, or taken out. */
export type LoggedChosen = CustomEvent<LoggedEntry>;

/** Id of a set that is to be counted again. */
export type SetChosen = CustomEvent<string>;

/** Everything of a person in one column of time. Tells `log-correct`, `log-take-out` and `set-again`. */
@customElement('course-list')
export class CourseList extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      ol,
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      .days {
        border-inline-start: 2px solid var(--ink);
        margin-inline-start: var(--gap-2);
      }
      .day {
        padding-inline-start: var(--gap-6);
        position: relative;
      }
      .day::before {
        background: var(--paper);
        block-size: 10px;
        border: 2px solid var(--ink);
        border-radius: 50%;
        content: '';
        inline-size: 10px;
        inset-block-start: 0.5em;
        inset-inline-start: -6px;
        position: absolute;
      }
      h3 {
        margin-block: 0 var(--gap-1);
      }
      h3 .quiet {
        font-weight: 400;
      }
      .line {
        border-block-end: 1px solid var(--hairline);
        padding-block: var(--gap-2);
      }
      .line:last-child {
        border: 0;
      }
      .line p {
        margin: 0;
        overflow-wrap: anywhere;
      }
      .what {
        font-weight: 600;
      }
      .line .note {
        white-space: pre-line;
      }
      .actions {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-6);
      }
      .actions a,
      .actions button {
        align-items: center;
        display: inline-flex;
        font-size: var(--size-1);
        min-block-size: var(--target);
        padding: 0;
      }
      .gap {
        border-inline-start: 2px dotted var(--paper);
        color: var(--ink-quiet);
        margin-inline-start: -2px;
        padding-block: var(--gap-3);
        padding-inline-start: var(--gap-6);
      }
      .day + .day {
        padding-block-start: var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) lines: readonly CourseLine[] = [];
  @property({ attribute: false }) known: LogKnown = { today: '', firstDay: null, logged: [] };

  /** months that lie back and are looked at; the others are not made */
  @state() private looked: ReadonlySet<string> = new Set();

  override render(): TemplateResult {
    if (this.lines.length === 0) return html`<p class="quiet">${COURSE_WORDS.empty.text}</p>`;
    const { open, months } = courseMonths(courseDays(this.lines, this.known.today));
    return html`${this.days(open)} ${months.map((month) => this.month(month))}`;
  }

  private month({ month, days }: CourseMonth): TemplateResult {
    const named = { month: partDateOf(month, localeInUse()), days: days.length };
    const toggled = ({ target }: Event): void => {
      if ((target as HTMLDetailsElement).open) this.looked = new Set([...this.looked, month]);
    };
    return html`<details @toggle=${toggled}>
      <summary>${fill(COURSE_WORDS[days.length === 1 ? 'one-month' : 'month'], named)}</summary>
      ${this.looked.has(month) ? this.days(days) : nothing}
    </details>`;
  }

  private days(days: readonly CourseDay[]): TemplateResult {
    return html`<ol class="days">
      ${repeat(
        days,
        ({ day }) => day,
        (one) => this.day(one),
      )}
    </ol>`;
  }

  private day({ day, lines, emptyBelow, isToCome }: CourseDay): TemplateResult {
    return html`<li class="day">
        <h3>
          ${dayOf(day)}
          ${
            day === this.known.today || isToCome
              ? html`<span class="quiet">(${COURSE_WORDS[isToCome ? 'later' : 'today'].text})</span>`
              : nothing
          }
        </h3>
        <ul>
          ${repeat(
            lines,
            ({ id }) => id,
            (line) => this.line(line),
          )}
        </ul>
      </li>
      ${
        emptyBelow === 0
          ? nothing
          : html`<li class="gap">
              ${emptyBelow === 1 ? COURSE_WORDS['one-gap'].text : fill(COURSE_WORDS.gap, { days: emptyBelow })}
            </li>`
      }`;
  }

  private line(line: CourseLine): TemplateResult {
    const { what, side, sentences, logged, visitId, isCounted } = line;
    const name = html`<span class="what">${COURSE_WORDS[what].text}</span>`;
    return html`<li class="line">
      <p>
        ${side === null ? name : html`<span class="side" data-side=${side}>${name}</span>`}
        <span class=${what === 'note' ? 'note' : ''}>${sentences.join(' ')}</span>
      </p>
      ${logged === null ? nothing : this.asked(logged)}
      <div class="actions">
        ${
          visitId === null || what !== 'test'
            ? nothing
            : html`<a href=${hashOf({ page: 'visit', visitId })}>${COURSE_WORDS['open-visit'].text}</a>
                <a href=${hashOf({ page: 'report', visitId })}>${REPORT_PLACE.link.text}</a>`
        }
        ${isCounted ? this.again(line) : nothing}
        ${logged === null ? nothing : [this.button('correct', what, logged), this.button('take-out', what, logged)]}
      </div>
    </li>`;
  }

  /** What is odd about an entry that stands: it is asked about and left where it is. */
  private asked(logged: LoggedEntry): TemplateResult[] {
    return logQuestions(logged, this.known, logged.id).map(
      ({ code }) => html`<p class="voice">${LOG_WORDS[`stands-${code}`].text}</p>`,
    );
  }

  private again(line: CourseLine): TemplateResult {
    const named = { leg: COURSE_WORDS[line.side ?? 'both'].text, day: dayOf(line.day) };
    return html`<button
      class="plain"
      type="button"
      aria-label=${fill(RECOUNT_WORDS['count-again-of'], named)}
      @click=${() => this.dispatchEvent(new CustomEvent('set-again', { detail: line.id }))}
    >
      ${RECOUNT_WORDS['count-again'].text}
    </button>`;
  }

  private button(code: 'correct' | 'take-out', what: CourseLine['what'], logged: LoggedEntry): TemplateResult {
    const named = { what: COURSE_WORDS[what].text, day: dayOf(logged.body.on) };
    return html`<button
      class="plain"
      type="button"
      aria-label=${fill(COURSE_WORDS[`${code}-of`], named)}
      @click=${() => this.dispatchEvent(new CustomEvent(`log-${code}`, { detail: logged }))}
    >
      ${COURSE_WORDS[code].text}
    </button>`;
  }
}
