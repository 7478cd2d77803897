import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fieldStyle } from '../parts/field-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import type { RaterState } from './recount-desk.ts';

/** Somebody opens what is behind the names of these raters, under a name and with a reason. */
export type OpenAsked = CustomEvent<{ readonly raters: readonly string[]; readonly by: string; readonly why: string }>;

/** Opens the names once everybody who is to be compared has locked. Tells `open-asked`. */
@customElement('recount-open')
export class RecountOpen extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-4);
        max-inline-size: 44rem;
      }
      fieldset {
        border: 0;
        margin: 0;
        padding: 0;
      }
      legend {
        padding: 0;
        font-weight: 600;
      }
      .rater {
        align-items: center;
        display: flex;
        font-weight: 400;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      .rater input {
        accent-color: var(--ink);
        block-size: 28px;
        inline-size: 28px;
        min-block-size: 0;
      }
    `,
  ];

  @property({ attribute: false }) states: readonly RaterState[] = [];
  /** raters that are left out of the comparison */
  @state() private without: readonly string[] = [];
  @state() private missing = false;

  private get wanted(): readonly RaterState[] {
    return this.states.filter(({ rater }) => !this.without.includes(rater));
  }

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const open = this.wanted.filter(({ lock }) => lock === null);
    const isReady = open.length === 0 && this.wanted.length > 0;
    return html`<h2>${words.open.text}</h2>
      <p>${words['open-means'].text}</p>
      <form novalidate @submit=${this.send}>
        <fieldset>
          <legend>${words['open-whose'].text}</legend>
          ${this.states.map(
            ({ rater }) => html`<label class="rater">
              <input
                type="checkbox"
                .checked=${!this.without.includes(rater)}
                @change=${(event: Event) => this.choose(rater, (event.target as HTMLInputElement).checked)}
              />
              ${rater}
            </label>`,
          )}
        </fieldset>
        <p role="status" class="voice">
          ${open.length === 0 ? nothing : fill(words['open-wait'], { raters: open.map(({ rater }) => rater).join(', ') })}
        </p>
        ${isReady ? this.asked() : nothing}
      </form>`;
  }

  private asked(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    return html`<div>
        <label for="by">${words['open-by'].text}</label>
        <input id="by" autocomplete="off" />
      </div>
      <div>
        <label for="why">${words['open-why'].text}</label>
        <input id="why" autocomplete="off" />
      </div>
      ${this.missing ? html`<p class="voice" role="alert">${words['open-missing'].text}</p>` : nothing}
      <button class="main" type="submit">${words['open-do'].text}</button>`;
  }

  private choose(rater: string, isIn: boolean): void {
    this.without = isIn ? this.without.filter((one) => one !== rater) : [...this.without, rater];
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    const typed = (id: string): string =>
      (this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)?.value ?? '').trim();
    const [by, why] = [typed('by'), typed('why')];
    this.missing = by === '' || why === '';
    if (this.missing) return;
    const raters = this.wanted.map(({ rater }) => rater);
    this.dispatchEvent(new CustomEvent('open-asked', { detail: { raters, by, why } }));
  };
}
