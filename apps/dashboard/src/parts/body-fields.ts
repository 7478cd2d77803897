import type { Person } from '@surae/casebook';
import { EPISODE_WORDS, START_WORDS, TODAY_RULES } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { askedMass, type BodyFields, type BodyForm, isFarFrom } from '../journey/body-form.ts';
import { stonesAndPounds, typedNumber } from '../journey/person-form.ts';
import { looksLikePounds } from '../journey/typed-mass.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import { leverDrawing, leverDrawingStyle } from './lever-drawing.ts';
import { massQuestion } from './mass-question.ts';

/** The fields as they stand after something was typed or chosen. */
export type BodyTyped = CustomEvent<BodyFields>;

/** Body mass and heel lever, with how the lever is measured. Tells `body-typed`. */
@customElement('body-fields')
export class BodyFieldsElement extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    leverDrawingStyle,
    css`
      :host {
        display: grid;
        gap: var(--gap-4);
      }
      p {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) fields!: BodyFields;
  @property({ attribute: false }) problems: Extract<BodyForm, { readonly ok: false }>['problems'] = {};
  /** whole days since the mass was written down; null where that is not known */
  @property({ attribute: false }) massDays: number | null = null;

  override render(): TemplateResult {
    return html`
      <div>
        ${this.field('mass', START_WORDS['mass-field'].text, this.massHelp())} ${this.massQuestion()}
      </div>
      ${this.person.bodyMassKg === null ? nothing : this.today()}
      <div>${this.field('lever', START_WORDS['lever-field'].text, '')}</div>
      ${leverDrawing()}
    `;
  }

  /** Focuses the first field that is not taken. */
  focusProblem(): void {
    this.renderRoot.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }

  private field(name: 'mass' | 'lever', label: string, help: string): TemplateResult {
    const problem = this.problems[name];
    const words =
      problem === undefined
        ? help
        : problem === 'mass-answer'
          ? EPISODE_WORDS[problem].text
          : START_WORDS[problem].text;
    return html`<label for=${name}>${label}</label>
      <input
        id=${name}
        autocomplete="off"
        inputmode="decimal"
        aria-describedby="${name}-help"
        aria-invalid=${problem === undefined ? nothing : 'true'}
        .value=${this.fields[name]}
        @input=${(event: InputEvent) =>
          this.tell({
            [name]: (event.target as HTMLInputElement).value,
            ...(name === 'mass' && { isKilograms: false }),
          })}
      />
      <p id="${name}-help" aria-live="polite" class=${problem === undefined ? 'quiet' : 'voice'}>${words}</p>`;
  }

  private massHelp(): string {
    const mass = typedNumber(this.fields.mass);
    if (mass == null) return '';
    const before = this.person.bodyMassKg;
    const said = [fill(START_WORDS['mass-imperial'], { mass, ...stonesAndPounds(mass) })];
    if (mass === before && this.massDays !== null)
      said.push(
        this.massDays === 0
          ? EPISODE_WORDS['mass-known-today'].text
          : fill(EPISODE_WORDS['mass-known'], { days: this.massDays }),
      );
    if (before !== null && isFarFrom(mass, before)) {
      const most = decimal(TODAY_RULES.massChangeMost.value * 100, 0);
      said.push(fill(EPISODE_WORDS['mass-changed'], { before, most }));
    }
    return said.join(' ');
  }

  /** Asked where the mass may be in pounds, until it is answered. */
  private massQuestion(): TemplateResult | typeof nothing {
    const mass = typedNumber(this.fields.mass);
    const isAsked = askedMass(this.person, this.fields) !== null;
    if (mass == null || (!isAsked && !(this.fields.isKilograms && looksLikePounds(mass, this.person.bodyMassKg))))
      return nothing;
    return massQuestion(mass, this.fields.isKilograms, (said) => this.tell(said));
  }

  private today(): TemplateResult {
    return html`<div class="choices">
      <button
        type="button"
        aria-pressed=${this.fields.massToday}
        @click=${() => this.tell({ massToday: !this.fields.massToday })}
      >
        ${EPISODE_WORDS['mass-today'].text}
      </button>
    </div>`;
  }

  private tell(change: Partial<BodyFields>): void {
    this.dispatchEvent(new CustomEvent('body-typed', { detail: { ...this.fields, ...change } }));
  }
}
