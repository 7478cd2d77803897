import { STUDY_RESULT_WORDS } from '@surae/shared';
import { type ChoiceValue, type StudyResults, valueWords } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type BenchChoice,
  benchChoices,
  benchLines,
  choicesLines,
  chosenShift,
  singleRows,
} from '../study/choices-view.ts';
import type { StudySession } from '../study/study-session.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';
import './study-exhibit.ts';
import { StudyLooked } from './study-looked.ts';
import { studyTableStyle } from './study-table-style.ts';

/** How far what a study says hangs on choices: what trials are judged by, and every way through the declared choices. */
@customElement('study-choices')
export class StudyChoices extends LitElement {
  static override styles = [
    base,
    studyTableStyle,
    css`
      chip-choice,
      [role='status'] {
        margin-block-start: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) session!: StudySession;
  /** values that were chosen on the bench; what is not in it stays registered */
  @state() private chosen: ReadonlyMap<string, ChoiceValue> = new Map();
  private readonly looked = new StudyLooked(this);

  override render(): TemplateResult {
    return this.looked.show(this.session, (results) => this.result(results));
  }

  private result(results: StudyResults): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const { study } = results.declared;
    const { sentence, lines } = choicesLines(study, results.multiverse);
    return html`
      <h2 class="sentence">${sentence}</h2>
      ${lines.map((line) => html`<p>${line}</p>`)}
      <p class="quiet">${words.registered.text}</p>
      <section>
        <h3>${words.singles.text}</h3>
        ${this.singles(results)}
      </section>
      <section>
        <h3>${words['every-analysis'].text}</h3>
        <study-exhibit
          .results=${results}
          figure="estimates.svg"
          .tables=${['choices.csv', 'multiverse.csv']}
        ></study-exhibit>
      </section>
      ${this.bench(results)}
    `;
  }

  private singles(results: StudyResults): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    return html`<table class="many">
      <thead>
        <tr>
          <th scope="col">${words.choice.text}</th>
          <th scope="col">${words.estimate.text}</th>
          <th scope="col">${words.says.text}</th>
          <th scope="col">${words.analyses.text}</th>
        </tr>
      </thead>
      <tbody>
        ${singleRows(results.declared.study, results.multiverse).map(
          ({ choice, estimate, says, analyses }) =>
            html`<tr>
              <th scope="row">${choice}</th>
              <td>${estimate}</td>
              <td>${says}</td>
              <td>${analyses}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
  }

  private bench(results: StudyResults): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const { multiverse, shifts, declared } = results;
    const choices = benchChoices(declared.study);
    const shift = chosenShift(multiverse, shifts, this.chosen);
    const [registered] = shifts;
    return html`<section>
      <h3>${words.bench.text}</h3>
      <p>${words[choices.length === 0 ? 'no-bench' : 'bench-explain'].text}</p>
      ${choices.map((choice) => this.choice(choice))}
      <div role="status">
        ${
          choices.length === 0 || shift === undefined
            ? nothing
            : benchLines(registered!, shift).map((line) => html`<p>${line}</p>`)
        }
      </div>
      <h4>${words['every-way'].text}</h4>
      <study-exhibit .results=${results} figure="shifts.svg" .tables=${['shifts.csv', 'outcomes.csv']}></study-exhibit>
    </section>`;
  }

  private choice({ parameter, values }: BenchChoice): TemplateResult {
    const registered = valueWords(values[0]!);
    const now = this.chosen.has(parameter) ? this.chosen.get(parameter)! : values[0]!;
    const chips = values.map((value, place) => ({
      value: valueWords(value),
      text: place === 0 ? fill(STUDY_RESULT_WORDS['value-registered'], { value: registered }) : valueWords(value),
    }));
    const take = ({ detail }: ChipChosen): void => {
      const value = values.find((one) => valueWords(one) === detail)!;
      this.chosen = new Map([...this.chosen, [parameter, value]]);
    };
    return html`<chip-choice
      legend=${parameter}
      .chips=${chips}
      .value=${valueWords(now)}
      @chip-chosen=${take}
    ></chip-choice>`;
  }
}
