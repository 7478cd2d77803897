import type { Side } from '@surae/analysis';
import type { Episode, Soreness } from '@surae/casebook';
import { EPISODE_WORDS, SAFETY_LIST, SORENESS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  beginningOf,
  beginnings,
  type EpisodeField,
  type EpisodeFields,
  type EpisodeForm,
} from '../journey/episode-form.ts';
import { base } from '../styles/base.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import { fieldBox, fieldStyle } from './field-style.ts';

/** The fields as they stand after something was typed or chosen. */
export type EpisodeTyped = CustomEvent<EpisodeFields>;

const sides = ['left', 'right'] as const satisfies readonly Side[];
const places = (['no', 'mid-portion', 'insertion', 'both-places'] as const).map((value) => ({
  value,
  text: SORENESS_WORDS[value].text,
}));
const onsets = (['sudden', 'gradual'] as const).map((value) => ({ value, text: EPISODE_WORDS[value].text }));
const pops = (['yes', 'no'] as const).map((value) => ({ value, text: EPISODE_WORDS[`pop-${value}`].text }));

/** What is told of one stretch of complaint. Tells `episode-typed`. */
@customElement('episode-fields')
export class EpisodeFieldsElement extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      :host {
        display: grid;
        gap: var(--gap-6);
      }
      h2 {
        margin-block-end: var(--gap-3);
      }
      .legs {
        direction: ltr;
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: repeat(auto-fit, minmax(min(18rem, 100%), 1fr));
      }
      p {
        margin-block: var(--gap-1) 0;
      }
      textarea {
        ${fieldBox}
        padding-block: var(--gap-3);
      }
      .date {
        margin-block-start: var(--gap-4);
      }
      .pop {
        border-block: 1px solid var(--voice);
        display: grid;
        gap: var(--gap-2);
        padding-block: var(--gap-4);
      }
      .pop h2,
      .pop p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) fields!: EpisodeFields;
  @property({ attribute: false }) problems: Extract<EpisodeForm, { readonly ok: false }>['problems'] = {};
  /** the time that a chosen beginning is counted from */
  @property() now = '';

  override render(): TemplateResult {
    const { onset, pop } = this.fields;
    return html`
      <div class="legs">${sides.map((side) => this.leg(side))}</div>
      ${this.problems.sore === undefined ? nothing : html`<p class="voice" role="alert">${EPISODE_WORDS[this.problems.sore].text}</p>`}
      <chip-choice
        legend=${EPISODE_WORDS.onset.text}
        open=${EPISODE_WORDS['not-asked'].text}
        .chips=${onsets}
        .value=${onset}
        @chip-chosen=${({ detail }: ChipChosen<Episode['onset']>) => this.tell({ onset: detail })}
      ></chip-choice>
      ${onset === 'sudden' ? this.pop(pop) : nothing}
      <div>
        <chip-choice
          legend=${EPISODE_WORDS.began.text}
          .chips=${beginnings.map((which) => ({
            value: beginningOf(which, this.now),
            text: EPISODE_WORDS[`began-${which}`].text,
          }))}
          .value=${this.fields.began}
          @chip-chosen=${({ detail }: ChipChosen) => this.tell({ began: detail })}
        ></chip-choice>
        <div class="date">${this.date('began', EPISODE_WORDS['date-field'].text)}</div>
      </div>
      ${this.note('loads', EPISODE_WORDS.loads.text, EPISODE_WORDS['loads-help'].text)}
      ${this.note('goal', EPISODE_WORDS.goal.text, '')}
      <div>${this.date('goalBy', EPISODE_WORDS['goal-by'].text)}</div>
      ${this.note('story', EPISODE_WORDS.story.text, '')}
    `;
  }

  /** Focuses the first field that is not taken. */
  async focusProblem(): Promise<void> {
    await this.updateComplete;
    const chip =
      this.problems.sore && this.renderRoot.querySelector('chip-choice')?.shadowRoot?.querySelector('button');
    (chip ?? this.renderRoot.querySelector<HTMLElement>('[aria-invalid]'))?.focus();
  }

  private leg(side: Side): TemplateResult {
    return html`<section aria-label=${EPISODE_WORDS[side].text}>
      <h2><span class="side" data-side=${side}>${EPISODE_WORDS[side].text}</span></h2>
      <chip-choice
        legend=${EPISODE_WORDS.where.text}
        open=${EPISODE_WORDS['not-asked'].text}
        .chips=${places}
        .value=${this.fields.sore[side]}
        @chip-chosen=${({ detail }: ChipChosen<Soreness | null>) =>
          this.tell({ sore: { ...this.fields.sore, [side]: detail } })}
      ></chip-choice>
    </section>`;
  }

  private pop(pop: boolean | null): TemplateResult {
    const line = SAFETY_LIST.find(({ id }) => id === 'safety.rupture');
    return html`<chip-choice
        legend=${EPISODE_WORDS.pop.text}
        open=${EPISODE_WORDS['not-asked'].text}
        .chips=${pops}
        .value=${pop === null ? null : pop ? 'yes' : 'no'}
        @chip-chosen=${({ detail }: ChipChosen<string | null>) =>
          this.tell({ pop: detail === null ? null : detail === 'yes' })}
      ></chip-choice>
      ${
        pop === true && line !== undefined
          ? html`<div class="pop voice" role="alert">
              <h2>${EPISODE_WORDS['pop-title'].text}</h2>
              <p>${line.ask}</p>
              <p><strong>${line.next}</strong></p>
              <p>${EPISODE_WORDS['pop-list'].text}</p>
            </div>`
          : nothing
      }`;
  }

  private date(name: 'began' | 'goalBy', label: string): TemplateResult {
    return html`<label for=${name}>${label}</label>
      <input
        id=${name}
        autocomplete="off"
        inputmode="text"
        aria-describedby="${name}-help"
        aria-invalid=${this.problems[name] === undefined ? nothing : 'true'}
        .value=${this.fields[name]}
        @input=${(event: InputEvent) => this.type(name, event)}
      />
      ${this.help(name, EPISODE_WORDS['date-help'].text)}`;
  }

  private note(name: 'loads' | 'goal' | 'story', label: string, help: string): TemplateResult {
    return html`<div>
      <label for=${name}>${label}</label>
      <textarea
        id=${name}
        rows=${name === 'goal' ? 2 : 3}
        aria-describedby="${name}-help"
        aria-invalid=${this.problems[name] === undefined ? nothing : 'true'}
        .value=${this.fields[name]}
        @input=${(event: InputEvent) => this.type(name, event)}
      ></textarea>
      ${this.help(name, help)}
    </div>`;
  }

  private help(name: EpisodeField, help: string): TemplateResult {
    const problem = this.problems[name];
    return html`<p id="${name}-help" aria-live="polite" class=${problem === undefined ? 'quiet' : 'voice'}>
      ${problem === undefined ? help : EPISODE_WORDS[problem].text}
    </p>`;
  }

  private type(name: Exclude<EpisodeField, 'sore'>, event: InputEvent): void {
    this.tell({ [name]: (event.target as HTMLInputElement | HTMLTextAreaElement).value });
  }

  private tell(change: Partial<EpisodeFields>): void {
    this.dispatchEvent(new CustomEvent('episode-typed', { detail: { ...this.fields, ...change } }));
  }
}
