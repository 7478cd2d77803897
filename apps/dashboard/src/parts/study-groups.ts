import { STUDY_RESULT_WORDS } from '@surae/shared';
import type { StudyResults } from '@surae/study';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { hashOf } from '../route.ts';
import { type ArmRow, type GroupsView, groupsView } from '../study/groups-view.ts';
import { planAddress } from '../study/plan-address.ts';
import type { StudySession } from '../study/study-session.ts';
import { base } from '../styles/base.ts';
import './study-exhibit.ts';
import { StudyLooked } from './study-looked.ts';
import { studyTableStyle } from './study-table-style.ts';

/** The comparison of a study with its interval, every person in a picture, and how well the outcome repeats. */
@customElement('study-groups')
export class StudyGroups extends LitElement {
  static override styles = [base, studyTableStyle];

  @property({ attribute: false }) session!: StudySession;
  private readonly looked = new StudyLooked(this);

  override render(): TemplateResult {
    return this.looked.show(this.session, (results) => this.result(results));
  }

  private result(results: StudyResults): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const view = groupsView(results.declared.study, results.comparison);
    return html`
      <p class="quiet">${words.outcome.text}: <span translate="no" lang="en">${view.outcome}</span></p>
      <h2 class="sentence">${view.sentence}</h2>
      ${view.lines.map((line) => html`<p>${line}</p>`)} ${view.rows.length === 0 ? nothing : this.table(view)}
      <section>
        <h3>${words.everybody.text}</h3>
        <study-exhibit
          .results=${results}
          figure="people.svg"
          .tables=${['groups.csv', 'people.csv']}
        ></study-exhibit>
      </section>
      <section>
        <h3>${words.repeats.text}</h3>
        ${view.repeats.map((line) => html`<p>${line}</p>`)}
        <p><a href=${hashOf({ page: 'design', asked: planAddress(results.declared.study, results.comparison) })}>${words.plan.text}</a></p>
      </section>
    `;
  }

  /** Both beside each other: a name may be long, and four numbers in a row are wider than a phone. */
  private table({ rows }: GroupsView): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const line = (what: string, of: (row: ArmRow) => string | number): TemplateResult =>
      html`<tr>
        <th scope="row">${what}</th>
        ${rows.map((row) => html`<td>${of(row)}</td>`)}
      </tr>`;
    return html`<table>
      <thead>
        <tr>
          <th scope="col">${words.who.text}</th>
          ${rows.map(({ name }) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${line(words.people.text, ({ people }) => people)} ${line(words.trials.text, ({ trials }) => trials)}
        ${line(words.middle.text, ({ mean }) => mean)} ${line(words.spread.text, ({ sd }) => sd)}
      </tbody>
    </table>`;
  }
}
