import { AXIS_WORDS, FLARE_WORDS, LOAD_WORDS, MATCHED_WORDS, RUN_LOAD_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CourseLoad } from '../course/course-load.ts';
import type { FlarePast } from '../course/flare-past.ts';
import { flarePicture } from '../course/flare-picture.ts';
import { flareHead, flareRest, flareRows, flareSentences } from '../course/flare-words.ts';
import type { LoadDiary } from '../course/load-diary.ts';
import { loadDiaryPicture } from '../course/load-diary-picture.ts';
import { diaryLeads, diaryRest, diaryRows, weekRows } from '../course/load-diary-words.ts';
import { matchedPicture } from '../course/matched-picture.ts';
import { pushHead, pushWords } from '../course/matched-push.ts';
import { matchedHead, matchedRows, matchedSentences, unmatchedLines } from '../course/matched-words.ts';
import { runViewsPicture } from '../course/run-views-picture.ts';
import { type ViewTold, viewRows, viewsRest, viewsTold } from '../course/run-views-words.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';
import { loadPictureStyle } from './load-picture-style.ts';
import { trendFigure, trendRest, trendTable } from './trend-parts.ts';
import { trendTableStyle } from './trend-table-style.ts';

type Matched = CourseLoad['matched'][number];

/** Load by day beside the plan, runs in three views, the person's own flare threshold, and pain at a matched load. */
@customElement('course-load')
export class CourseLoadPart extends LitElement {
  static override styles = [
    base,
    legsStyle,
    foldStyle,
    trendTableStyle,
    loadPictureStyle,
    css`
      :host {
        container-type: inline-size;
        display: block;
      }
      /* on a narrow page words break before the page does */
      table {
        inline-size: 100%;
        table-layout: fixed;
      }
      th,
      td {
        hyphens: auto;
        overflow-wrap: anywhere;
        padding-inline-end: var(--gap-2);
      }
      details + h3 {
        margin-block-start: var(--gap-6);
      }
      dt {
        font-weight: 600;
      }
      dd {
        margin: 0 0 var(--gap-3);
      }
      dd p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) load: CourseLoad | undefined;

  override render(): TemplateResult | typeof nothing {
    if (this.load === undefined) return nothing;
    const { diary } = this.load;
    return html`
      <section id="load">
        <h2>${LOAD_WORDS.title.text}</h2>
        ${diary === null ? html`<p class="quiet">${LOAD_WORDS.empty.text}</p>` : this.diary(diary)}
      </section>
      ${diary === null ? nothing : this.runs(this.load, diary)} ${this.flares(this.load)} ${this.matched(this.load)}
    `;
  }

  private diary(diary: LoadDiary): TemplateResult {
    const words = LOAD_WORDS;
    const weeks = weekRows(diary.weeks);
    return html`
      ${diaryLeads(diary).map((line) => html`<p>${line}</p>`)}
      <p class="quiet">${words['unit-note'].text}</p>
      ${trendFigure(loadDiaryPicture(diary), words['picture-note'].text)}
      ${trendTable(
        words['days-table'].text,
        [words.day.text, words.left.text, words.right.text, words.beside.text],
        diaryRows(diary),
      )}
      ${
        weeks.length === 0
          ? nothing
          : trendTable(words['weeks-table'].text, [words.week.text, words.sessions.text, words.dose.text], weeks)
      }
      ${trendRest(words.rest.text, diaryRest(diary))}
    `;
  }

  private runs({ runs }: CourseLoad, { days }: LoadDiary): TemplateResult {
    const words = RUN_LOAD_WORDS;
    const last = runs.at(-1);
    return html`<section id="runs">
      <h2>${words.title.text}</h2>
      ${
        last === undefined
          ? html`<p class="quiet">${words.none.text}</p>`
          : html`
              <p>${words.apart.text}</p>
              <h3>${fill(words.last, { day: dayOf(last.on) })}</h3>
              <dl>
                ${viewsTold(last.views).map((view) => this.view(view))}
              </dl>
              ${trendFigure(runViewsPicture(runs, days[0]!.on, days.at(-1)!.on), words.note.text)}
              ${trendTable(
                words.table.text,
                [words.day.text, words['axis-peak'].text, words['axis-steps'].text, words['axis-total'].text],
                viewRows(runs),
              )}
              ${trendRest(words.rest.text, viewsRest(runs))}
            `
      }
    </section>`;
  }

  private view({ name, value, from }: ViewTold): TemplateResult {
    return html`<dt>${name}</dt>
      <dd>
        <p>${value}</p>
        ${from.map((line) => html`<p class="quiet">${line}</p>`)}
      </dd>`;
  }

  private flares({ flares }: CourseLoad): TemplateResult {
    const words = FLARE_WORDS;
    return html`<section id="flares">
      <h2>${words.title.text}</h2>
      <p>${words.explain.text}</p>
      ${flares.length === 0 ? html`<p class="quiet">${words.none.text}</p>` : flares.map((one) => this.flare(one))}
      ${flares.length === 0 ? nothing : trendRest(words.rest.text, flareRest(flares))}
    </section>`;
  }

  private flare(past: FlarePast): TemplateResult {
    const words = FLARE_WORDS;
    const { side, kind, found } = past;
    const named = { leg: AXIS_WORDS[side].text, kind: words[`kind-${kind}`].text };
    return html`
      <h3><span class="side" data-side=${side}>${flareHead(past)}</span></h3>
      ${flareSentences(past).map((line) => html`<p>${line}</p>`)}
      ${trendFigure(flarePicture(past), words[found.held === 'yes' ? 'note' : 'note-open'].text)}
      ${trendTable(fill(words.table, named), [words.day.text, words.load.text, words.morning.text], flareRows(past))}
    `;
  }

  private matched({ matched, moreLoads, unmatched, pushes }: CourseLoad): TemplateResult {
    const words = MATCHED_WORDS;
    const lines = unmatchedLines(unmatched);
    return html`<section id="matched">
      <h2>${words.title.text}</h2>
      <p>${words.explain.text}</p>
      ${matched.length === 0 ? html`<p class="quiet">${words.none.text}</p>` : matched.map((one) => this.series(one))}
      ${moreLoads === 0 ? nothing : html`<p class="quiet">${fill(words.more, { count: moreLoads })}</p>`}
      ${lines.length === 0 ? nothing : trendRest(words.rest.text, lines)}
      ${pushes.length === 0 ? nothing : html`<h3>${pushHead()}</h3>`}
      ${pushWords(pushes).map((line) => html`<p>${line}</p>`)}
    </section>`;
  }

  private series(series: Matched): TemplateResult {
    const words = MATCHED_WORDS;
    const head = matchedHead(series);
    return html`
      <h3>
        ${series.leg === 'both' ? head : html`<span class="side" data-side=${series.leg}>${head}</span>`}
      </h3>
      ${matchedSentences(series).map((line) => html`<p>${line}</p>`)}
      ${trendFigure(matchedPicture(series), words.note.text)}
      ${trendTable(fill(words.table, { head }), [words.day.text, words.pain.text], matchedRows(series))}
    `;
  }
}
