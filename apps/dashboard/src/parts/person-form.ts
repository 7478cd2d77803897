import { changeOf, type Person, type PersonChange } from '@surae/casebook';
import { EPISODE_WORDS, START_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type FieldProblem,
  fieldsOf,
  massToAsk,
  type PersonFields,
  personFrom,
  stonesAndPounds,
  typedNumber,
} from '../journey/person-form.ts';
import { base } from '../styles/base.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import { massQuestion } from './mass-question.ts';

/** A person who is to be kept. */
export type PersonGiven = CustomEvent<Omit<Person, 'id'>>;

/** What is known of a person is to be corrected. */
export type PersonAmended = CustomEvent<{ readonly change: PersonChange; readonly by: string | null }>;

const empty: PersonFields = { name: '', mass: '', lever: '', height: '', year: '', sex: null };
const sexes = (['women', 'men'] as const).map((value) => ({ value, text: START_WORDS[value].text }));

/** The few things that are asked of a person. Tells `person-given`, or `person-amended` of somebody who is known. */
@customElement('person-form')
export class PersonFormElement extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-4);
        max-inline-size: 32rem;
      }
      p {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  /** who is to be corrected; undefined for somebody new */
  @property({ attribute: false }) person: Person | undefined;
  @state() private fields: PersonFields = empty;
  @state() private by = '';
  /** sent with nothing changed */
  @state() private same = false;
  /** problems are told when the form was sent, not while somebody still types */
  @state() private sent = false;

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('person') && this.person !== undefined) this.fields = fieldsOf(this.person);
  }

  override render(): TemplateResult {
    const form = personFrom(this.fields, this.person?.bodyMassKg ?? null);
    const problems = this.sent && !form.ok ? form.problems : {};
    return html`<form novalidate @submit=${this.send}>
      <p class="quiet">${START_WORDS[this.person === undefined ? 'add-explain' : 'amend-explain'].text}</p>
      ${this.field('name', START_WORDS.name.text, '', problems.name)}
      ${this.field('mass', START_WORDS['mass-field'].text, this.imperial(), problems.mass)}
      ${this.massInPounds()}
      ${this.field('lever', START_WORDS['lever-field'].text, START_WORDS['lever-help'].text, problems.lever)}
      ${this.field('height', START_WORDS['height-field'].text, START_WORDS['height-help'].text, problems.height)}
      ${this.field('year', START_WORDS['year-field'].text, START_WORDS['year-help'].text, problems.year)}
      <chip-choice
        legend=${START_WORDS.sex.text}
        open=${START_WORDS['not-asked'].text}
        .chips=${sexes}
        .value=${this.fields.sex}
        @chip-chosen=${(event: ChipChosen<PersonFields['sex']>) =>
          (this.fields = { ...this.fields, sex: event.detail })}
      ></chip-choice>
      ${this.person === undefined ? nothing : this.who()}
      <button class="main" type="submit">
        ${START_WORDS[this.person === undefined ? 'keep' : 'amend-keep'].text}
      </button>
      ${this.same ? html`<p class="voice" role="status">${START_WORDS['amend-none'].text}</p>` : nothing}
    </form>`;
  }

  private who(): TemplateResult {
    return html`<div>
      <label for="by">${START_WORDS['amend-who'].text}</label>
      <input
        id="by"
        autocomplete="off"
        aria-describedby="by-help"
        .value=${this.by}
        @input=${(event: InputEvent) => (this.by = (event.target as HTMLInputElement).value)}
      />
      <p id="by-help" class="quiet">${START_WORDS['amend-who-help'].text}</p>
    </div>`;
  }

  private field(
    name: Exclude<keyof PersonFields, 'sex' | 'isKilograms'>,
    label: string,
    help: string,
    problem: FieldProblem | undefined,
  ): TemplateResult {
    return html`<div>
      <label for=${name}>${label}</label>
      <input
        id=${name}
        autocomplete="off"
        inputmode=${name === 'name' ? nothing : name === 'year' ? 'numeric' : 'decimal'}
        aria-describedby="${name}-help"
        aria-invalid=${problem === undefined ? nothing : 'true'}
        .value=${this.fields[name]}
        @input=${(event: InputEvent) => this.type(name, event)}
      />
      <p id="${name}-help" aria-live="polite" class=${problem === undefined ? 'quiet' : 'voice'}>
        ${problem === undefined ? help : problem === 'mass-answer' ? EPISODE_WORDS[problem].text : START_WORDS[problem].text}
      </p>
    </div>`;
  }

  /** The mass in the other units that people think in: a slip of units is seen at once. */
  private imperial(): string {
    const mass = typedNumber(this.fields.mass);
    return mass == null ? '' : fill(START_WORDS['mass-imperial'], { mass, ...stonesAndPounds(mass) });
  }

  /** Asked where the mass may be in pounds; nothing is kept before it is answered. */
  private massInPounds(): TemplateResult | typeof nothing {
    const asked = massToAsk({ ...this.fields, isKilograms: false }, this.person?.bodyMassKg ?? null);
    if (asked === null) return nothing;
    return massQuestion(asked, this.fields.isKilograms === true, (said) => (this.fields = { ...this.fields, ...said }));
  }

  private type(name: Exclude<keyof PersonFields, 'sex' | 'isKilograms'>, event: InputEvent): void {
    const typed = { [name]: (event.target as HTMLInputElement).value };
    this.fields = { ...this.fields, ...typed, ...(name === 'mass' ? { isKilograms: false } : {}) };
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    this.sent = true;
    this.same = false;
    const form = personFrom(this.fields, this.person?.bodyMassKg ?? null);
    if (!form.ok) {
      const first = (['name', 'mass', 'lever', 'height', 'year'] as const).find(
        (name) => form.problems[name] !== undefined,
      );
      this.renderRoot.querySelector<HTMLInputElement>(`#${first}`)?.focus();
      return;
    }
    this.sent = false;
    if (this.person === undefined) {
      this.dispatchEvent(new CustomEvent('person-given', { detail: form.person }));
      this.fields = empty;
      return;
    }
    const change = changeOf(this.person, form.person);
    this.same = change === undefined;
    if (change === undefined) return;
    const by = this.by.trim() === '' ? null : this.by.trim();
    this.dispatchEvent(new CustomEvent('person-amended', { detail: { change, by } }));
  };
}
