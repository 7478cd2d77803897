import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fieldStyle } from '../parts/field-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Somebody locks their verdicts under this name. */
export type LockAsked = CustomEvent<string>;

/** Asks once before verdicts are locked, and says what that means. Tells `lock-asked` with a name, or `lock-not`. */
@customElement('recount-lock')
export class RecountLock extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-4);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property() rater = '';
  @property({ attribute: false }) left = 0;
  @property({ attribute: false }) total = 0;
  @state() private missing = false;

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { left, total } = this;
    return html`<h2 tabindex="-1">${words.lock.text}</h2>
      <p>${words['lock-means'].text}</p>
      ${left === 0 ? nothing : html`<p class="voice">${fill(words['lock-left'], { left, total })}</p>`}
      <form novalidate @submit=${this.send}>
        <div>
          <label for="by">${words['lock-by'].text}</label>
          <input id="by" name="by" autocomplete="off" value=${this.rater} aria-describedby=${this.missing ? 'missing' : nothing} />
          ${this.missing ? html`<p id="missing" class="voice" role="alert">${words['name-missing'].text}</p>` : nothing}
        </div>
        <button class="main" type="submit">${words['lock-sure'].text}</button>
        <button type="button" @click=${() => this.dispatchEvent(new Event('lock-not'))}>${words['lock-not'].text}</button>
      </form>`;
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    const by = (this.renderRoot.querySelector<HTMLInputElement>('#by')?.value ?? '').trim();
    this.missing = by === '';
    if (by !== '') this.dispatchEvent(new CustomEvent('lock-asked', { detail: by }));
  };
}
